/**
 * Follow a drop: the water of one flush, marked with a little salt, on its way through a sound unit. What a tracer study
 * finds: how it spreads over the chambers, how long each holds it, and what treatment has left of the dirt it came with.
 */
import {
  COMPONENT,
  type Draw,
  drawsOfDay,
  type HouseholdSpec,
  householdSource,
  type Sample,
  STATE_SIZE,
  sampleOf,
  steadyWeather,
} from '../plant/index.ts';
import { MARK_PLACES, type MarkPlace, whereIs } from '../plant/tracer.ts';
import { readout, Unit, type UnitSpec } from '../unit/index.ts';
import { SEASONS, type SeasonId } from './seasons.ts';

export interface DropAsked {
  readonly spec: UnitSpec;
  readonly household: HouseholdSpec;
  readonly season: SeasonId;
  readonly seed: number;
}

/** Shares of the flush by place at an instant; they add up to one. */
export interface DropLook {
  readonly since_s: number;
  readonly share: Readonly<Record<MarkPlace, number>>;
}

/** Where the water is held, in flow order. */
export const DROP_PLACES = ['trash', 'aeration', 'clarifier', 'riser', 'pump'] as const satisfies readonly MarkPlace[];
export type DropPlace = (typeof DROP_PLACES)[number];

/** Where treatment is looked at: as the house sends it, and what leaves each step. Liquor is no step: it is meant to be thick. */
export const DIRT_PLACES = ['house', 'trash', 'clarifier', 'riser', 'pump'] as const;
export type DirtPlace = (typeof DIRT_PLACES)[number];
export const DIRT_IDS = ['cbod5_mgL', 'solids_mgL', 'kjeldahl_mgL', 'coliform_per100mL'] as const;
export type DirtId = (typeof DIRT_IDS)[number];
export type Dirt = Readonly<Record<DirtId, number>>;

export interface Drop {
  /** Second of the day of the flush, and its water. */
  readonly clock_s: number;
  readonly flush_m3: number;
  readonly looks: readonly DropLook[];
  /** Mean time that the water stayed in each place, s, over all of it that had passed on by the end. */
  readonly stay_s: Readonly<Record<DropPlace, number>>;
  /** When a hundredth, half and nine tenths of it had reached the field, s; nothing where the days did not suffice. */
  readonly reached_s: Readonly<Record<'first' | 'half' | 'most', number | undefined>>;
  /** Means over the days that were lived through. */
  readonly dirt: Readonly<Record<DirtPlace, Dirt>>;
}

const DAY_s = 86_400;
const HOUR_s = 3600;
/** Both the water and its dirt have settled into the household's days by then, and people are up (convention). */
const AFTER_s = 3 * DAY_s + 6.5 * HOUR_s;
/** Days that are lived through: some four times what a small household needs to send the chambers' fill (convention). */
export const DROP_d = 30;
/** Looks: each ten minutes on the first day, then each hour; for the dirt each third hour (convention). */
const FIRST_LOOKS_s = 600;
const DIRT_EVERY_s = 3 * HOUR_s;
/** Salt that rides in the flush, g: less than a tenth of what living things notice, in the smallest tank (see plant/poison.ts). */
const SALT_g = 10;
const FIRST = 0.01;
const MOST = 0.9;

