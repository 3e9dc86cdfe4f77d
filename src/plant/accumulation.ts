/** Sludge that stays in a first tank over the years, and how a toxic dose slows what lives in the second. */
import { exp, log } from './num.ts';

/**
 * Sludge kept by one person's sewage after so many years, L: 83.2 t^0.845, our fit through Gray 1995 (Environ. Technol.
 * 16, 795-800; 28 tanks): 0.254 L/d over the first half year, 0.178 at five years.
 */
export function sludgePerPerson_L(years: number): number {
  return years <= 0 ? 0 : 83.2 * exp(0.845 * log(years));
}

/**
 * Years until a tank wants pumping by the extension tables: (V - 50 n) / (76.8 n), US gallons and persons. A planning
 * rule with a margin of three to four over what Gray measured, not physics.
 */
export function pumpingInterval_y(tank_gal: number, persons: number): number {
  return Math.max(0, (tank_gal - 50 * persons) / (76.8 * persons));
}

export interface Inhibition {
  /** Concentration that halves the activity, mg/L, and the steepness of the curve. */
  readonly half_mgL: number;
  readonly slope: number;
}

/** Sludge respiration under hypochlorite, from the EC10 and EC50 of a registration dossier (OECD 209, 3 h). */
export const HYPOCHLORITE: Inhibition = { half_mgL: 77.1, slope: 4.42 };
/** Respiration and nitrification under quaternary ammonium, fits of Du 2017 (abstract). */
export const QUATERNARY_RESPIRATION: Inhibition = { half_mgL: 9.9, slope: 0.91 };
export const QUATERNARY_NITRIFICATION: Inhibition = { half_mgL: 24.4, slope: 2.35 };

/** Share of its activity that sludge keeps: Hill's curve 1 / (1 + (C / IC50)^n). */
export function activityLeft(by: Inhibition, concentration_mgL: number): number {
  if (concentration_mgL <= 0) return 1;
  return 1 / (1 + exp(by.slope * log(concentration_mgL / by.half_mgL)));
}
