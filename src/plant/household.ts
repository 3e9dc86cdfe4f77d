/**
 * What a household lets run, as a seeded process per fixture: a Poisson count a day, instants by an hourly pattern,
 * volumes about the published mean. A day's draws depend on (household, seed, day) alone.
 */
import { influentOf, ORDINARY_SEWAGE, type Strength } from './influent.ts';
import type { Composition } from './liquor.ts';
import { draw, poisson } from './random.ts';

/** One flow into the house sewer: from `start_s` (included) to `end_s` (excluded), whole seconds. */
export interface Draw {
  readonly fixture: string;
  readonly start_s: number;
  readonly end_s: number;
  readonly flow_m3s: number;
}

/** Where water comes from, as the engine asks: both are pure functions of time. */
export interface DrawSource {
  /** Flow at an instant, m3/s. */
  flowAt(t_s: number): number;
  /** First instant after `t_s` at which the flow changes; Infinity when it never does. */
  nextEdge(t_s: number): number;
  /** What the water carries, g/m3. */
  readonly influent: Composition;
}

export interface FixtureSpec {
  readonly id: string;
  readonly usesPerPersonDay: number;
  /** Water of one use, L, and the rate at which it reaches the sewer, L/s. */
  readonly volume_L: number;
  readonly flow_Ls: number;
  /** A use is let go in so many parts with a pause between them (a washing machine's drains). */
  readonly parts: number;
  readonly pause_s: number;
  /** Volumes vary evenly by this share either way. */
  readonly spread: number;
  /** Weight of each hour of the day, 24 numbers. */
  readonly hours: readonly number[];
}

export interface HouseholdSpec {
  readonly persons: number;
  readonly fixtures: readonly FixtureSpec[];
  /** Running leaks, L per person and day. */
  readonly leak_LPersonDay: number;
  /** What a person adds to the water. */
  readonly strength: Strength;
}

const DAY_s = 86_400;

/** Mean water of a household, m3/d. */
export function meanDaily(household: HouseholdSpec): number {
  const perPerson = household.fixtures.reduce(
    (sum, f) => sum + f.usesPerPersonDay * f.volume_L,
    household.leak_LPersonDay,
  );
  return (perPerson * household.persons) / 1000;
}

/** The draws that begin on a day (day 0 starts at t = 0), in order of their start. */
export function drawsOfDay(household: HouseholdSpec, seed: number, day: number): Draw[] {
  const draws: Draw[] = [];
  for (const fixture of household.fixtures) {
    const stream = `use/${fixture.id}/${day}`;
    const uses = poisson(fixture.usesPerPersonDay * household.persons, draw(seed, stream, 0));
    for (let k = 0; k < uses; k++) {
      const start = day * DAY_s + secondOfDay(fixture.hours, draw(seed, stream, 2 * k + 1));
      const volume = fixture.volume_L * (1 + fixture.spread * (2 * draw(seed, stream, 2 * k + 2) - 1));
      draws.push(...useOf(fixture, start, volume));
    }
  }
  return draws.sort(inOrder);
}

/** A true order: what is equal keeps its place, so that every engine's sort gives the same list and the same sums. */
function inOrder(a: Draw, b: Draw): number {
  const byName = a.fixture < b.fixture ? -1 : Number(a.fixture > b.fixture);
  return a.start_s - b.start_s || a.end_s - b.end_s || byName;
}

/** The draws of one use of a fixture that begins at `start_s`. */
export function useOf(fixture: FixtureSpec, start_s: number, volume_L = fixture.volume_L): Draw[] {
  const part_s = Math.max(1, Math.round(volume_L / fixture.parts / fixture.flow_Ls));
  return Array.from({ length: fixture.parts }, (_, i) => {
    const start = start_s + i * (part_s + fixture.pause_s);
    const flow_m3s = volume_L / fixture.parts / part_s / 1000;
    return { fixture: fixture.id, start_s: start, end_s: start + part_s, flow_m3s };
  });
}

