/**
 * A year in pages: a home whose unit somebody neglects in one way, beside the same home with a unit that is looked after. Same
 * draws, same weather of our valley's ridge; each page is a week, as both stand at its end.
 */
import { placedFault } from '../faults/index.ts';
import { type HouseholdSpec, householdSource, type WeatherSpec, weatherOf } from '../plant/index.ts';
import { fullnessOf } from '../service/index.ts';
import { type CalendarDay, calendarDay } from '../unit/calendar.ts';
import { dayNumber, type Readout, readout, Unit, type UnitFault, type UnitSpec } from '../unit/index.ts';
import { SIGN_IDS, SIGNS, type SignId } from './signs.ts';

export const NEGLECT_IDS = ['never-pumped', 'no-refill', 'dirty-filter', 'air-off', 'wipes'] as const;
export type NeglectId = (typeof NEGLECT_IDS)[number];

export interface YearAsked {
  readonly neglect: NeglectId;
  readonly spec: UnitSpec;
  readonly household: HouseholdSpec;
  readonly climate: WeatherSpec;
  readonly seed: number;
}

/** One unit at noon of the week's last day. */
export interface YearPage<Seen> {
  /** Thicknesses in the trash tank, m. */
  readonly scum_m: number;
  readonly sludge_m: number;
  readonly oxygen_mgL: number;
  /** Solids in what goes out. */
  readonly solids_mgL: number;
  /** What somebody could have noticed in the week. */
  readonly signs: readonly SignId[];
  /** What whoever asked makes of the unit then. */
  readonly seen: Seen;
}

export interface YearWeek<Seen> {
  readonly date: CalendarDay;
  readonly water_C: number;
  readonly touched: YearPage<Seen>;
  readonly twin: YearPage<Seen>;
}

export interface Year<Seen> {
  readonly neglect: NeglectId;
  readonly weeks: readonly YearWeek<Seen>[];
}

/** Looks at a unit at an instant, s, which is noon of a day. */
export type Look<Seen> = (unit: Unit, t: number, date: CalendarDay) => Seen;

export const WEEKS = 52;
const DAY_s = 86_400;
/** Any year without a leap day does (convention). */
const FIRST = dayNumber({ year: 2026, month: 1, day: 1 });
/** Looks: each sixth hour, so that noon is one of them (convention). */
const LOOK_s = 6 * 3600;
/** Age of the sludge: looked after, and never pumped out, years (codes have it out at three to five). */
const KEPT_y = 0.5;
const NEVER_PUMPED_y = 6;
/** Weeks between visits, three a year. Source: 30 TAC 285.91(4), every four months. */
const VISITS_APART_w = 17;
/** Share of its limit at which a visit has a tank pumped out: it would be full before the next (convention). */
const NEARLY = 0.7;
/** The neglect begins in March (convention); the sludge has grown for years by then. */
const BEGINS_s = 60 * DAY_s;
/** A filter that nobody rinses clogs over half a year, a mat of wipes grows over a quarter (convention). */
const HALF_A_YEAR_h = 182 * 24;
/** What a store that nobody fills comes to, by what disinfects; a lamp that nobody renews goes out. */
const RUN_OUT = { liquid: 'reservoir-empty', tablets: 'tablets-used-up', ultraviolet: 'uv-lamp-out' } as const;

interface Neglect {
  readonly faults: (spec: UnitSpec) => readonly { readonly key: string; readonly ramp_h: number }[];
  readonly sludgeAge_y?: number;
  readonly neverPumped?: boolean;
}

