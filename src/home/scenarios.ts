/** What can happen in a house, as data: faults of the catalogue and changes of the household, begun on one morning. */
import type { PlantCondition } from '../plant/index.ts';
import type { QuantityId } from './quantities.ts';

export const SCENARIO_IDS = [
  'bleach',
  'cleaners',
  'toilet',
  'wipes',
  'power',
  'guests',
  'away',
  'bath',
  'softener',
  'storm',
] as const;
export type ScenarioId = (typeof SCENARIO_IDS)[number];

export interface Scenario {
  /** Faults of the catalogue by key, and hours over which one grows. */
  readonly faults?: readonly { readonly key: string; readonly ramp_h?: number }[];
  /** What goes down the drains beyond the ordinary, g/d. */
  readonly poured?: Partial<Readonly<PlantCondition>>;
  readonly guests?: number;
  readonly away?: boolean;
  readonly rain?: { readonly depth_mm: number; readonly hours: number };
  /** Days it lasts; to the end where left out. */
  readonly for_d?: number;
  /** The two quantities that tell most of it. */
  readonly curves: readonly [QuantityId, QuantityId];
  /** Days in which it shows whole. */
  readonly span_d: number;
}

/** Chlorine of a load: 180 mL of household bleach (extension sheets on septic tanks) at 55 g/L (labels), g. */
export const LOAD_gCl = 0.18 * 55;
/** Loads a day in a week of bleach (convention). */
const LOADS_PER_DAY = 3;

export const SCENARIOS: Readonly<Record<ScenarioId, Scenario>> = {
  bleach: { poured: { bleach_gd: LOADS_PER_DAY * LOAD_gCl }, for_d: 7, curves: ['oxygen', 'solids'], span_d: 14 },
  cleaners: { faults: [{ key: 'disinfectant-shock' }], for_d: 7, curves: ['solids', 'oxygen'], span_d: 60 },
  toilet: { faults: [{ key: 'toilet-leaking' }], for_d: 30, curves: ['tank', 'chlorine'], span_d: 60 },
  // A mat that grows over ten days (convention).
  wipes: {
    faults: [{ key: 'inlet-blocked', ramp_h: 240 }, { key: 'grease' }],
    curves: ['oxygen', 'solids'],
    span_d: 60,
  },
  power: { faults: [{ key: 'outage' }], for_d: 2, curves: ['oxygen', 'tank'], span_d: 14 },
  guests: { guests: 4, for_d: 7, curves: ['tank', 'oxygen'], span_d: 14 },
  away: { away: true, for_d: 30, curves: ['oxygen', 'chlorine'], span_d: 60 },
  bath: { faults: [{ key: 'trap-dry' }], curves: ['seal', 'oxygen'], span_d: 60 },
  softener: { faults: [{ key: 'softener-brine' }], curves: ['solids', 'oxygen'], span_d: 60 },
  // As a day's rain of one year in a hundred in a rainy country (convention), into a riser with an open joint.
  storm: {
    faults: [{ key: 'storm-infiltration' }],
    rain: { depth_mm: 150, hours: 12 },
    for_d: 0.5,
    curves: ['tank', 'solids'],
    span_d: 14,
  },
};
