/** A run of the engine, as what solves the same plant otherwise needs it: what drove the works when, and how it stood. */
import { shippedLibrary } from '../../src/calls/index.ts';
import { COMPONENT, GAUGES, householdSource, PROCESS, SOLVED, steadyWeather, VOLUME } from '../../src/plant/index.ts';
import { Unit } from '../../src/unit/index.ts';

export const DAY_s = 86_400;
export const END_s = 30 * DAY_s;
/** Runs are compared this often, s. */
const SAMPLED_s = DAY_s / 4;
const SEED = 42;
/** The engine's compiler needs some runs to warm up. */
const ENGINE_RUNS = 5;
/** So often a rival is run; its fastest counts. */
const REPEATS = 3;
/** Relative tolerance of the run that all others are held against. */
export const TIGHT = 1e-9;

/** A state to compare: the basins' volumes, m3, then the masses that the processes solve for, g. Ledgers are left out. */
export const WATERS = Object.keys(VOLUME).length;
export const SIZE = WATERS + SOLVED;

/** From an instant on, s, this drives the works. */
export interface Edge {
  readonly t: number;
  readonly inflow_m3s: number;
  readonly pumpRuns: boolean;
}

export interface Sample {
  readonly t: number;
  readonly y: Float64Array;
}

interface Recorded {
  readonly edges: readonly Edge[];
  readonly samples: readonly Sample[];
}

export function newUnit(): Unit {
  const library = shippedLibrary();
  const spec = library.units.get('u1');
  const household = library.households.get('family-3');
  if (!spec || !household) throw new Error('u1 or family-3 is missing');
  const source = householdSource(household, SEED);
  return new Unit({ spec, source, faults: [], seed: SEED, weather: steadyWeather(20) });
}

/** The part of a unit's state that is compared. Both halves are of the same instant where a stretch has just ended. */
export function comparedState(y: Float64Array): Float64Array {
  const state = new Float64Array(SIZE);
  state.set(y.subarray(0, WATERS));
  state.set(y.subarray(PROCESS, PROCESS + SOLVED), WATERS);
  return state;
}

/** Runs the engine. */
export function record(): Recorded {
  const unit = newUnit();
  const edges = [edgeOf(unit)];
  unit.observer = () => {
    checkOrdinary(unit);
    const edge = edgeOf(unit);
    const last = edges.at(-1);
    if (edge.inflow_m3s === last?.inflow_m3s && edge.pumpRuns === last.pumpRuns) return;
    if (edge.t === last?.t) edges.pop();
    edges.push(edge);
  };
  const samples: Sample[] = [];
  for (let t = SAMPLED_s; t <= END_s; t += SAMPLED_s) {
    unit.cutAt(t);
    samples.push({ t, y: comparedState(unit.y) });
  }
  return { edges: edges.filter((edge) => edge.t < END_s), samples };
}

/** Processor time of the engine for the same days, ms, and the derivatives it asked for. */
export function engineCost() {
  let unit = newUnit();
  const cpu_ms = Math.min(
    ...Array.from({ length: ENGINE_RUNS }, () => {
      unit = newUnit();
      return cpu(() => unit.advance(END_s)).cpu_ms;
    }),
  );
  return {
    cpu_ms: Math.round(cpu_ms),
    waterDerivatives: unit.derivatives,
    processDerivatives: unit.passage.process.derivatives,
  };
}

/** A piece of work and the processor time it took, ms: the machine may be busy with something else meanwhile. */
export function cpu<T>(work: () => T): { readonly value: T; readonly cpu_ms: number } {
  const from = process.cpuUsage();
  const value = work();
  const { user, system } = process.cpuUsage(from);
  return { value, cpu_ms: (user + system) / 1000 };
}

/** The fastest of some runs of the same work. */
export function fastest<T extends { readonly cpu_ms: number }>(once: () => T): T {
  return Array.from({ length: REPEATS }, once).reduce((a, b) => (b.cpu_ms < a.cpu_ms ? b : a));
}

/** For printing: three digits. */
export const digits = (x: number): number => Number(x.toPrecision(3));

function edgeOf(unit: Unit): Edge {
  const { inflow_m3s, pumpRuns } = unit.driveAt(unit.t);
  return { t: unit.t, inflow_m3s, pumpRuns };
}

/** What those who solve it otherwise leave out must not happen: no air, a flow back, sludge bulked or lifted, poison. */
function checkOrdinary(unit: Unit): void {
  const { stretch } = unit.passage.process;
  const { compressorRuns, seep_m3s } = unit.driveAt(unit.t);
  const { bulking, gassing_h } = GAUGES;
  const poisons = [COMPONENT.quaternary, COMPONENT.salt, COMPONENT.chlorine];
  const ordinary =
    compressorRuns &&
    seep_m3s === 0 &&
    unit.y[bulking] === 1 &&
    unit.y[gassing_h] === 0 &&
    stretch.clarifierOut >= 0 &&
    (stretch.days === 0 || stretch.captured === unit.spec.plant.process.mostCaptured) &&
    poisons.every((i) => stretch.coming[i] === 0);
  if (!ordinary) throw new Error(`at t = ${unit.t} s the run leaves what the coupled system describes`);
}
