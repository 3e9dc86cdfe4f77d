/** What is measured on such a unit, and how it is read off in either system. From the definitions of the units. */
import { GALLON_m3 } from '../../plant/standardLoading.ts';
import type { Scale } from './terms.ts';

const INCH_m = 0.0254;
const POUND_kg = 0.45359237;
const PSI_kPa = 6.894757;
const FOOT_m = 12 * INCH_m;
const LITRE_m3 = 1e-3;

/** Pounds in a million gallons at 1 mg/L: the water's weight, 8.34 lb a gallon, as handbooks round it. */
export const POUNDS_A_GALLON = 8.34;
/** Gallons in a cubic foot, and cubic inches in a gallon, as handbooks round them. */
export const GALLONS_A_CUBIC_FOOT = 7.48;
export const CUBIC_INCHES_A_GALLON = 231;
/** A quarter of pi. */
export const ROUND = 0.785;

/** m3/d */
export const DAILY: Scale = {
  us: { unit: 'gald', per: 1 / GALLON_m3, step: 10 },
  si: { unit: 'Ld', per: 1 / LITRE_m3, step: 20 },
};
/** m3 */
export const VOLUME: Scale = {
  us: { unit: 'gal', per: 1 / GALLON_m3, step: 1 },
  si: { unit: 'L', per: 1 / LITRE_m3, step: 5 },
};
/** m3, of a tank as it is sold */
export const TANK: Scale = {
  us: { unit: 'gal', per: 1 / GALLON_m3, step: 10 },
  si: { unit: 'L', per: 1 / LITRE_m3, step: 20 },
};
/** m */
export const SIDE: Scale = {
  us: { unit: 'ft', per: 1 / FOOT_m, step: 0.1 },
  si: { unit: 'm', per: 1, step: 0.05 },
};
/** m, by a tape */
export const TAPE: Scale = {
  us: { unit: 'in', per: 1 / INCH_m, step: 0.25 },
  si: { unit: 'cm', per: 100, step: 0.5 },
};
/** m, from drawings */
export const DRAWN: Scale = {
  us: { unit: 'in', per: 1 / INCH_m, step: 1 },
  si: { unit: 'cm', per: 100, step: 2 },
};
/** m2 */
export const AREA: Scale = {
  us: { unit: 'ft2', per: 1 / (FOOT_m * FOOT_m), step: 0.1 },
  si: { unit: 'm2', per: 1, step: 0.01 },
};
/** m3/min */
export const RATE: Scale = {
  us: { unit: 'gpm', per: 1 / GALLON_m3, step: 0.1 },
  si: { unit: 'Lmin', per: 1 / LITRE_m3, step: 0.5 },
};
/** m3/min of air */
export const AIR: Scale = {
  us: { unit: 'cfm', per: 1 / (FOOT_m * FOOT_m * FOOT_m), step: 0.01 },
  si: { unit: 'Lmin', per: 1 / LITRE_m3, step: 0.5 },
};
/** kPa */
export const PRESSURE: Scale = {
  us: { unit: 'psi', per: 1 / PSI_kPa, step: 0.01 },
  si: { unit: 'kPa', per: 1, step: 0.1 },
};
/** kg, of a tablet */
export const TABLET: Scale = {
  us: { unit: 'oz', per: 16 / POUND_kg, step: 0.1 },
  si: { unit: 'g', per: 1000, step: 5 },
};
/** kg/m3, of chlorine in bleach */
export const STRENGTH: Scale = {
  us: { unit: 'lbgal', per: GALLON_m3 / POUND_kg, step: 0.01 },
  si: { unit: 'gL', per: 1, step: 1 },
};
/** kW */
export const POWER: Scale = {
  us: { unit: 'hp', per: 1 / 0.745699872, step: 0.01 },
  si: { unit: 'kW', per: 1, step: 0.01 },
};
