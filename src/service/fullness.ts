/** How full the tanks are, as shares of what calls for pumping out. The checks that read it judge by the same limits. */
import { type JarReading, readJar, type Spot } from '../plant/index.ts';
import type { Readout, UnitSpec } from '../unit/index.ts';

/** Share of the trash tank's depth that sludge and scum may fill together. Source: a trade journal, 2026. */
export const TRASH_FULL_SHARE = 0.25;
/** Settled sludge that calls for pumping out, mL/L (common practice, from memory: some programmes 500, some 700). */
export const JAR_FULL_mLL = 600;
/** Clear water under the outlet that a clarifier should show, m (a foot: common practice, no source). */
export const CLARIFIER_CLEAR_m = 0.3;
/** Average of the cores in the pump tank that calls for pumping out soon, m (9 in: common practice, no source). */
export const PUMP_SLUDGE_m = 0.23;
/** Spots away from the pump, which stirs up what lies near it. */
export const CORED = ['inlet', 'middle', 'far'] as const satisfies readonly Spot[];
/** How long a jar stands, min. */
export const JAR_min = 30;

/** Tanks that are pumped out each for itself, by the share of its limit that each has reached: 1 and more is full. */
export interface Fullness {
  readonly trash: number;
  readonly aeration: number;
  readonly pump: number;
}

/** Sludge and scum that call for pumping out the trash tank, m. */
export function trashLimit_m({ plant: { trash } }: UnitSpec): number {
  return TRASH_FULL_SHARE * (trash.outlet_m - trash.floor_m);
}

/** Clear water over the clarifier's blanket, m. */
export function clearWater_m({ plant: { clarifier } }: UnitSpec, now: Readout): number {
  return Math.max(0, clarifier.straight_m + clarifier.hopper_m - now.blanket_m);
}

/** What tells how full the tanks are, as an instrument reads it or as it is. */
export interface Filling {
  /** Sludge and scum in the trash tank, m. */
  readonly trash_m: number;
  readonly settled_mLL: number;
  /** Clear water over the clarifier's blanket, m. */
  readonly clear_m: number;
  /** Average of the cores in the pump tank, m. */
  readonly cored_m: number;
}

export function sharesOf(spec: UnitSpec, { trash_m, settled_mLL, clear_m, cored_m }: Filling): Fullness {
  return {
    trash: trash_m / trashLimit_m(spec),
    aeration: Math.max(settled_mLL / JAR_FULL_mLL, CLARIFIER_CLEAR_m / Math.max(TINY_m, clear_m)),
    pump: cored_m / PUMP_SLUDGE_m,
  };
}

export function fullnessOf(spec: UnitSpec, now: Readout): Fullness {
  return sharesOf(spec, {
    trash_m: now.trashSludge_m + now.trashScum_m,
    settled_mLL: settled_mLL(readJar(now.liquor, JAR_min)),
    clear_m: clearWater_m(spec, now),
    cored_m: CORED.reduce((sum, spot) => sum + now.sediment_m[spot], 0) / CORED.length,
  });
}

const TINY_m = 1e-6;

/** Sludge that floats up has as little room as one that does not settle. */
function settled_mLL(jar: JarReading): number {
  return jar.floats ? 1000 : jar.settled_mLL;
}
