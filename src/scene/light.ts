/** Sun, moon, season and rain as one sees them from the lawn, and how a sight ages. */
import { clamp, cos, PI } from '../plant/index.ts';
import { type CalendarDay, dayNumber } from '../unit/index.ts';
import type { BodyScene, Ink, SkyScene } from './types.ts';
import { windOf } from './wind.ts';

export interface Surroundings {
  readonly day: CalendarDay;
  readonly secondOfDay: number;
  /** Share of the sky under cloud. */
  readonly cloud: number;
  /** Rain as a share of a downpour, 0 to 1: of a call whose file has no storms. */
  readonly rain: number;
  /** Wind along the plate, m/s, above 0 to the right: as `SkyScene` has it. Where nobody states it, the hour and the weather tell. */
  readonly wind_ms?: number | undefined;
  /** What falls now, mm/h, and fell in the last six hours, mm: of one whose file has. */
  readonly storm?: { readonly rain_mmh: number; readonly fallen_mm: number };
}

/** The downpour that a share of rain is a share of, mm/h: heavy rain begins at 7.6 (glossary of meteorology, from memory). */
const DOWNPOUR_mmh = 10;
/** Rain of six hours after which water stands on the lawn, mm (convention). */
const PUDDLES_mm = 25;
/** Solar noon of the valley, h, as far east of its meridian as west of the zone's middle (convention). */
const NOON_h = 12.2;
/** Hours of light at midsummer over those at the equinox, on each side of noon. */
const SEASON_h = 1.5;
/** Sine of the tilt of the earth's axis, 23.44 degrees. */
const TILT = 0.3978;
/** Latitude at which midsummer has those hours: cos(7.5 h) = -tan(latitude) tan(tilt) gives 41.4 degrees north. */
const LATITUDE = { sin: 0.6613, cos: 0.7501 } as const;
/** A new moon, 6 January 2000 at 18:14 (almanac, from memory), and the mean length of a lunation, d. */
const NEW_MOON_d = dayNumber({ year: 2000, month: 1, day: 6 }) + 0.76;
const LUNATION_d = 29.530588;

/** Where the year stands, as an angle from midwinter. */
function yearAngle(yearDay: number): number {
  return (2 * PI * (yearDay + 9)) / 365.25;
}

function yearDayOf(day: CalendarDay): number {
  return dayNumber(day) - dayNumber({ year: day.year, month: 1, day: 1 }) + 1;
}

/** Daylight, 0 night to 1 day: half a day of light at the equinox, three hours more or less at midsummer and midwinter. */
export function daylight(day: CalendarDay, secondOfDay: number): number {
  const halfDay_h = 6 - SEASON_h * cos(yearAngle(yearDayOf(day)));
  const fromNoon_h = Math.abs(secondOfDay / 3600 - NOON_h);
  return clamp((halfDay_h - fromNoon_h) / 0.8 + 0.5, 0, 1);
}

/** A body of that declination's sine so many hours past the south; the moon's small tilt to the sun's way is left out. */
function bodyAt(declination: number, hour: number): BodyScene {
  const flat = Math.sqrt(1 - declination * declination);
  return {
    up: LATITUDE.sin * declination + LATITUDE.cos * flat * cos((PI * hour) / 12),
    across: clamp(hour / 8, -1.5, 1.5),
  };
}

/** Hours past noon, from -12 to 12. */
function turned(hour: number): number {
  return hour - 24 * Math.floor((hour + 12) / 24);
}

/** What stands over the lawn: of the property it says nothing. */
export function skyOf({ day, secondOfDay, cloud, rain, wind_ms, storm }: Surroundings): SkyScene {
  const yearDay = yearDayOf(day);
  const angle = yearAngle(yearDay);
  const hour = secondOfDay / 3600 - NOON_h;
  const lunations = (dayNumber(day) + secondOfDay / 86_400 - NEW_MOON_d) / LUNATION_d;
  const age = lunations - Math.floor(lunations);
  const sun = bodyAt(-TILT * cos(angle), turned(hour));
  const rain_mmh = storm?.rain_mmh ?? rain * DOWNPOUR_mmh;
  const fallen_mm = storm?.fallen_mm ?? rain_mmh;
  return {
    daylight: daylight(day, secondOfDay),
    // No rain without a cloud to fall from.
    cloud: rain_mmh > 0 ? Math.max(cloud, 0.75) : cloud,
    rain_mmh,
    wind_ms: wind_ms ?? windOf(day, secondOfDay, cloud, rain_mmh),
    wet: clamp(fallen_mm / PUDDLES_mm + (rain_mmh > 0 ? 0.3 : 0), 0, 1),
    date: { year: day.year, month: day.month, day: day.day },
    yearDay,
    frost: frostOf(yearDay, cloud, rain_mmh, sun.up),
    sun,
    moon: { ...bodyAt(-TILT * cos(angle + 2 * PI * age), turned(hour - 24 * age)), age },
  };
}

/**
 * Hoar frost of a clear winter night, gone once the sun stands over it. The weather has no air temperature: the two
 * months on either side of 20 January stand in for it (convention).
 */
function frostOf(yearDay: number, cloud: number, rain_mmh: number, sunUp: number): number {
  const cold = clamp(3 * (cos((2 * PI * (yearDay - 20)) / 365.25) - 0.5), 0, 1);
  return rain_mmh > 0 ? 0 : cold * (1 - cloud) * clamp(1 - 2.5 * sunUp, 0, 1);
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
