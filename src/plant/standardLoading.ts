/**
 * Loading of the test stand: shares of the rated daily flow by time of day, in equal small doses spread evenly.
 * Source: NSF/ANSI 40 section 8 as applied in published test reports: 35 % 06-09 h, 25 % 11-14 h, 40 % 17-20 h,
 * doses of 5 gal.
 */
import type { Draw } from './household.ts';

export const LOADING_PERIODS = [
  { from_h: 6, to_h: 9, share: 0.35 },
  { from_h: 11, to_h: 14, share: 0.25 },
  { from_h: 17, to_h: 20, share: 0.4 },
] as const satisfies readonly LoadingPeriod[];

export const GALLON_m3 = 3.785411784e-3;
const DOSE_m3 = 5 * GALLON_m3;
const DOSE_s = 60;

/** A time of day in which so much of the rated daily flow comes. */
export interface LoadingPeriod {
  readonly from_h: number;
  readonly to_h: number;
  readonly share: number;
}

/** One day of doses at design load; `rated_m3d` is the rated flow. Day 0 starts at t = 0. */
export function designLoadDay(rated_m3d: number, day: number): Draw[] {
  return loadedDay(rated_m3d, day, LOADING_PERIODS);
}

/** One day of doses in given periods. */
export function loadedDay(rated_m3d: number, day: number, periods: readonly LoadingPeriod[]): Draw[] {
  return periods.flatMap(({ from_h, to_h, share }) => {
    const doses = Math.round((share * rated_m3d) / DOSE_m3);
    const apart = ((to_h - from_h) * 3600) / doses;
    return Array.from({ length: doses }, (_, i) => {
      const start_s = day * 86_400 + from_h * 3600 + Math.floor(i * apart);
      return { fixture: 'standard-dose', start_s, end_s: start_s + DOSE_s, flow_m3s: DOSE_m3 / DOSE_s };
    });
  });
}

/** The same shares as a steady flow within each period: what the closed forms of filling times assume. */
export function evenLoadDay(daily_m3: number, day: number): Draw[] {
  return LOADING_PERIODS.map(({ from_h, to_h, share }) => ({
    fixture: 'standard-flow',
    start_s: day * 86_400 + from_h * 3600,
    end_s: day * 86_400 + to_h * 3600,
    flow_m3s: (share * daily_m3) / ((to_h - from_h) * 3600),
  }));
}
