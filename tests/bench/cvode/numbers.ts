/** The file of numbers for the C program: what the plant is made of and what drives it, none of it typed again. */
import { COMPARTMENTS, COMPONENT, lineState, massOf, oxygenAt, SOUND, STORE } from '../../../src/plant/index.ts';
import { floatHeights_m } from '../../../src/unit/index.ts';
import { absoluteTolerances, type Coupled } from '../coupled.ts';
import { type Edge, newUnit, type Sample, SIZE, WATERS } from '../recorded.ts';

/** Components that the C program has: all but what poisons. */
const KEPT = COMPONENT.coliform + 1;
/** Where each of its states is among ours. */
const OURS: readonly number[] = [
  ...Array.from({ length: WATERS }, (_, i) => i),
  ...Array.from({ length: COMPARTMENTS * KEPT }, (_, j) => WATERS + massOf(Math.floor(j / KEPT), j % KEPT)),
  ...Object.values(STORE).map((i) => WATERS + i),
];

const toC = (y: Float64Array): number[] => OURS.map((i) => y[i] as number);

/** A state of the C program as one of ours. */
export function fromC(values: readonly number[]): Float64Array {
  if (values.length !== OURS.length) throw new Error(`${values.length} states, not ${OURS.length}`);
  const y = new Float64Array(SIZE);
  OURS.forEach((i, j) => {
    y[i] = values[j] as number;
  });
  return y;
}

/** The file's text. `coupled` is at the start of a run; its right-hand sides at the samples are there to be checked. */
export function numbersFile(coupled: Coupled, edges: readonly Edge[], samples: readonly Sample[]): string {
  const { passage, works } = coupled;
  const { process } = passage;
  const { panel } = newUnit().spec;
  const { dosing } = panel;
  if (dosing.kind !== 'night' || dosing.starts_h.length * dosing.run_min > dosing.nightLimit_min) {
    throw new Error('the C program knows a night timer whose limit is never reached');
  }
  if (lineState(works.line, SOUND).filter !== works.line.cleanFilter) throw new Error('the disc filter is not clean');
  const draws = edges.filter((edge, i) => i === 0 || edge.inflow_m3s !== edges[i - 1]?.inflow_m3s);
  const checks = checked(coupled, edges, samples);
  const lines = [
    ...flat('plant', works.spec),
    ...flat('line', works.line),
    ...flat('kinetics', process.kinetics),
    ...flat('oxygen', oxygenAt(coupled.drive.temperature_C)),
    ...flat('hopper', process.hopper),
    ...flat('stretch', { captured: process.stretch.captured, floats: process.stretch.floats }),
    ...flat('stopFloat', floatHeights_m(panel, 'stopFloat')),
    ...flat('doseFloat', floatHeights_m(panel, 'doseFloat')),
    ['influent', coupled.influent.slice(0, KEPT)] as const,
    ['run_s', [dosing.run_min * 60]] as const,
    ['starts_h', dosing.starts_h] as const,
    ['draws.t', draws.map((edge) => edge.t)] as const,
    ['draws.flow_m3s', draws.map((edge) => edge.inflow_m3s)] as const,
    ['samples', samples.map((sample) => sample.t)] as const,
    ['start', toC(coupled.start)] as const,
    ['tolerances', toC(absoluteTolerances(coupled, 1))] as const,
    ['check.y', checks.flatMap(({ y }) => toC(y))] as const,
    ['check.dy', checks.flatMap(({ dy }) => toC(dy))] as const,
    ['check.inflow_m3s', checks.map(({ edge }) => edge.inflow_m3s)] as const,
    ['check.pumpRuns', checks.map(({ edge }) => Number(edge.pumpRuns))] as const,
  ];
  return lines.map(([name, values]) => `${name} ${values.length} ${Array.from(values).join(' ')}\n`).join('');
}

/** Right-hand sides at the samples, under draws of the run, with and without the pump. */
function checked(coupled: Coupled, edges: readonly Edge[], samples: readonly Sample[]) {
  return samples.map(({ t, y }, i) => {
    const inflow_m3s = edges[Math.floor((i * edges.length) / samples.length)]?.inflow_m3s ?? 0;
    const edge = { t, inflow_m3s, pumpRuns: i % 2 === 0 };
    const dy = new Float64Array(SIZE);
    coupled.turn(edge);
    coupled.derivative(t, y, dy);
    return { y, dy, edge };
  });
}

/** Every number in a record, by its path; lists of numbers stay together. */
function flat(path: string, of: object): readonly (readonly [string, ArrayLike<number>])[] {
  return Object.entries(of).flatMap(([key, value]: [string, unknown]) => {
    const name = `${path}.${key}`;
    if (typeof value === 'number') return [[name, [value]] as const];
    if (value instanceof Float64Array) return [[name, value] as const];
    return typeof value === 'object' && value !== null ? flat(name, value) : [];
  });
}