/** Second of the day at which a share `u` of the day's uses is behind. */
function secondOfDay(hours: readonly number[], u: number): number {
  const total = hours.reduce((a, b) => a + b, 0);
  let rest = u * total;
  for (let hour = 0; hour < 24; hour++) {
    const weight = hours[hour] ?? 0;
    if (rest < weight) return Math.floor((hour + rest / weight) * 3600);
    rest -= weight;
  }
  return DAY_s - 1;
}

/** A time in which nobody is at home: from an engine second (included) to another (excluded). */
export interface Absence {
  readonly from_s: number;
  readonly to_s: number;
}

/**
 * A household as a source of water. `extra` draws (a wash day, a guest) are added as they stand; while it is away
 * nothing but its leaks runs.
 */
export function householdSource(
  household: HouseholdSpec,
  seed: number,
  extra: readonly Draw[] = [],
  away: readonly Absence[] = [],
): DrawSource {
  const atHome = ({ start_s }: Draw) => !away.some(({ from_s, to_s }) => from_s <= start_s && start_s < to_s);
  const leak = (household.leak_LPersonDay * household.persons) / 1000 / DAY_s;
  const influent = influentOf(household.strength, meanDaily(household) / household.persons);
  return dailySource((day) => drawsOfDay(household, seed, day).filter(atHome), influent, leak, extra);
}

/** Draws made day by day, as they are asked for; none may last longer than a day. */
export function dailySource(
  drawsOn: (day: number) => readonly Draw[],
  influent: Composition,
  base_m3s = 0,
  extra: readonly Draw[] = [],
): DrawSource {
  const days = new Map<number, { readonly draws: readonly Draw[]; table: Timetable | undefined }>();
  const knownDay = (day: number) => {
    const known = days.get(day);
    if (known) return known;
    const made = { draws: day < 0 ? [] : drawsOn(day), table: undefined };
    days.set(day, made);
    return made;
  };
  /** What runs on a day: its own draws, and those of the day before that last past midnight. */
  const tableOf = (t: number): Timetable => {
    const day = Math.floor(t / DAY_s);
    const known = knownDay(day);
    known.table ??= timetable(
      [...knownDay(day - 1).draws, ...known.draws, ...extra],
      base_m3s,
      day * DAY_s,
      (day + 1) * DAY_s,
    );
    return known.table;
  };
  return {
    influent,
    flowAt: (t) => flowIn(tableOf(t), t),
    nextEdge: (t) => edgeAfter(tableOf(t), t),
  };
}

/** A fixed list of draws as a source of water (tests, standard loading). */
export function listSource(draws: readonly Draw[], base_m3s = 0, influent = ORDINARY_SEWAGE): DrawSource {
  const table = timetable(draws, base_m3s, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY);
  return { influent, flowAt: (t) => flowIn(table, t), nextEdge: (t) => edgeAfter(table, t) };
}

/** Flow by time, looked up and not summed again: `flows[i]` runs from `edges[i]` to `edges[i + 1]`. */
interface Timetable {
  readonly edges: readonly number[];
  readonly flows: readonly number[];
}

/** Draws over a base flow, as they add up between two instants; the second is an edge too. */
function timetable(draws: readonly Draw[], base_m3s: number, from: number, to: number): Timetable {
  const here = draws.filter((d) => d.end_s > from && d.start_s < to);
  const inside = here.flatMap((d) => [d.start_s, d.end_s]).filter((t) => t > from && t < to);
  const edges = [from, ...[...new Set(inside)].sort((a, b) => a - b), to];
  const flows = edges.map((t) =>
    here.reduce((sum, d) => (d.start_s <= t && t < d.end_s ? sum + d.flow_m3s : sum), base_m3s),
  );
  return { edges, flows };
}

/** Place of the last edge at or before an instant. */
function placeOf({ edges }: Timetable, t: number): number {
  let low = 0;
  let high = edges.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((edges[middle] as number) <= t) low = middle;
    else high = middle;
  }
  return low;
}

function flowIn(table: Timetable, t: number): number {
  return table.flows[placeOf(table, t)] as number;
}

function edgeAfter(table: Timetable, t: number): number {
  return table.edges[placeOf(table, t) + 1] as number;
}
