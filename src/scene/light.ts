/** Daylight by hour and season, and how a sight ages. */
import { clamp, cos, PI } from '../plant/index.ts';
import { type CalendarDay, dayNumber } from '../unit/index.ts';
import type { Ink } from './types.ts';

/** Daylight, 0 night to 1 day: half a day of light at the equinox, three hours more or less at midsummer and midwinter. */
export function daylight(day: CalendarDay, secondOfDay: number): number {
  const yearStart = dayNumber({ year: day.year, month: 1, day: 1 });
  const season = -cos((2 * PI * (dayNumber(day) - yearStart + 10)) / 365.25);
  const halfDay_h = 6 + 1.5 * season;
  const fromNoon_h = Math.abs(secondOfDay / 3600 - 12.2);
  return clamp((halfDay_h - fromNoon_h) / 0.8 + 0.5, 0, 1);
}

/** A sight is fresh for a quarter of an hour, then fades over two hours to a third. */
const FRESH_s = 900;
const FADE_s = 7200;

export function inkOf(seen_s: number, now_s: number): Ink {
  const age = now_s - seen_s - FRESH_s;
  return {
    kind: 'ink',
    seen_s: ((seen_s % 86_400) + 86_400) % 86_400,
    fresh: clamp(1 - (0.67 * age) / FADE_s, 0.33, 1),
  };
}
