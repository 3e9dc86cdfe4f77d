/** Looks of what is not simulated yet: solids, scum, sludge and chlorine of a unit in ordinary order. */
import type { UnitSpec } from '../unit/index.ts';
import type { WaterLook } from './types.ts';

const CLEAN: WaterLook = { solids_mgL: 15, oxygen_mgL: 4, hoursWithoutOxygen: 0, residual_mgL: 0, raw: 0 };

export const ORDINARY = {
  trash: { ...CLEAN, solids_mgL: 300, oxygen_mgL: 0, raw: 1 },
  mixedLiquor: { ...CLEAN, solids_mgL: 3000 },
  clarified: CLEAN,
  chlorinated: { ...CLEAN, residual_mgL: 1 },
  chlorinatedStored: { ...CLEAN, residual_mgL: 0.6 },
  /** An ultraviolet lamp leaves nothing in the water. */
  irradiated: CLEAN,
  scum_m: 0.06,
  trashSludge_m: 0.22,
  pumpSludge_m: 0.05,
} as const satisfies Record<string, WaterLook | number>;

/** Water in the riser and in the pump tank of a unit, by how it disinfects. */
export function disinfected(spec: UnitSpec): { readonly riser: WaterLook; readonly stored: WaterLook } {
  const { chlorinated, chlorinatedStored, irradiated } = ORDINARY;
  return spec.panel.ultraviolet
    ? { riser: irradiated, stored: irradiated }
    : { riser: chlorinated, stored: chlorinatedStored };
}
