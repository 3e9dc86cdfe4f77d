/** Chlorine in effluent: its forms, what ammonia makes of a dose, and what a residual kills in a time. mg/L, minutes. */
import { clamp, exp, pow } from './num.ts';

/** Acid constant of hypochlorous acid. Source: Morris 1966 (from memory): pKa = 3000/T - 10.0686 + 0.0253 T. */
export function hypochlorousPka(temperature_C: number): number {
  const t = temperature_C + 273.15;
  return 3000 / t - 10.0686 + 0.0253 * t;
}

/** Share of the free chlorine that is hypochlorous acid, the form that kills. */
export function hypochlorousShare(pH: number, pKa: number): number {
  return 1 / (1 + pow(10, pH - pKa));
}

/** Loss of free and of combined chlorine, 1/d: half-lives of 140 and 1,680 min. Source: a plumbing-water test of 1986. */
const FREE_DECAY = (Math.LN2 * 1440) / 140;
const COMBINED_DECAY = (Math.LN2 * 1440) / 1680;
/** What can be oxidised takes free chlorine at this rate, m3 per g COD and day (convention: minutes in mixed liquor). */
const DEMAND = 0.5;
/** Combined chlorine is taken a seventh as fast (convention), and kills sludge a tenth as fast (convention). */
const COMBINED_TAKEN = 0.15;
export const COMBINED_MILDER = 0.1;

/** Rate at which a residual is lost in water with so much to oxidise, g COD/m3; 1/d. */
export function chlorineLoss(reducing_gm3: number, combined: boolean): number {
  const demand = DEMAND * Math.max(0, reducing_gm3);
  return combined ? COMBINED_DECAY + COMBINED_TAKEN * demand : FREE_DECAY + demand;
}

/** Chlorine to nitrogen by mass where one mole has met one mole: all of it is monochloramine up to here. */
export const MONO_RATIO = 5.07;
/**
 * The hump and the break of the curve as half an hour's contact leaves them, fitted to the kinetic model at pH 7 and
 * 20 degC: combined chlorine stands at its peak up to one ratio, has fallen to what stays at the next, and all beyond
 * is free. Without time the break would stand at 7.6.
 */
const PEAK = 5.5;
const FALLS_FROM = 7.2;
const BREAK_RATIO = 9.1;
const STAYS = 0.4;

export interface ChlorineForms {
  combined: number;
  free: number;
  /** Nitrogen still as free ammonia, and what was burnt to gas. */
  ammonia: number;
  burnt: number;
}

/** What a dose left over after demand makes with ammonia in half an hour, mg/L, written into `out`. */
export function chlorineForms(dose_mgL: number, ammonia_mgL: number, out: ChlorineForms): ChlorineForms {
  const dose = Math.max(0, dose_mgL);
  const n = Math.max(0, ammonia_mgL);
  const ratio = n > 0 ? dose / n : Number.POSITIVE_INFINITY;
  const burnt = clamp((ratio - FALLS_FROM) / (BREAK_RATIO - FALLS_FROM), 0, 1);
  out.combined = Math.min(dose, n * (PEAK + burnt * (STAYS - PEAK)));
  out.free = ratio > BREAK_RATIO ? dose - n * BREAK_RATIO : 0;
  out.ammonia = Math.max(0, n - dose / MONO_RATIO);
  out.burnt = n * burnt;
  return out;
}

export interface KillLaw {
  /** Exponent, and the product of residual and time, mg min/L, below which nothing is killed. */
  readonly n: number;
  readonly b: number;
}

/** Fitted to a textbook's survivors of fecal coliform at 12 degC (rms 0.17 log; see tests/published/chlorine.test.ts). */
export const FECAL_KILL: KillLaw = { n: 2.287, b: 1.98 };

/** Share that survives a residual for a time: Collins and Selleck, (C t / b)^-n beyond b (the law from memory). */
export function survivors(law: KillLaw, residual_mgL: number, minutes: number): number {
  return outlive(law, 0, residual_mgL * minutes);
}

/** Share of those which have met one product of residual and time, mg min/L, that outlives meeting the larger one. */
export function outlive(law: KillLaw, met: number, meets: number): number {
  return meets <= law.b ? 1 : pow(Math.max(met, law.b) / meets, law.n);
}

/** Share of the first fraction of what leaves so many equal mixed tanks in a row that has stayed t/t_mean: 1 - sum. */
export function passedBy(tanks: number, share: number): number {
  const x = tanks * share;
  let term = 1;
  let sum = 1;
  for (let i = 1; i < tanks; i++) {
    term *= x / i;
    sum += term;
  }
  return 1 - exp(-x) * sum;
}
