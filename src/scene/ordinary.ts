/** Looks of water: of a unit in ordinary order, until somebody looks; then what goes by the name of the colour seen. */
import type { EffluentColour } from '../plant/index.ts';
import type { UnitSpec } from '../unit/index.ts';
import type { WaterLook } from './types.ts';

const CLEAN: WaterLook = { solids_mgL: 15, oxygen_mgL: 4, hoursWithoutOxygen: 0, residual_mgL: 0, raw: 0 };

export const ORDINARY = {
  trash: { ...CLEAN, solids_mgL: 300, oxygen_mgL: 0, raw: 1 },
  mixedLiquor: { ...CLEAN, solids_mgL: 3000 },
  clarified: CLEAN,
} as const satisfies Record<string, WaterLook>;

/** Total chlorine in the riser and in the pump tank of a unit in ordinary order, mg/L; an ultraviolet lamp leaves none. */
export function ordinaryResidual(spec: UnitSpec): { readonly riser_mgL: number; readonly pumpTank_mgL: number } {
  return spec.panel.ultraviolet ? { riser_mgL: 0, pumpTank_mgL: 0 } : { riser_mgL: 1, pumpTank_mgL: 0.6 };
}

/** Solids, mg/L, and hours without oxygen, about the middle of what goes by the colour's name (`plant/senses.ts`). */
const SOLIDS_mgL: { readonly [C in EffluentColour]?: number } = {
  clear: 15,
  cloudy: 60,
  tan: 600,
  'chocolate-brown': 3000,
};
const STALE_h: { readonly [C in EffluentColour]?: number } = { 'grey-brown': 9, grey: 18, black: 36 };

/** Water of which an eye tells no more than its colour: all that goes by the same name looks the same. */
export function lookOf(colour: EffluentColour | null, ordinary: WaterLook): WaterLook {
  if (colour === null) return ordinary;
  const solids_mgL = SOLIDS_mgL[colour] ?? Math.max(ordinary.solids_mgL, 60);
  return { ...ordinary, solids_mgL, hoursWithoutOxygen: STALE_h[colour] ?? 0 };
}
