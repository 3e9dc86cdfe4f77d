/** What people in a house can notice of their works, and what a test of the water would tell them. */
import { notDisinfected } from '../plant/index.ts';
import { isSmelt, standsFull } from '../service/noticed.ts';
import type { Readout, UnitSpec } from '../unit/index.ts';

/** In the order in which they matter. */
export const SIGN_IDS = [
  'sewage',
  'drains',
  'lamp',
  'clock',
  'germs',
  'smellIndoors',
  'smellOutdoors',
  'chlorine',
  'cloudy',
  'airless',
] as const;
export type SignId = (typeof SIGN_IDS)[number];

/** Sewage that came out since the last look, m3, from which on somebody would see it (convention). */
const SEEN_m3 = 1e-4;
/** Oxygen under which the liquor counts as without air, mg/L (convention). */
const AIRLESS_mgL = 0.5;

/** Each looks at an instant and the one before it. */
export const SIGNS: Readonly<Record<SignId, (now: Readout, before: Readout, spec: UnitSpec) => boolean>> = {
  sewage: (now, before) => out_m3(now) - out_m3(before) > SEEN_m3,
  drains: (now, _, spec) => standsFull(now.flows.sewer_m, spec),
  lamp: (now) => now.control.outputs.lamp,
  /** Without it nothing is dosed at night, until somebody sets it. */
  clock: (now) => now.control.regions.timerClock === 'lost',
  germs: (now) => notDisinfected(now.water.pump),
  smellIndoors: (now) => now.sensed.indoors.kind !== 'none',
  smellOutdoors: (now) => isSmelt(now.sensed),
  chlorine: (now) => now.sensed.outdoors.kind === 'chlorine',
  cloudy: (now) => now.sensed.effluent !== 'clear',
  airless: (now) => now.oxygen_mgL < AIRLESS_mgL,
};

function out_m3({ relieved_m3, indoors_m3, leaked_m3 }: Readout): number {
  return relieved_m3 + indoors_m3 + leaked_m3;
}
