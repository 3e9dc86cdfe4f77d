/** What two runs of the plant are compared by: levels, concentrations in every compartment, what lies in the trash tank. */
import {
  CHAMBERS,
  COMPARTMENT,
  COMPARTMENTS,
  COMPONENT,
  emptyFlows,
  LAYERS,
  massOf,
  STEPPED,
  STORE,
  spreadWater,
} from '../../src/plant/index.ts';
import type { Coupled } from './coupled.ts';
import { digits, type Sample, WATERS } from './recorded.ts';

/** Where a quantity is and what; of little of it a difference is taken as a share of `least`. */
interface Quantity {
  readonly place: string;
  readonly name: string;
  readonly unit: 'm' | 'g/m3' | 'mol/m3' | 'per 100 mL' | 'g';
  readonly least: number;
}

export interface Difference extends Quantity {
  /** At the last sample, as a root mean square over all, and the greatest, in the quantity's unit. */
  readonly last: number;
  readonly rms: number;
  readonly worst: number;
  /** Root mean square of the quantity itself, or `least`. */
  readonly scale: number;
  /** Second of the greatest. */
  readonly worst_s: number;
}

/** What a person with good instruments could still tell: of concentrations g/m3, coliform per 100 mL, stores g. */
const LEAST = { concentration: 0.1, coliform: 10, store: 1 };
const PLACES = [
  ...Object.keys(COMPARTMENT).slice(0, COMPARTMENT.clarifier),
  ...Array.from({ length: LAYERS }, (_, i) => `clarifier layer ${i + 1}`),
];
const NAMES = (Object.keys(COMPONENT) as (keyof typeof COMPONENT)[]).filter((n) => COMPONENT[n] <= COMPONENT.coliform);

const QUANTITIES: readonly Quantity[] = [
  ...['trash', 'aeration', 'pump'].map((place) => ({ place, name: 'level', unit: 'm' as const, least: 1 })),
  ...PLACES.flatMap((place) =>
    NAMES.map((name) => {
      const unit = name === 'alkalinity' ? 'mol/m3' : name === 'coliform' ? 'per 100 mL' : 'g/m3';
      return { place, name, unit, least: name === 'coliform' ? LEAST.coliform : LEAST.concentration } as const;
    }),
  ),
  ...Object.keys(STORE).map((name) => ({ place: 'trash store', name, unit: 'g' as const, least: LEAST.store })),
];

/** Values of `QUANTITIES` in a state of the coupled system. */
function look({ works, drive, passage }: Coupled, y: Float64Array): readonly number[] {
  const water = new Float64Array(STEPPED);
  water.set(y.subarray(0, WATERS));
  const { trash_m, aeration_m, pump_m } = works.observe(drive, water, emptyFlows());
  const held = works.volumes(water, new Float64Array(CHAMBERS));
  const volumes = spreadWater(passage.process.hopper, held, new Float64Array(COMPARTMENTS));
  const mass = (i: number) => y[WATERS + i] as number;
  return [
    ...[trash_m, aeration_m, pump_m],
    ...PLACES.flatMap((_, k) => NAMES.map((name) => mass(massOf(k, COMPONENT[name])) / (volumes[k] as number))),
    ...Object.values(STORE).map(mass),
  ];
}

/** How far a run is from the reference, by quantity. */
export function differences(coupled: Coupled, run: readonly Sample[], reference: readonly Sample[]): Difference[] {
  if (run.length !== reference.length) throw new Error('the runs were sampled at other instants');
  const ours = run.map((sample) => look(coupled, sample.y));
  const theirs = reference.map((sample) => look(coupled, sample.y));
  return QUANTITIES.map((quantity, q) => {
    const off = ours.map((values, i) => Math.abs((values[q] as number) - (theirs[i]?.[q] as number)));
    const worst = Math.max(...off);
    const scale = Math.max(quantity.least, rms(theirs.map((values) => values[q] as number)));
    const worst_s = reference[off.indexOf(worst)]?.t ?? 0;
    return { ...quantity, last: off.at(-1) ?? 0, rms: rms(off), worst, scale, worst_s };
  });
}

/** A run in two figures. */
interface Errors {
  /** Root mean square of the relative differences of all concentrations and stores. */
  readonly relativeError: number;
  /** Root mean square difference of the levels, m. */
  readonly levels_m: number;
}

export function errorsOf(all: readonly Difference[]): Errors {
  const levels = all.filter((d) => d.unit === 'm').map((d) => d.rms);
  const others = all.filter((d) => d.unit !== 'm').map((d) => d.rms / d.scale);
  return { relativeError: digits(rms(others)), levels_m: digits(rms(levels)) };
}

/**
 * Of a solver's runs at some tolerances the cheapest that is no further from the reference than the engine: in what the
 * water holds, and in the levels as well, which the engine follows more closely so that floats turn in time.
 */
export function atEqualError(
  runs: readonly (Errors & { readonly rtol: number; readonly ratioToEngine: number })[],
  engine: Errors,
) {
  const cheapest = (asGood: (run: Errors) => boolean) => {
    const [best] = runs.filter(asGood).sort((a, b) => a.ratioToEngine - b.ratioToEngine);
    return best ? { rtol: best.rtol, ratioToEngine: best.ratioToEngine } : 'at none of these tolerances';
  };
  return {
    atEqualError: cheapest((run) => run.relativeError <= engine.relativeError),
    levelsToo: cheapest((run) => run.relativeError <= engine.relativeError && run.levels_m <= engine.levels_m),
  };
}

function rms(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);
}