/** Tells the share of the days lived through; its return is the result. */
export function* followDrop({ spec, household, season, seed }: DropAsked): Generator<number, Drop> {
  const flush = firstFlush(household, seed);
  const { start_s, end_s } = flush;
  const poured = { salt_gd: (SALT_g * DAY_s) / (end_s - start_s) };
  const source = householdSource(household, seed);
  const unit = new Unit({
    spec,
    source,
    faults: [
      {
        id: 'marked-flush',
        effect: { plant: poured },
        onset_s: start_s,
        severity: 1,
        ramp_s: 0,
        present: { for_h: (end_s - start_s) / HOUR_s },
      },
    ],
    seed,
    weather: steadyWeather(SEASONS[season]),
  });
  const looks: DropLook[] = [];
  const dirt = dirtMeans(sampleOf(source.influent));
  const last_s = DROP_d * DAY_s;
  for (let since_s = end_s - start_s; since_s <= last_s; since_s = nextLook(since_s)) {
    const t = start_s + since_s;
    unit.advance(t);
    looks.push({ since_s, share: sharesAt(unit, t) });
    if (since_s % DIRT_EVERY_s === 0) dirt.add(readout(unit, t).water);
    if (since_s % DAY_s === 0) yield since_s / last_s;
  }
  return {
    clock_s: start_s % DAY_s,
    flush_m3: flush.flow_m3s * (end_s - start_s),
    looks,
    stay_s: staysOf(looks),
    reached_s: {
      first: reached(looks, FIRST),
      half: reached(looks, 0.5),
      most: reached(looks, MOST),
    },
    dirt: dirt.means(),
  };
}

function nextLook(since_s: number): number {
  const every = since_s < DAY_s ? FIRST_LOOKS_s : HOUR_s;
  return every * (Math.floor(since_s / every) + 1);
}

/** The first flush of a toilet once the house is up. */
function firstFlush(household: HouseholdSpec, seed: number): Draw {
  for (let day = Math.floor(AFTER_s / DAY_s); ; day++) {
    const found = drawsOfDay(household, seed, day).find(
      ({ fixture, start_s }) => fixture === 'toilet' && start_s >= AFTER_s,
    );
    if (found !== undefined) return found;
    if (day * DAY_s > AFTER_s + DROP_d * DAY_s) throw new Error('nobody flushes in this household');
  }
}

function sharesAt(unit: Unit, t: number): Record<MarkPlace, number> {
  const y = unit.stateAt(t, new Float64Array(STATE_SIZE));
  unit.passage.advance(y, t, unit.driveAt(t));
  const grams = whereIs(y, COMPONENT.salt);
  for (const place of MARK_PLACES) grams[place] /= SALT_g;
  return grams;
}

/**
 * Mean stay: the share that is there, summed over time, over the share that came through (Danckwerts 1953: the area under
 * what is held is the mean residence of a pulse).
 */
function staysOf(looks: readonly DropLook[]): Record<DropPlace, number> {
  const last = looks.at(-1)?.share;
  const stay: Record<DropPlace, number> = { trash: 0, aeration: 0, clarifier: 0, riser: 0, pump: 0 };
  for (const place of DROP_PLACES) {
    let held_s = 0;
    for (let i = 1; i < looks.length; i++) {
      const [a, b] = [looks[i - 1] as DropLook, looks[i] as DropLook];
      held_s += ((a.share[place] + b.share[place]) / 2) * (b.since_s - a.since_s);
    }
    stay[place] = held_s / Math.max(Number.EPSILON, cameThrough(last, place));
  }
  return stay;
}

/** Share that has left a place for good by a look: all that is past it. */
function cameThrough(share: DropLook['share'] | undefined, place: DropPlace): number {
  const past = MARK_PLACES.slice(MARK_PLACES.indexOf(place) + 1);
  return past.reduce((sum, one) => sum + (share?.[one] ?? 0), 0);
}

function reached(looks: readonly DropLook[], share: number): number | undefined {
  return looks.find((look) => look.share.field >= share)?.since_s;
}

function dirtMeans(raw: Sample) {
  const sums = Object.fromEntries(
    DIRT_PLACES.map((place) => [place, { cbod5_mgL: 0, solids_mgL: 0, kjeldahl_mgL: 0, coliform_per100mL: 0 }]),
  ) as Record<DirtPlace, Record<DirtId, number>>;
  let n = 0;
  return {
    add(water: Readonly<Record<Exclude<DirtPlace, 'house'>, Sample>>) {
      n += 1;
      for (const place of DIRT_PLACES) {
        const sample = place === 'house' ? raw : water[place];
        for (const id of DIRT_IDS) sums[place][id] += sample[id];
      }
    },
    means(): Record<DirtPlace, Dirt> {
      for (const place of DIRT_PLACES) for (const id of DIRT_IDS) sums[place][id] /= n;
      return sums;
    },
  };
}
