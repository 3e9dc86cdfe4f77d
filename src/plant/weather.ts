/**
 * What weather does to a unit: how warm its tanks are, how dry the house's air is, when and how hard it rains. Seasons
 * are one cosine of 365.25 days; a day's storms depend on (climate, seed, day) alone.
 */
import { cos, PI } from './num.ts';
import { draw, exponential, poisson } from './random.ts';

/** Rain of one month of the year. */
export interface StormMonth {
  /** Mean number of storms in the month, mean depth of one, mm, and how long each lasts, h (at most a day). */
  readonly storms: number;
  readonly depth_mm: number;
  readonly hours: number;
}

export interface WeatherSpec {
  /** Soil at the depth of the tanks, damping by depth included: yearly mean, half of the yearly range, coldest day. */
  readonly soil: { readonly mean_C: number; readonly swing_C: number; readonly coldestDay: number };
  /** Relative humidity indoors, 0 to 1, on the coldest and on the warmest day. */
  readonly humidity: { readonly winter: number; readonly summer: number };
  /** Twelve months, each a twelfth of the year from 1 January (convention). */
  readonly months: readonly StormMonth[];
}

/** Weather as the engine asks for it: pure functions of time. */
export interface Weather {
  /** What stands in the tanks, degC. */
  temperature_C(t_s: number): number;
  rain_mmh(t_s: number): number;
  /** First instant after `t_s` at which the rain changes; of a dry year its end, where one asks again. */
  nextEdge(t_s: number): number;
  /** Relative humidity indoors, 0 to 1. */
  humidity(t_s: number): number;
}

/** One storm: even rain from `start_s` (included) to `end_s` (excluded), whole seconds. */
export interface Storm {
  readonly start_s: number;
  readonly end_s: number;
  readonly rain_mmh: number;
}

const DAY_s = 86_400;
const YEAR_d = 365.25;
const MONTH_d = YEAR_d / 12;
/** How far ahead the next storm is looked for, days. */
const AHEAD_d = 366;

/** Sewage at the house drain in the coldest and the warmest season, degC: 18 to 25 (handbook range, from memory). */
const HOUSE_DRAIN = { winter_C: 18, summer_C: 25 } as const;
/** How far sewage pulls the tanks from the soil's temperature towards its own (convention). */
const SEWAGE_SHARE = 0.3;
/** Indoor air of the steady weather (convention). */
const STEADY_HUMIDITY = 0.5;

/** Where the year stands between its coldest day, 0, and its warmest, 1. `dayOfYear` 1 is 1 January's midnight. */
function warmth({ soil }: WeatherSpec, dayOfYear: number): number {
  return (1 - cos((2 * PI * (dayOfYear - soil.coldestDay)) / YEAR_d)) / 2;
}

/**
 * Soil at tank depth, degC: the yearly sinusoid of soil temperature, mean - swing cos(2 pi (day - coldest) / 365.25).
 * Source: van Wijk and de Vries 1963, as in any handbook of soil physics (from memory).
 */
export function soilTemperature_C(spec: WeatherSpec, dayOfYear: number): number {
  return spec.soil.mean_C + spec.soil.swing_C * (2 * warmth(spec, dayOfYear) - 1);
}

/** Water in the tanks, degC: mostly the soil's temperature, by a share the sewage's. */
export function waterTemperature_C(spec: WeatherSpec, dayOfYear: number): number {
  const soil_C = soilTemperature_C(spec, dayOfYear);
  const sewage_C = between(HOUSE_DRAIN.winter_C, HOUSE_DRAIN.summer_C, warmth(spec, dayOfYear));
  return between(soil_C, sewage_C, SEWAGE_SHARE);
}

function between(from: number, to: number, share: number): number {
  return from + share * (to - from);
}

/** Storms that begin on engine day `day`, which is `dayOfYear` in the year; depths exponential, instants even. */
export function stormsOfDay(spec: WeatherSpec, seed: number, day: number, dayOfYear: number): Storm[] {
  const month = spec.months[monthOf(dayOfYear)];
  if (!month) return [];
  const stream = `storm/${day}`;
  const count = poisson(month.storms / MONTH_d, draw(seed, stream, 0));
  return Array.from({ length: count }, (_, k) => {
    const start_s = day * DAY_s + Math.floor(draw(seed, stream, 2 * k + 1) * DAY_s);
    const length_s = Math.max(1, Math.round(month.hours * 3600));
    const depth_mm = exponential(month.depth_mm, draw(seed, stream, 2 * k + 2));
    return { start_s, end_s: start_s + length_s, rain_mmh: (depth_mm * 3600) / length_s };
  });
}

