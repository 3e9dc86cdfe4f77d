/**
 * Where each quantity sits in the one state array. First what the engine steps through: volumes, ledgers of water, what
 * has passed each opening, seconds run. Then the marks: the same as they stood when the processes were last advanced. Last
 * the processes themselves, which follow in stretches (see passage.ts).
 */
import { CONTACT_SIZE } from './contact.ts';
import { STOCK_SIZE } from './disinfection.ts';
import { CARRIED, COMPONENTS } from './liquor.ts';
import { PROCESS_SIZE } from './process.ts';

/**
 * Bodies of water with a level of their own, in flow order. Chambers joined by a large opening share one level:
 * aeration chamber and clarifier; pump tank and disinfection riser, once the tank stands above its inlet.
 */
export const BASINS = ['trash', 'aeration', 'pump'] as const;

export const VOLUME = { trash: 0, aeration: 1, pump: 2 } as const;

/**
 * Water ledgers, m3 since the start: drawn in the house, dosed to the field, over the clean-out, onto the floor, seeped
 * in, leaked out of the trash tank or from under its lid.
 */
export const WATER = { drawn: 3, sprayed: 4, relieved: 5, indoors: 6, seeped: 7, leaked: 16 } as const;

/** Water that has passed each opening since the start, m3. */
export const PASSED = { trashOut: 8, slot: 9, clarifierOut: 10, riserOut: 11 } as const;

/** Seconds run. */
export const RUN = { pump_s: 12, compressor_s: 13, ultraviolet_s: 14 } as const;

/** What stands in the house sewer before a blockage, m3: empty while the way into the trash tank is clear. */
export const SEWER = 15;

/** What is stepped through by the engine; all else waits for the next stretch. */
export const STEPPED = 17;

/** Where a stepped quantity is kept as it stood at the end of the last stretch; these marks follow the stepped part. */
export function marked(i: number): number {
  return STEPPED + i;
}

/** When the last stretch ended, s. */
export const MARK_s = 2 * STEPPED;
/** Step that the processes would take next, days. */
export const PROCESS_STEP = MARK_s + 1;

export const PROCESS = PROCESS_STEP + 1;
export const CONTACT = PROCESS + PROCESS_SIZE;
/** What is in store for disinfection (see disinfection.ts). */
export const STORED = CONTACT + CONTACT_SIZE;
/** What has come in since the start, g by component. */
export const CAME = STORED + STOCK_SIZE;

/** Hauled away by truck: g by component, water of it, m3, and clear water that a truck has brought, m3. */
export const HAULED = CAME + CARRIED;
export const TRUCK = { hauled_m3: HAULED + COMPONENTS, brought_m3: HAULED + COMPONENTS + 1 } as const;

const GAUGE = HAULED + COMPONENTS + 2;
/**
 * Hours the liquor has been without oxygen; water dosed while the liquor lacked oxygen, m3; mean inflow of the last days,
 * m3/d; how much the sludge has bulked, as a factor of its index; hours that the lowest sludge has made gas; seal of the
 * house's least used trap, mm; water dosed that was untreated by the rule, m3; hours that the pump tank's water stood
 * without being disinfected.
 */
export const GAUGES = {
  hoursWithoutOxygen: GAUGE,
  shortOfAir_m3: GAUGE + 1,
  inflow_m3d: GAUGE + 2,
  bulking: GAUGE + 3,
  gassing_h: GAUGE + 4,
  seal_mm: GAUGE + 5,
  untreated_m3: GAUGE + 6,
  undisinfected_h: GAUGE + 7,
} as const;

export const STATE_SIZE = GAUGE + 8;

/**
 * Absolute tolerances of the stepped part; 0 leaves a ledger out of the error norm, and the house sewer too where
 * nothing ever makes water stand in it.
 */
export function tolerances(sewerStands = false): Float64Array {
  const atol = new Float64Array(STEPPED);
  for (let i = 0; i < BASINS.length; i++) atol[i] = 2e-6;
  if (sewerStands) atol[SEWER] = 2e-6;
  return atol;
}
