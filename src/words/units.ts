import type { Measure, Quantity } from '../service/message.ts';

export type Units = 'us' | 'si';

/** Ids of the unit patterns in the dictionaries: `unit.psi` and so on. */
export type UnitId =
  | 'psi'
  | 'kPa'
  | 'in'
  | 'ft'
  | 'mm'
  | 'cm'
  | 'm'
  | 'gal'
  | 'L'
  | 'm3'
  | 'gpm'
  | 'Ls'
  | 'cfm'
  | 'Lmin'
  | 'mph'
  | 'ms'
  | 'gpdft2'
  | 'mh'
  | 'mgL'
  | 'A'
  | 'V'
  | 'ohm'
  | 'Mohm'
  | 'uF'
  | 'F'
  | 'C'
  | 'min'
  | 'h'
  | 'usd'
  | 'share'
  | 'none';

/** A quantity turned into the unit it is shown in, with the decimals its instrument earns. */
export interface Shown {
  readonly value: number;
  readonly decimals: number;
  readonly unit: UnitId;
}

interface Scale {
  readonly unit: UnitId;
  readonly per: number;
  readonly offset?: number;
  /** Smallest step shown where no instrument says better, in the shown unit. */
  readonly step: number;
}

const PSI_PER_KPA = 1 / 6.894757;
const INCH_PER_M = 1 / 0.0254;
const GAL_PER_M3 = 264.172052;
const GPM_PER_LS = 15.850323;
/** Gallons a day on a square foot, per m/h. */
const GPD_FT2_PER_MH = 24 * GAL_PER_M3 * 0.3048 * 0.3048;
const CFM_PER_LMIN = 0.0353147;
const MPH_PER_MS = 3600 / 1609.344;
/** Lengths from here on read better in feet or metres than in inches or centimetres. */
const LONG_M = 2.5;
/** Holes and gaps below this read better in millimetres. */
const TINY_M = 0.015;
/** A rule or a tube that is read no finer than this has no millimetres to show. */
const FINE_M = 0.01;
/** Volumes from here on read better in cubic metres. */
const LARGE_M3 = 10;

type Same = Exclude<
  Measure,
  | 'pressure_kPa'
  | 'length_m'
  | 'volume_m3'
  | 'waterFlow_Ls'
  | 'airFlow_Lmin'
  | 'wind_ms'
  | 'rise_mh'
  | 'temperature_C'
  | 'clock_s'
>;

/** Measures that read alike in both systems. */
const SAME: Readonly<Record<Same, Scale>> = {
  concentration_mgL: { unit: 'mgL', per: 1, step: 0.1 },
  current_A: { unit: 'A', per: 1, step: 0.1 },
  voltage_V: { unit: 'V', per: 1, step: 1 },
  resistance_ohm: { unit: 'ohm', per: 1, step: 0.1 },
  resistance_Mohm: { unit: 'Mohm', per: 1, step: 0.1 },
  capacitance_uF: { unit: 'uF', per: 1, step: 0.1 },
  duration_min: { unit: 'min', per: 1, step: 1 },
  duration_h: { unit: 'h', per: 1, step: 0.1 },
  money_usd: { unit: 'usd', per: 1, step: 1 },
  count: { unit: 'none', per: 1, step: 1 },
  share: { unit: 'share', per: 100, step: 1 },
};

function scaleOf(measure: Exclude<Measure, 'clock_s'>, value: number, units: Units, resolution = 0): Scale {
  const us = units === 'us';
  const size = Math.abs(value);
  switch (measure) {
    case 'pressure_kPa':
      return us ? { unit: 'psi', per: PSI_PER_KPA, step: 0.1 } : { unit: 'kPa', per: 1, step: 0.1 };
    case 'length_m':
      if (size >= LONG_M)
        return us ? { unit: 'ft', per: INCH_PER_M / 12, step: 0.1 } : { unit: 'm', per: 1, step: 0.1 };
      if (size > 0 && size < TINY_M && resolution < FINE_M)
        return us ? { unit: 'in', per: INCH_PER_M, step: 0.01 } : { unit: 'mm', per: 1000, step: 1 };
      return us ? { unit: 'in', per: INCH_PER_M, step: 1 } : { unit: 'cm', per: 100, step: 1 };
    case 'volume_m3':
      if (us) return { unit: 'gal', per: GAL_PER_M3, step: 1 };
      return size >= LARGE_M3 ? { unit: 'm3', per: 1, step: 0.1 } : { unit: 'L', per: 1000, step: 1 };
    case 'waterFlow_Ls':
      return us ? { unit: 'gpm', per: GPM_PER_LS, step: 0.1 } : { unit: 'Ls', per: 1, step: 0.01 };
    case 'airFlow_Lmin':
      return us ? { unit: 'cfm', per: CFM_PER_LMIN, step: 0.1 } : { unit: 'Lmin', per: 1, step: 1 };
    case 'wind_ms':
      return us ? { unit: 'mph', per: MPH_PER_MS, step: 1 } : { unit: 'ms', per: 1, step: 0.5 };
    case 'rise_mh':
      return us ? { unit: 'gpdft2', per: GPD_FT2_PER_MH, step: 1 } : { unit: 'mh', per: 1, step: 0.01 };
    case 'temperature_C':
      return us ? { unit: 'F', per: 1.8, offset: 32, step: 1 } : { unit: 'C', per: 1, step: 1 };
    default:
      return SAME[measure];
  }
}

const MOST_DECIMALS = 4;

/** Decimals that a step needs to be written out: 1 for 0.5, 2 for 0.25, none for 5. */
export function decimalsOf(step: number): number {
  let decimals = 0;
  for (let n = step; decimals < MOST_DECIMALS && Math.abs(n - Math.round(n)) > 1e-6 * n; n *= 10) decimals++;
  return decimals;
}

/** Decimals for a step that another unit made uneven: 0.145 stands nearest to 0.1 and gets 1, 0.39 to 1 and gets none. */
export function decimalsNear(step: number): number {
  const HALF_A_DECADE = 3.1623;
  let decimals = 0;
  for (let unit = 1; unit > step * HALF_A_DECADE && decimals < MOST_DECIMALS; unit /= 10) decimals++;
  return decimals;
}

/** Whether a factor only moves the decimal mark, as from metres to centimetres. */
function isDecade(per: number): boolean {
  return per === 1 || per === 100 || per === 1000;
}

/** How a staff is marked: every so many whole units a mark, a longer mark, a figure. */
export const STAFFS = {
  us: { unit_m: 1 / INCH_PER_M, mark: 1, long: 3, figure: 6 },
  si: { unit_m: 0.01, mark: 5, long: 10, figure: 20 },
} as const satisfies Record<Units, object>;

/** The number, unit and decimals a quantity is shown with. `clock_s` has no unit and is not for here. */
export function shown(quantity: Quantity, units: Units): Shown {
  if (quantity.measure === 'clock_s') return { value: quantity.value, decimals: 0, unit: 'none' };
  const { resolution } = quantity;
  const scale = scaleOf(quantity.measure, quantity.value, units, resolution);
  const decimals =
    resolution === undefined
      ? decimalsOf(scale.step)
      : (isDecade(scale.per) ? decimalsOf : decimalsNear)(resolution * scale.per);
  return { value: quantity.value * scale.per + (scale.offset ?? 0), decimals, unit: scale.unit };
}