/** Which twelfth of the year a day is in, 0 to 11. */
function monthOf(dayOfYear: number): number {
  const years = (dayOfYear - 1) / YEAR_d;
  return Math.floor(12 * (years - Math.floor(years)));
}

/** Rain of one day: `rates_mmh[i]` falls from `edges[i]` to the next edge; the first edge is the day's midnight. */
interface RainDay {
  readonly edges: readonly number[];
  readonly rates_mmh: readonly number[];
}

function rainDay(storms: readonly Storm[], from_s: number): RainDay {
  const to_s = from_s + DAY_s;
  const ends = storms.flatMap((s) => [s.start_s, s.end_s]).filter((t) => t > from_s && t < to_s);
  const edges = [from_s, ...[...new Set(ends)].sort((a, b) => a - b)];
  const falling = (t: number) => storms.filter((s) => s.start_s <= t && t < s.end_s);
  return { edges, rates_mmh: edges.map((t) => falling(t).reduce((sum, s) => sum + s.rain_mmh, 0)) };
}

/** A climate lived through from a day of the year on (1 is 1 January); engine time 0 is that day's midnight. */
export function weatherOf(spec: WeatherSpec, seed: number, startDayOfYear: number): Weather {
  const storms = remembered((day) => stormsOfDay(spec, seed, day, startDayOfYear + day));
  const rain = remembered((day) => rainDay([...storms(day - 1), ...storms(day)], day * DAY_s));
  /** First change of the rain on the days after `day`, its midnight included. */
  const later = remembered((day) => {
    let before = rain(day).rates_mmh.at(-1);
    for (let next = day + 1; next <= day + AHEAD_d; next++) {
      const { edges, rates_mmh } = rain(next);
      const at = rates_mmh.findIndex((rate) => rate !== before);
      if (at >= 0) return edges[at] as number;
      before = rates_mmh.at(-1);
    }
    return (day + AHEAD_d + 1) * DAY_s;
  });
  const dayOfYear = (t_s: number) => startDayOfYear + t_s / DAY_s;
  return {
    temperature_C: (t) => waterTemperature_C(spec, dayOfYear(t)),
    humidity: (t) => between(spec.humidity.winter, spec.humidity.summer, warmth(spec, dayOfYear(t))),
    rain_mmh: (t) => {
      const { edges, rates_mmh } = rain(Math.floor(t / DAY_s));
      return rates_mmh[edges.findLastIndex((edge) => edge <= t)] as number;
    },
    nextEdge: (t) => {
      const day = Math.floor(t / DAY_s);
      return rain(day).edges.find((edge) => edge > t) ?? later(day);
    },
  };
}

/** A function of the day that is worked out once for each day. */
function remembered<T>(of: (day: number) => T): (day: number) => T {
  const known = new Map<number, T>();
  return (day) => {
    const old = known.get(day);
    if (old !== undefined) return old;
    const made = of(day);
    known.set(day, made);
    return made;
  };
}

/** No season: tanks at one temperature, and no rain but the storms given. */
export function steadyWeather(temperature_C: number, storms: readonly Storm[] = []): Weather {
  const edges = storms.flatMap((s) => [s.start_s, s.end_s]).sort((a, b) => a - b);
  return {
    temperature_C: () => temperature_C,
    humidity: () => STEADY_HUMIDITY,
    rain_mmh: (t) => storms.reduce((sum, s) => (s.start_s <= t && t < s.end_s ? sum + s.rain_mmh : sum), 0),
    nextEdge: (t) => edges.find((edge) => edge > t) ?? Number.POSITIVE_INFINITY,
  };
}

/** Water that rain brings to a tank from an area that drains into it, m3/s: all that falls there (rational method, 1). */
export function infiltration_m3s(rain_mmh: number, area_m2: number): number {
  return (rain_mmh / 1000 / 3600) * area_m2;
}
