/**
 * What if: a property lives on with something that happens in the house, and a twin of it, with the same draws and the same
 * weather, without. All that is told comes from comparing the two.
 */
import { placedFault } from '../faults/index.ts';
import { type Draw, drawsOfDay, type HouseholdSpec, householdSource, steadyWeather } from '../plant/index.ts';
import type { Message } from '../service/message.ts';
import type { FaultPresence } from '../unit/fault.ts';
import type { UnitFault, UnitSetup, UnitSpec } from '../unit/index.ts';
import { effectsOf } from './effects.ts';
import { type Life, lived } from './life.ts';
import { SCENARIOS, type ScenarioId } from './scenarios.ts';
import { SEASONS, type SeasonId } from './seasons.ts';
import { type Spell, spellsOf } from './spells.ts';

export interface Asked {
  readonly scenario: ScenarioId;
  readonly spec: UnitSpec;
  readonly household: HouseholdSpec;
  /** Days that are looked at once it has begun. */
  readonly span_d: number;
  readonly seed: number;
  readonly season: SeasonId;
}

export interface WhatIf {
  readonly scenario: ScenarioId;
  readonly begins_s: number;
  /** When it is over; where it stays, nothing. */
  readonly over_s?: number;
  readonly end_s: number;
  readonly touched: Life;
  readonly twin: Life;
  /** Signs that the twin did not show. */
  readonly spells: readonly Spell[];
  readonly effects: readonly Message[];
}

const DAY_s = 86_400;
/** Both live so long alike first, and it begins in the morning (convention). */
export const BEGINS_s = 2 * DAY_s + 8 * 3600;
/** Later than any end, s. */
const NEVER_s = 1e9;
/** Looks: each hour, and over longer spans each third (convention). */
const HOUR_s = 3600;
const LONG_d = 60;

/** Tells the share lived through after each day of either twin; its return is the result. Who stops asking cancels it. */
export function* whatIf(asked: Asked): Generator<number, WhatIf> {
  const { scenario, span_d } = asked;
  const end_s = BEGINS_s + span_d * DAY_s;
  const every_s = span_d > LONG_d ? 3 * HOUR_s : HOUR_s;
  const days = 2 * (1 + Math.floor(end_s / DAY_s));
  let done = 0;
  const lives: Life[] = [];
  for (const setup of [setupWith(asked, scenario), setupWith(asked)]) {
    const life = lived(setup, end_s, every_s);
    let step = life.next();
    for (; step.done !== true; step = life.next()) yield ++done / days;
    lives.push(step.value);
  }
  const [touched, twin] = lives as [Life, Life];
  const over = overAt(scenario);
  const times = { begins_s: BEGINS_s, end_s, ...(over < end_s ? { over_s: over } : {}) };
  const spells = spellsOf(touched, twin, times);
  return { scenario, ...times, touched, twin, spells, effects: effectsOf(scenario, touched, twin, spells, times) };
}

function overAt(scenario: ScenarioId): number {
  const { for_d } = SCENARIOS[scenario];
  return for_d === undefined ? Number.POSITIVE_INFINITY : BEGINS_s + for_d * DAY_s;
}

/** A property, with the scenario where one is given; rain falls on both twins. */
function setupWith({ spec, household, seed, season, scenario: asked }: Asked, scenario?: ScenarioId): UnitSetup {
  const { rain } = SCENARIOS[asked];
  const storms = rain
    ? [{ start_s: BEGINS_s, end_s: BEGINS_s + rain.hours * 3600, rain_mmh: rain.depth_mm / rain.hours }]
    : [];
  const away = scenario !== undefined && SCENARIOS[scenario].away === true;
  return {
    spec,
    source: householdSource(
      household,
      seed,
      scenario === undefined ? [] : guestDraws(household, seed, scenario),
      away ? [{ from_s: BEGINS_s, to_s: overAt(scenario) }] : [],
    ),
    // In the twin they lie ahead for good: who foresees the same faults steps alike, so that the two are one until it begins.
    faults: faultsOf(asked, scenario === undefined ? NEVER_s : BEGINS_s),
    seed,
    weather: steadyWeather(SEASONS[season], storms),
  };
}

function faultsOf(scenario: ScenarioId, onset_s: number): UnitFault[] {
  const { faults = [], poured, for_d } = SCENARIOS[scenario];
  const present: FaultPresence = for_d === undefined ? 'always' : { for_h: for_d * 24 };
  const own = { onset_s, severity: 1, ramp_s: 0, present };
  const placed = faults.map(({ key, ramp_h = 0 }) => {
    const { effect, severity } = placedFault(key);
    return { ...own, id: key, effect, severity, ramp_s: ramp_h * 3600 };
  });
  return poured === undefined ? placed : [...placed, { ...own, id: scenario, effect: { plant: poured } }];
}

/** What guests let run, by a stream of their own: the household goes on as it would. */
function guestDraws(household: HouseholdSpec, seed: number, scenario: ScenarioId): Draw[] {
  const { guests: persons = 0, for_d = 0 } = SCENARIOS[scenario];
  if (persons === 0) return [];
  const first = Math.floor(BEGINS_s / DAY_s);
  return Array.from({ length: for_d + 1 }, (_, i) => drawsOfDay({ ...household, persons }, seed + 1, first + i))
    .flat()
    .filter(({ start_s }) => BEGINS_s <= start_s && start_s < overAt(scenario));
}
