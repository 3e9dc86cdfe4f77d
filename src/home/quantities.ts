/** The few quantities of the works that mean something in a house. */
import type { Measure } from '../service/message.ts';
import type { Readout } from '../unit/index.ts';

export const QUANTITY_IDS = ['oxygen', 'solids', 'food', 'chlorine', 'tank', 'seal'] as const;
export type QuantityId = (typeof QUANTITY_IDS)[number];

interface QuantityOf {
  readonly measure: Measure;
  readonly of: (now: Readout) => number;
  /** Differences from the untouched twin that are worth a word: at least so much, and such a share of the twin's (convention). */
  readonly least: number;
  readonly share: number;
}

export const QUANTITIES: Readonly<Record<QuantityId, QuantityOf>> = {
  oxygen: { measure: 'concentration_mgL', of: (now) => now.oxygen_mgL, least: 0.5, share: 0.15 },
  /** What the sprayed or dripped water still carries: solids make it cloudy, food takes oxygen. */
  solids: { measure: 'concentration_mgL', of: (now) => now.water.pump.solids_mgL, least: 3, share: 0.25 },
  food: { measure: 'concentration_mgL', of: (now) => now.water.pump.cbod5_mgL, least: 3, share: 0.25 },
  chlorine: { measure: 'concentration_mgL', of: (now) => now.water.pump.residual_mgL, least: 0.3, share: 0.25 },
  tank: { measure: 'length_m', of: (now) => now.pumpTank_m, least: 0.1, share: 0.1 },
  seal: { measure: 'length_m', of: (now) => now.trapSeal_mm / 1000, least: 0.01, share: 0.2 },
};
