/**
 * The coupled system by SUNDIALS CVODE, from a C program over the same equations (tests/bench/cvode): its stiff and its
 * nonstiff method, which events that start it anew so often may favour. It switches the pump by itself. First its
 * right-hand sides are compared with ours.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { atEqualError, differences, errorsOf } from './compared.ts';
import { Coupled, follow, stepperWay } from './coupled.ts';
import { fromC, numbersFile } from './cvode/numbers.ts';
import { digits, type Edge, END_s, engineCost, fastest, record, type Sample, TIGHT } from './recorded.ts';

const COMPILER = process.env.CC ?? 'cc';
const SOURCES = ['main', 'numbers', 'process', 'switching', 'water'].map((name) => `tests/bench/cvode/${name}.c`);
const LIBRARIES = ['cvode', 'nvecserial', 'sunlinsoldense', 'sunnonlinsolfixedpoint'];
/** Right-hand sides agree so far, relative: ours has its own exponential. */
const AGREE = 1e-12;
const METHODS = [
  { words: ['bdf', 'dense'], name: 'BDF, dense linear solver, Jacobian by differences' },
  { words: ['adams', 'none'], name: 'Adams, fixed point' },
] as const;
const EVENTS = 'floats by root finding, draws and timer by stop times, started anew where the drive changes';
const TOLERANCES = [3e-2, 1e-3, 1e-5, 3e-6];

export function run(print: (line: string) => void): void {
  const show = (line: object) => print(JSON.stringify({ bench: 'cvode', ...line }));
  const missing = whatIsMissing();
  if (missing) {
    show({ skipped: missing });
    return;
  }
  const folder = mkdtempSync(join(tmpdir(), 'plant-'));
  try {
    measure(folder, show);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function whatIsMissing(): string | undefined {
  const { error, status } = spawnSync(COMPILER, ['-fsyntax-only', '-x', 'c', '-'], {
    input: '#include <cvode/cvode.h>\n',
  });
  if (error) return `there is no C compiler called ${COMPILER}`;
  return status === 0 ? undefined : 'SUNDIALS is not installed (Debian: libsundials-dev)';
}

function measure(folder: string, show: (line: object) => void): void {
  const program = join(folder, 'plant');
  execFileSync(COMPILER, [
    '-std=c11',
    '-O2',
    '-o',
    program,
    ...SOURCES,
    ...LIBRARIES.map((l) => `-lsundials_${l}`),
    '-lm',
  ]);
  const { edges, samples } = record();
  const coupled = new Coupled();
  const numbers = join(folder, 'numbers.txt');
  writeFileSync(numbers, numbersFile(coupled, edges, samples));

  const checked = fields(program, ['check', numbers]);
  const [version, states, worst] = ['version', 'states', 'worst'].map((name) => checked.get(name)?.[0]);
  show({ of: 'right-hand sides', states: Number(states), greatestDifference: Number(worst) });
  if (!(Number(worst) <= AGREE)) throw new Error('the C program solves other equations');

  const tight = new Coupled();
  const reference = follow(tight, edges, samples, stepperWay(tight, TIGHT));
  const ours = engineCost();
  const engine = errorsOf(differences(tight, samples, reference));
  show({ of: 'engine', ...ours, ...engine });
  for (const method of METHODS) {
    const runs = TOLERANCES.map((rtol) => {
      const { found, cpu_ms } = fastest(() => {
        const found = fields(program, ['run', numbers, ...method.words, String(rtol)]);
        return { found, cpu_ms: Number(found.get('cpu_ms')?.[0]) };
      });
      const one = (name: string) => Number(found.get(name)?.[0]);
      const states = (found.get('sample') ?? []).map(sampleOf);
      return {
        rtol,
        restarts: one('restarts'),
        steps: one('steps'),
        rightHandSides: one('rightHandSides'),
        cpu_ms: Math.round(cpu_ms),
        ...errorsOf(differences(tight, states, reference)),
        ...switchings(found.get('pump') ?? [], edges),
        ratioToEngine: digits(cpu_ms / ours.cpu_ms),
      };
    });
    const of = `SUNDIALS CVODE ${version}, ${method.name}`;
    for (const run of runs) show({ of, ...run });
    show({ of, events: EVENTS, ...atEqualError(runs, engine) });
  }
}

/** What the program prints, by the first word of each line. */
function fields(program: string, words: readonly string[]): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const line of execFileSync(program, words, { encoding: 'utf8', maxBuffer: 1e8 }).split('\n')) {
    const space = line.indexOf(' ');
    const name = line.slice(0, space);
    found.set(name, [...(found.get(name) ?? []), line.slice(space + 1)]);
  }
  return found;
}

function sampleOf(line: string): Sample {
  const [t, ...values] = line.split(' ').map(Number);
  return { t: t ?? Number.NaN, y: fromC(values) };
}

/** The pump's switchings against the engine's: as many, and how far apart at most, s. */
function switchings(lines: readonly string[], edges: readonly Edge[]) {
  const theirs = lines.map((line) => Number(line.split(' ')[0])).filter((t) => t < END_s);
  const ours = edges.filter((edge, i) => i > 0 && edge.pumpRuns !== edges[i - 1]?.pumpRuns).map((edge) => edge.t);
  const apart_s = ours.map((t, i) => Math.abs(t - (theirs[i] ?? Number.POSITIVE_INFINITY)));
  if (theirs.length !== ours.length) throw new Error(`the pump switched ${theirs.length} times, not ${ours.length}`);
  return { pumpSwitched: theirs.length, apart_s: digits(Math.max(...apart_s)) };
}
