/** A lot of the round: its property, what wears and happens there, and its state between two visits. */
import { faultOn, type PlacedFault } from '../../faults/index.ts';
import { type HouseholdSpec, type Weather, type WeatherSpec, weatherOf } from '../../plant/index.ts';
import type { SymptomId } from '../../service/index.ts';
import {
  calendarDay,
  dayNumber,
  parseInstant,
  type Snapshot,
  snapshot,
  Unit,
  type UnitFault,
  type UnitSetup,
  type UnitSpec,
} from '../../unit/index.ts';
import { sourceOf } from '../setup.ts';
import type { BookEntry } from './book.ts';
import type { LotFile, RoundFile } from './schema.ts';

export const DAY_s = 86_400;

/** A lot joined with what it names. */
export interface Lot {
  readonly file: LotFile;
  readonly round: RoundFile;
  readonly spec: UnitSpec;
  readonly household: HouseholdSpec;
  readonly seed: number;
  readonly weather: Weather;
  /** Day number of engine time 0. */
  readonly firstDay: number;
  readonly end_s: number;
  /** Engine seconds of the routine visits, in order. */
  readonly visits_s: readonly number[];
}

/** Why the phone rings. */
export interface Ring {
  readonly at_s: number;
  readonly kind: 'alarm' | 'complaint' | 'routine';
  readonly symptoms: readonly SymptomId[];
}

/** What went wrong on the ground and in the tanks. */
export interface Harm {
  /** Sewage over the clean-out, indoors and out of leaks. */
  readonly ground_m3: number;
  /** Hours in which the liquor had no oxygen, beyond what passes overnight. */
  readonly untreated_h: number;
}

/** Which faults are open: from when each wear has grown, s (null where the household was taught to end it), what is over. */
interface Open {
  readonly since_s: readonly (number | null)[];
  readonly over: readonly boolean[];
}

/** A call on the lot as it began: the property shortly before, and why the phone rang. */
export interface Door extends Open {
  readonly ring: Ring;
  readonly from: Snapshot;
  /** When what wears was last looked at. */
  readonly looked_s: number;
  readonly left?: Snapshot;
}

/** A door that is over, with what went into the lot's book. */
export interface Visit extends Door {
  readonly entry: BookEntry;
}

/** A lot between two visits. Plain JSON. */
export interface LotState extends Open {
  readonly t_s: number;
  readonly snapshot: Snapshot;
  readonly harm: Harm;
  /** As it was left at the last visit, were everything sound. */
  readonly left?: Snapshot;
  readonly visits: readonly Visit[];
  /** The phone that rings now; none until it does, and when the year is over. */
  readonly door?: Door;
}

export interface Named {
  readonly spec: UnitSpec;
  readonly household: HouseholdSpec;
  readonly climate: WeatherSpec;
}

/** Joins a lot with its property; `seed` shifts its household, weather and instruments. */
export function makeLot(round: RoundFile, file: LotFile, { spec, household, climate }: Named, seed = 0): Lot {
  const firstDay = dayAndSecond(round.start).day;
  const { year } = calendarDay(firstDay);
  const own = (file.seed + seed) % 4294967296;
  const second = (text: string) => {
    const { day, secondOfDay } = dayAndSecond(text);
    return (day - firstDay) * DAY_s + secondOfDay;
  };
  return {
    file,
    round,
    spec,
    household,
    seed: own,
    weather: weatherOf(climate, own, firstDay - dayNumber({ year, month: 1, day: 1 }) + 1),
    firstDay,
    end_s: round.days * DAY_s,
    visits_s: file.visits.map(second).sort((a, b) => a - b),
  };
}

function dayAndSecond(text: string): { readonly day: number; readonly secondOfDay: number } {
  const instant = parseInstant(text);
  if (!instant) throw new Error(`"${text}" is no instant`);
  return instant;
}

/** A lot on the first day, before anything was done there. */
export function firstState(lot: Lot): LotState {
  const state = {
    t_s: 0,
    since_s: lot.file.wears.map(({ since_d }) => -Math.round(since_d * DAY_s)),
    over: lot.file.happens.map(() => false),
    harm: { ground_m3: 0, untreated_h: 0 },
    visits: [],
  };
  return { ...state, snapshot: snapshot(new Unit(setupOf(lot, faultsAt(lot, state, 0)))) };
}

export function setupOf(lot: Lot, faults: readonly UnitFault[]): UnitSetup {
  return {
    spec: lot.spec,
    source: sourceOf(lot.household, lot.seed, happenings(lot)),
    faults,
    seed: lot.seed,
    weather: lot.weather,
    sludgeAge_y: lot.file.sludge_y,
  };
}

/**
 * The faults that stand or are still to come, at an instant: first the wears, then the happenings. A wear is as far as it
 * has come by then, and stays so until it is looked at again: growing it step by step would cost ten times as much.
 */
export function faultsAt(lot: Lot, { since_s, over }: Open, t_s: number): readonly UnitFault[] {
  const wears = lot.file.wears.flatMap((wear, i): UnitFault[] => {
    const since = since_s[i] ?? null;
    if (since === null) return [];
    const grown = wear.grows_d === 0 ? 1 : Math.min(1, (t_s - since) / (wear.grows_d * DAY_s));
    const placed = placedOn(lot, wear);
    const severity = (wear.severity ?? placed.severity) * grown;
    return [{ id: placed.key, effect: placed.effect, onset_s: since, severity, ramp_s: 0, present: 'always' }];
  });
  return [...wears, ...happenings(lot).filter((_, i) => over[i] !== true)];
}

/** The faults of a lot at a door. */
export function doorFaults(lot: Lot, door: Door): readonly UnitFault[] {
  return faultsAt(lot, door, door.looked_s);
}

function happenings(lot: Lot): readonly UnitFault[] {
  return lot.file.happens.map((h) => {
    const placed = placedOn(lot, h);
    const { day, secondOfDay } = dayAndSecond(h.onset);
    return {
      id: placed.key,
      effect: placed.effect,
      onset_s: (day - lot.firstDay) * DAY_s + secondOfDay,
      severity: h.severity ?? placed.severity,
      ramp_s: (placed.ramp_h ?? 0) * 3600,
      present: h.for_h === undefined ? 'always' : { for_h: h.for_h },
    };
  });
}

export function placedOn(
  lot: Lot,
  { fault, part }: { readonly fault: string; readonly part?: string | undefined },
): PlacedFault {
  const placed = faultOn(lot.spec, fault, part);
  if (!placed) throw new Error(`no fault "${fault}" on ${lot.spec.id}`);
  return placed;
}
