/**
 * What a household lets run, as a seeded process per fixture: a Poisson count a day, instants by an hourly pattern,
 * volumes about the published mean. A day's draws depend on (household, seed, day) alone.
 */
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
  /** Raw oxygen demand per volume, g/m3. */
  readonly demand_gm3: number;
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
  /** Oxygen demand of the raw sewage, carbon and ammonia, g O2 per person and day. */
  readonly demand_gPersonDay: number;
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
  return draws.sort((a, b) => a.start_s - b.start_s || a.end_s - b.end_s || (a.fixture < b.fixture ? -1 : 1));
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

/** A household as a source of water. `extra` draws (a wash day, a guest) are added as they stand. */
export function householdSource(household: HouseholdSpec, seed: number, extra: readonly Draw[] = []): DrawSource {
  const days = new Map<number, readonly Draw[]>();
  const leak = (household.leak_LPersonDay * household.persons) / 1000 / DAY_s;
  const drawsOn = (day: number): readonly Draw[] => {
    if (day < 0) return [];
    const known = days.get(day);
    if (known) return known;
    const made = drawsOfDay(household, seed, day);
    days.set(day, made);
    return made;
  };
  const near = function* (day: number): Generator<Draw> {
    yield* drawsOn(day - 1);
    yield* drawsOn(day);
    yield* extra;
  };
  return {
    demand_gm3: (household.demand_gPersonDay * household.persons) / meanDaily(household),
    flowAt(t) {
      let flow = leak;
      for (const d of near(Math.floor(t / DAY_s))) if (d.start_s <= t && t < d.end_s) flow += d.flow_m3s;
      return flow;
    },
    nextEdge(t) {
      const day = Math.floor(t / DAY_s);
      let next = (day + 1) * DAY_s;
      for (const d of near(day)) {
        if (d.start_s > t && d.start_s < next) next = d.start_s;
        if (d.end_s > t && d.end_s < next) next = d.end_s;
      }
      return next;
    },
  };
}

/** A fixed list of draws as a source of water (tests, standard loading). */
export function listSource(draws: readonly Draw[], demand_gm3: number, base_m3s = 0): DrawSource {
  const edges = [...new Set(draws.flatMap((d) => [d.start_s, d.end_s]))].sort((a, b) => a - b);
  return {
    demand_gm3,
    flowAt: (t) => draws.reduce((sum, d) => (d.start_s <= t && t < d.end_s ? sum + d.flow_m3s : sum), base_m3s),
    nextEdge: (t) => edges.find((e) => e > t) ?? Number.POSITIVE_INFINITY,
  };
}
