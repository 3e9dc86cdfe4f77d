/** Curves that are drawn of the works, each off the same reading, and the levels at which something switches. */
import { type Measure, type Message, say } from '../service/index.ts';
import { floatsOf, type Readout, type UnitSpec } from '../unit/index.ts';

interface CurveOf {
  readonly measure: Measure;
  readonly of: (now: Readout) => number;
}

export const CURVES = {
  pumpTank_m: { measure: 'length_m', of: (now) => now.pumpTank_m },
  airPressure_kPa: { measure: 'pressure_kPa', of: (now) => now.airPressure_kPa },
  oxygen_mgL: { measure: 'concentration_mgL', of: (now) => now.oxygen_mgL },
  residual_mgL: { measure: 'concentration_mgL', of: (now) => now.water.pump.residual_mgL },
  blanket_m: { measure: 'length_m', of: (now) => now.blanket_m },
  trashSludge_m: { measure: 'length_m', of: (now) => now.trashSludge_m },
  trashScum_m: { measure: 'length_m', of: (now) => now.trashScum_m },
} as const satisfies Readonly<Record<string, CurveOf>>;
export type CurveId = keyof typeof CURVES;
export type CurveValues = Readonly<Record<CurveId, number>>;

const CURVE_IDS = Object.keys(CURVES) as CurveId[];

/** Below this the stored water does not count as disinfected. Source: 30 TAC 285.91(4). */
const LEAST_RESIDUAL_mgL = 0.1;
const LEAST_OXYGEN_mgL = 2;

/** The value of every curve in a reading. */
export function curvesIn(now: Readout): CurveValues {
  return Object.fromEntries(CURVE_IDS.map((id) => [id, CURVES[id].of(now)])) as CurveValues;
}

/** The curves of a unit: where a lamp disinfects there is no residual to draw. */
export function curvesOn({ plant }: UnitSpec): readonly CurveId[] {
  return CURVE_IDS.filter((id) => id !== 'residual_mgL' || plant.disinfection.kind !== 'ultraviolet');
}

export interface Mark {
  readonly value: number;
  readonly label: Message;
}

/** Levels at which something switches, or what should not be fallen below. */
export function marksOf({ panel }: UnitSpec, id: CurveId): readonly Mark[] {
  switch (id) {
    case 'pumpTank_m':
      return floatsOf(panel).flatMap((float) => {
        const height = panel.floats[float];
        return height ? [{ value: height.makes_m, label: say(`float.${float}`) }] : [];
      });
    case 'airPressure_kPa':
      return [{ value: panel.airSwitch.falls_kPa, label: say('mark.air-switch') }];
    case 'oxygen_mgL':
      return [{ value: LEAST_OXYGEN_mgL, label: say('mark.oxygen') }];
    case 'residual_mgL':
      return [{ value: LEAST_RESIDUAL_mgL, label: say('mark.residual') }];
    default:
      return [];
  }
}
