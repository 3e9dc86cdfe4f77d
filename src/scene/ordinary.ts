/** Looks of what is not simulated yet: solids, scum, sludge and chlorine of a unit in ordinary order. */
import type { WaterLook } from './types.ts';

const CLEAN: WaterLook = { solids_mgL: 15, oxygen_mgL: 4, hoursWithoutOxygen: 0, residual_mgL: 0, raw: 0 };

export const ORDINARY = {
  trash: { ...CLEAN, solids_mgL: 300, oxygen_mgL: 0, raw: 1 },
  mixedLiquor: { ...CLEAN, solids_mgL: 3000 },
  clarified: CLEAN,
  disinfected: { ...CLEAN, residual_mgL: 1 },
  pumpTank: { ...CLEAN, residual_mgL: 0.6 },
  scum_m: 0.06,
  trashSludge_m: 0.22,
  pumpSludge_m: 0.05,
} as const satisfies Record<string, WaterLook | number>;
