/**
 * How long a diagnosis of a call takes: living every hypothesis up to the report, the belief after a reading, and the
 * worth of every check, in seconds and as a share of a year of one unit; and the cache of signatures.
 */

import { spawnSync } from 'node:child_process';
import { readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { diagnosisOf, seenOf } from '../../src/calls/expertise.ts';
import { CallSession, prepareCall, shippedCalls, shippedLibrary } from '../../src/calls/index.ts';
import { outlookOf, probesOf } from '../../src/diagnosis/index.ts';
import { householdSource, steadyWeather } from '../../src/plant/index.ts';
import { Unit } from '../../src/unit/index.ts';

const CACHE = 'dist/signatures';
const FAULTS = ['src/tools/run-cli.mjs', 'faults', '--unit', 'u1', '--household', 'family-3'] as const;

const CALLS = ['sunny-line', 'wash-day-light', 'hummer'];

export function run(print: (line: string) => void): void {
  const year_s = yearOfAUnit();
  const show = (part: string, seconds: readonly number[], more: object = {}) => {
    const sorted = [...seconds].sort((a, b) => a - b);
    const worst_s = sorted.at(-1) ?? 0;
    const median_s = sorted[sorted.length >> 1] ?? 0;
    const line = { bench: 'diagnosis', part, median_s: round(median_s), worst_s: round(worst_s) };
    print(JSON.stringify({ ...line, worstToYear: round(worst_s / year_s), ...more }));
  };
  for (const id of CALLS) {
    const call = shippedCalls().find((c) => c.id === id);
    if (!call) throw new Error(`${id} does not ship`);
    const prepared = prepareCall(call);
    const session = new CallSession(prepared, 'practice');
    const [set, diagnosis] = timed(() => diagnosisOf(prepared));
    const probes = probesOf(prepared.spec);
    const beliefs: number[] = [];
    const outlooks: number[] = [];
    for (const step of call.solution) {
      session.act({ id: step.do, ...(step.fill ? { fill: step.fill } : {}) });
      const done = session.done.at(-1);
      if (!done || session.ended) break;
      beliefs.push(timed(() => diagnosis.observe(seenOf(session, done)))[0]);
      if (done.def.group === 'look' || done.def.group === 'measure') {
        outlooks.push(timed(() => outlookOf(diagnosis, probes))[0]);
      }
    }
    show('hypotheses', [set], { call: id, hypotheses: diagnosis.suspects.length });
    show('posterior', beliefs, { call: id, limit_s: 1 });
    show('every check', outlooks, { call: id });
  }
  benchSignatures(print);
}

/** As people ask for them: by the command line, once worked out and once from its cache. */
function benchSignatures(print: (line: string) => void): void {
  rmSync(CACHE, { recursive: true, force: true });
  const ask = () => {
    const { status } = spawnSync(process.execPath, [...FAULTS], { stdio: ['ignore', 'ignore', 'inherit'] });
    if (status !== 0) throw new Error('underlawn faults failed');
  };
  const [build_s] = timed(ask);
  const [cached_s] = timed(ask);
  const size_MB = readdirSync(CACHE).reduce((sum, file) => sum + statSync(join(CACHE, file)).size, 0) / 1e6;
  const times = { build_s: round(build_s), cached_s: round(cached_s), ratio: round(cached_s / build_s) };
  print(
    JSON.stringify({ bench: 'diagnosis', part: 'signatures of u1, one household', ...times, size_MB: round(size_MB) }),
  );
}

function yearOfAUnit(): number {
  const library = shippedLibrary();
  const spec = library.units.get('u1');
  const household = library.households.get('family-3');
  if (!spec || !household) throw new Error('u1 or family-3 is missing');
  const source = householdSource(household, 1);
  return timed(() =>
    new Unit({ spec, source, faults: [], seed: 1, weather: steadyWeather(18) }).advance(365 * 86_400),
  )[0];
}

function timed<T>(work: () => T): readonly [number, T] {
  const began = performance.now();
  const result = work();
  return [(performance.now() - began) / 1000, result];
}

function round(x: number): number {
  return Math.round(x * 1000) / 1000;
}
