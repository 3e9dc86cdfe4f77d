/** The wind over the lawn, where a call states none: a convention of day, hour and weather. The picture alone knows it. */
import { clamp, cos, draw, PI } from '../plant/index.ts';
import { type CalendarDay, dayNumber } from '../unit/index.ts';

/** All properties lie in one valley and have one wind. */
const SEED = 0;
/** Share of the days on which it comes from the west: the northern mid-latitudes lie in the westerlies (convention). */
const WESTERLY = 0.7;
/** Between the stillest day's wind and the windiest's, over the mean day's. */
const STILLEST = 0.3;
const WINDIEST = 1.6;
/** Of a night, and what a clear afternoon adds when the warm ground stirs the air most, m/s and h (convention). */
const NIGHT_ms = 0.4;
const AFTERNOON_ms = 3.2;
const MOST_STIRRED_h = 15;
/** Clouds keep the ground cool: so much less of it under a covered sky (convention). */
const SHADED = 0.5;
/** What comes with rain: so much at 1 mm/h, as its root (convention). */
const RAIN_ms = 1.5;
/** How far gusts go above and below, as a share of the wind, in dry weather and in heavy rain, and how long one lasts. */
const GUST = 0.12;
const GUST_STORM = 0.35;
const GUST_s = 240;
const HEAVY_mmh = 7.6;
/** No more than a call may state. */
const MOST_ms = 20;

/**
 * Wind along the plate, m/s, in tenths: above 0 it blows to the right of the picture, which looks south, so that it comes
 * from the east; below 0 it comes from the west. The same day, hour and weather have the same wind.
 */
export function windOf(day: CalendarDay, secondOfDay: number, cloud: number, rain_mmh: number): number {
  const days = dayNumber(day) + secondOfDay / 86_400;
  const stirred = Math.max(0, cos((2 * PI * (secondOfDay / 3600 - MOST_STIRRED_h)) / 24));
  const strength = NIGHT_ms + AFTERNOON_ms * (1 - SHADED * cloud) * stirred + RAIN_ms * Math.sqrt(rain_mmh);
  const gusts = GUST + (GUST_STORM - GUST) * clamp(rain_mmh / HEAVY_mmh, 0, 1);
  const gust = 1 + gusts * (2 * between((days * 86_400) / GUST_s, (n) => draw(SEED, 'gust', n)) - 1);
  const wind_ms = clamp(between(days - 0.5, ofDay) * strength * gust, -MOST_ms, MOST_ms);
  return Math.floor(10 * wind_ms + 0.5) / 10;
}

/** A day's own share of the wind, with its side, at its noon. */
function ofDay(day: number): number {
  const side = draw(SEED, 'wind side', day) < WESTERLY ? -1 : 1;
  return side * (STILLEST + (WINDIEST - STILLEST) * draw(SEED, 'wind', day));
}

/** On the straight line from one whole number's value to the next one's. */
function between(x: number, at: (n: number) => number): number {
  const n = Math.floor(x);
  const from = at(n);
  return from + (at(n + 1) - from) * (x - n);
}