const NEGLECTS: Readonly<Record<NeglectId, Neglect>> = {
  'never-pumped': { faults: () => [], sludgeAge_y: NEVER_PUMPED_y, neverPumped: true },
  'no-refill': { faults: ({ plant }) => [{ key: RUN_OUT[plant.disinfection.kind], ramp_h: 0 }] },
  'dirty-filter': { faults: () => [{ key: 'intake-clogged', ramp_h: HALF_A_YEAR_h }] },
  'air-off': { faults: () => [{ key: 'compressor-stopped', ramp_h: 0 }] },
  wipes: {
    faults: () => [
      { key: 'inlet-blocked', ramp_h: HALF_A_YEAR_h / 2 },
      { key: 'grease', ramp_h: 0 },
    ],
  },
};
const LOOKED_AFTER: Neglect = { faults: () => [] };

/** Tells the share lived through after each week of either twin; its return is the result. */
export function* yearOf<Seen>(asked: YearAsked, look: Look<Seen>): Generator<number, Year<Seen>> {
  const { neglect, climate, seed } = asked;
  const lives: YearPage<Seen>[][] = [];
  for (const how of [NEGLECTS[neglect], LOOKED_AFTER]) {
    const life: YearPage<Seen>[] = [];
    for (const page of lived(asked, how, look)) {
      life.push(page);
      yield (lives.length * WEEKS + life.length) / (2 * WEEKS);
    }
    lives.push(life);
  }
  const { temperature_C } = weatherOf(climate, seed, 1);
  const [touched = [], twin = []] = lives;
  const weeks = twin.flatMap((page, i): YearWeek<Seen>[] => {
    const other = touched[i];
    return other ? [{ date: dateOf(i), water_C: temperature_C(noonOf(i)), touched: other, twin: page }] : [];
  });
  return { neglect, weeks };
}

/** The last day of a week, and its noon, s. */
const dateOf = (week: number) => calendarDay(FIRST + 7 * (week + 1) - 1);
const noonOf = (week: number) => (7 * (week + 1) - 0.5) * DAY_s;

function* lived<Seen>(
  { spec, household, climate, seed }: YearAsked,
  { faults, sludgeAge_y = KEPT_y, neverPumped = false }: Neglect,
  look: Look<Seen>,
): Generator<YearPage<Seen>> {
  const unit = new Unit({
    spec,
    source: householdSource(household, seed),
    faults: faultsOf(faults(spec)),
    seed,
    weather: weatherOf(climate, seed, 1),
    sludgeAge_y,
  });
  let t = 0;
  let before = readout(unit, t);
  for (let week = 0; week < WEEKS; week++) {
    const signs = new Set<SignId>();
    while (t < noonOf(week)) {
      t += LOOK_s;
      unit.advance(t);
      const now = readout(unit, t);
      for (const id of SIGN_IDS) if (SIGNS[id](now, before, spec)) signs.add(id);
      before = now;
    }
    yield pageOf(before, signs, look(unit, t, dateOf(week)));
    if (!neverPumped && (week + 1) % VISITS_APART_w === 0) haulWhatIsDue(unit, t, before);
  }
}

/** What a visit has the truck take: each tank that comes near its limit, rather than let it go over before the next visit. */
function haulWhatIsDue(unit: Unit, t: number, now: Readout): void {
  const fullness = fullnessOf(unit.spec, now);
  for (const tank of ['trash', 'aeration', 'pump'] as const) {
    if (fullness[tank] < NEARLY) continue;
    unit.cutAt(t);
    unit.haul(tank);
  }
}

function faultsOf(faults: ReturnType<Neglect['faults']>): UnitFault[] {
  return faults.map(({ key, ramp_h }) => {
    const { effect, severity } = placedFault(key);
    return { id: key, effect, severity, onset_s: BEGINS_s, ramp_s: ramp_h * 3600, present: 'always' };
  });
}

function pageOf<Seen>(now: Readout, signs: ReadonlySet<SignId>, seen: Seen): YearPage<Seen> {
  return {
    scum_m: now.trashScum_m,
    sludge_m: now.trashSludge_m,
    oxygen_mgL: now.oxygen_mgL,
    solids_mgL: now.water.pump.solids_mgL,
    signs: SIGN_IDS.filter((id) => signs.has(id)),
    seen,
  };
}
