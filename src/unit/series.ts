/** A unit on the test stand: daily samples of what it doses, and whether they make it class I. */
import {
  COMPONENTS,
  CONTACT,
  type Composition,
  dailySource,
  loadedDay,
  SPENT,
  sampleOf,
  steadyWeather,
  type TestDay,
  WATER,
} from '../plant/index.ts';
import { Unit } from './engine.ts';
import type { UnitFault } from './fault.ts';
import type { UnitSpec } from './spec.ts';

export interface SeriesDay {
  readonly day: number;
  readonly sampled: boolean;
  /** Missing on a day without effluent. */
  readonly cbod5_mgL?: number;
  readonly solids_mgL?: number;
  readonly pH?: number;
}

interface Means {
  readonly cbod5_mgL: number;
  readonly solids_mgL: number;
}

export interface Verdict {
  readonly classI: boolean;
  readonly worst30d: Means;
  readonly worst7d: Means;
}

export interface Series {
  readonly days: readonly SeriesDay[];
  readonly verdict: Verdict;
  readonly events: number;
  readonly derivatives: number;
  readonly unit: Unit;
}

const DAY_s = 86_400;
/** Class I. Source: NSF/ANSI 40: CBOD5 25 and 40 mg/L, solids 30 and 45 mg/L over 30 and 7 days, pH 6 to 9. */
const LIMITS = { bod30: 25, bod7: 40, solids30: 30, solids7: 45, pHLow: 6, pHHigh: 9 } as const;

export function runSeries(
  spec: UnitSpec,
  programme: readonly TestDay[],
  influent: Composition,
  faults: readonly UnitFault[] = [],
): Series {
  const source = dailySource((day) => loadedDay(spec.rated_m3d, day, programme[day]?.periods ?? []), influent);
  const unit = new Unit({ spec, source, faults, seed: 1, weather: steadyWeather(20), sludgeAge_y: 0 });
  const days = programme.map((plan, day): SeriesDay => {
    const water = dayOf(unit, day, () => {
      for (const [hour, event] of [
        [plan.fails_h, 'supply.fails'],
        [plan.returns_h, 'supply.returns'],
      ] as const) {
        if (hour === undefined) continue;
        unit.cutAt(day * DAY_s + hour * 3600);
        unit.send(event);
      }
    });
    return { day, sampled: plan.sampled, ...water };
  });
  return { days, verdict: verdictOf(days), events: unit.log.length, derivatives: unit.derivatives, unit };
}

/** A unit in use, sampled every day: would it be class I? */
export function runInUse(unit: Unit, days: number): Verdict {
  return verdictOf(Array.from({ length: days }, (_, day) => ({ day, sampled: true, ...dayOf(unit, day) })));
}

/** Lives through a day and gives its composite sample. */
function dayOf(unit: Unit, day: number, during?: () => void): Partial<SeriesDay> {
  const before = out(unit);
  during?.();
  unit.cutAt((day + 1) * DAY_s);
  return composite(before, out(unit));
}

/** What has left for the field: water, m3, and every component, g. */
function out(unit: Unit): { readonly water_m3: number; readonly grams: Float64Array } {
  const from = CONTACT + SPENT.sprayed;
  return { water_m3: unit.y[WATER.sprayed] as number, grams: unit.y.slice(from, from + COMPONENTS) };
}

/** The day's composite, in proportion to flow. */
function composite(before: ReturnType<typeof out>, after: ReturnType<typeof out>): Partial<SeriesDay> {
  const water = after.water_m3 - before.water_m3;
  if (water <= 1e-3) return {};
  const c = after.grams.map((g, i) => (g - (before.grams[i] as number)) / water);
  const { cbod5_mgL, solids_mgL, pH } = sampleOf(c);
  return { cbod5_mgL, solids_mgL, pH };
}

function verdictOf(days: readonly SeriesDay[]): Verdict {
  const worst30d = worstMeans(days, 30);
  const worst7d = worstMeans(days, 7);
  const acid = days.some((d) => d.sampled && d.pH !== undefined && (d.pH < LIMITS.pHLow || d.pH > LIMITS.pHHigh));
  const classI =
    !acid &&
    worst30d.cbod5_mgL <= LIMITS.bod30 &&
    worst7d.cbod5_mgL <= LIMITS.bod7 &&
    worst30d.solids_mgL <= LIMITS.solids30 &&
    worst7d.solids_mgL <= LIMITS.solids7;
  return { classI, worst30d, worst7d };
}

/** The highest means over so many days running, of the samples that count. */
function worstMeans(days: readonly SeriesDay[], span: number): Means {
  const worst = (of: (day: SeriesDay) => number | undefined): number => {
    let most = 0;
    for (let last = Math.min(span, days.length) - 1; last < days.length; last++) {
      const values = days
        .slice(Math.max(0, last - span + 1), last + 1)
        .flatMap((d) => (d.sampled ? (of(d) ?? []) : []));
      if (values.length > 0) most = Math.max(most, values.reduce((a, b) => a + b, 0) / values.length);
    }
    return most;
  };
  return { cbod5_mgL: worst((d) => d.cbod5_mgL), solids_mgL: worst((d) => d.solids_mgL) };
}
