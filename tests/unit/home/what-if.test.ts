/** What the twins of a home differ in: the sign of each scenario's effect, and what published values say of it. */
import { describe, expect, it } from 'vitest';
import { drained } from '../../../src/calls/drained.ts';
import { shippedLibrary } from '../../../src/calls/index.ts';
import { strayOf } from '../../../src/home/effects.ts';
import type { QuantityId } from '../../../src/home/quantities.ts';
import { LOAD_gCl, SCENARIO_IDS, SCENARIOS, type ScenarioId } from '../../../src/home/scenarios.ts';
import type { SeasonId } from '../../../src/home/seasons.ts';
import type { SignId } from '../../../src/home/signs.ts';
import { BEGINS_s, type WhatIf, whatIf } from '../../../src/home/what-if.ts';
import { speakAll } from '../spoken.ts';
import { DAY, family, HOUR, u1 } from '../units.ts';

function asked(scenario: ScenarioId, span_d = SCENARIOS[scenario].span_d, spec = u1()) {
  return { scenario, spec, household: family(4), span_d, season: 'mild' as const, seed: 1 };
}

const known = new Map<ScenarioId, WhatIf>();
function came(scenario: ScenarioId): WhatIf {
  const result = known.get(scenario) ?? drained(whatIf(asked(scenario)));
  known.set(scenario, result);
  return result;
}

function spell(scenario: ScenarioId, sign: SignId) {
  const found = came(scenario).spells.find((one) => one.sign === sign);
  if (!found) throw new Error(`${scenario} shows no ${sign}`);
  return found;
}

function stray(scenario: ScenarioId, id: QuantityId) {
  const result = came(scenario);
  return strayOf(id, result.touched, result.twin, result);
}

function moreWater_m3(scenario: ScenarioId): number {
  const { touched, twin } = came(scenario);
  return (touched.taken_m3.at(-1) ?? 0) - (twin.taken_m3.at(-1) ?? 0);
}

describe('the twins', () => {
  it('are one until it begins', () => {
    for (const id of SCENARIO_IDS) {
      const { touched, twin } = came(id);
      const before = touched.at_s.filter((at) => at < BEGINS_s).length;
      expect(before).toBeGreaterThan(24);
      expect(touched.values.oxygen.slice(0, before)).toEqual(twin.values.oxygen.slice(0, before));
      expect(touched.taken_m3.slice(0, before)).toEqual(twin.taken_m3.slice(0, before));
    }
  });

  it('are told of day by day, and leave off where nobody asks on', () => {
    const steps = whatIf(asked('guests', 3));
    const shares = [steps.next().value, steps.next().value, steps.next().value].map(Number);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(steps.return(undefined as never).done).toBe(true);
    expect(steps.next()).toEqual({ value: undefined, done: true });
    const all = [...whatIf(asked('guests', 3))];
    expect(all.at(-1)).toBe(1);
    expect(all).toHaveLength(12);
  });

  it('give the same each time', () => {
    expect(drained(whatIf(asked('guests', 3)))).toEqual(drained(whatIf(asked('guests', 3))));
  });
});

/** Cold water holds more oxygen, and what lives in it takes it up more slowly (Arrhenius; textbooks). */
it('an hour after the power went there is more oxygen left in the cold than in a mild season, and least in the heat', () => {
  const left = (season: SeasonId) => {
    const { touched } = drained(whatIf({ ...asked('power', 3), season }));
    return touched.values.oxygen[touched.at_s.indexOf(BEGINS_s + HOUR)] ?? Number.NaN;
  };
  const [cold, mild, hot] = [left('cold'), left('mild'), left('hot')];
  expect(cold).toBeGreaterThan(mild);
  expect(mild).toBeGreaterThan(hot);
});

describe('what comes of it', () => {
  it.each(SCENARIO_IDS.map((id) => [id]))('of %s is said in both languages', (id) => {
    expect(came(id).effects.length).toBeGreaterThan(0);
    speakAll(came(id).effects);
  });

  it('is said on every unit that ships', () => {
    for (const spec of shippedLibrary().units.values()) {
      for (const id of ['power', 'storm'] as const) speakAll(drained(whatIf(asked(id, 3, spec))).effects);
    }
  });

  /**
   * Source: Gross 1987, Arkansas Water Resources Center PUB131 (abstract): 1.85 mL/L of household bleach, about 100 mg/L, kills;
   * a laundry load of 180 mL in 500 gal is 1/20 of that, so three a day leave the works as they are.
   */
  it('bleach loads leave no trace: each is a twentieth of what kills', () => {
    const dose_mgL = (LOAD_gCl * 1000) / 1893;
    expect(dose_mgL / 100).toBeGreaterThan(1 / 22);
    expect(dose_mgL / 100).toBeLessThan(1 / 18);
    expect(came('bleach').spells).toEqual([]);
    for (const id of ['oxygen', 'solids', 'chlorine'] as const) expect(stray('bleach', id).size).toBeLessThan(1);
  });

  it('germ killers leave chlorine in the water that goes out, for days', () => {
    const { touched, twin, back_s = 0 } = stray('cleaners', 'chlorine');
    expect(touched).toBeGreaterThan(twin);
    expect(back_s).toBeGreaterThan(BEGINS_s + 7 * DAY);
  });

  /** Source: some 200 gal a day of a running toilet (municipal water pages, read): 30 days of 0.757 m3. */
  it('a running toilet is 200 gallons a day more, and the pump tank stands higher', () => {
    expect(moreWater_m3('toilet')).toBeCloseTo(30 * 0.757, 1);
    expect(stray('toilet', 'tank').touched).toBeGreaterThan(stray('toilet', 'tank').twin);
  });

  it('wipes stop the drains, then sewage comes out, and stays', () => {
    expect(spell('wipes', 'drains').to_s).toBeUndefined();
    expect(spell('wipes', 'sewage').from_s).toBeGreaterThan(BEGINS_s + DAY);
  });

  /** Source: operators' guide (published.md, "Recovery", R30): solids and BOD are back in 2 to 5 days after the air returns; within 5 (observed 2). */
  it('two days without power take the air, smell, and are over within days of its return', () => {
    expect(spell('power', 'airless').from_s - BEGINS_s).toBeLessThan(6 * HOUR);
    const smell = spell('power', 'smellOutdoors');
    expect(smell.from_s).toBeGreaterThan(spell('power', 'airless').from_s);
    const over_s = came('power').over_s ?? 0;
    expect(over_s).toBe(BEGINS_s + 2 * DAY);
    expect(smell.to_s).toBeGreaterThan(over_s);
    for (const id of ['solids', 'food'] as const) {
      expect(stray('power', id).touched).toBeGreaterThan(stray('power', id).twin);
      expect((stray('power', id).back_s ?? 0) - over_s).toBeLessThanOrEqual(5 * DAY);
    }
    expect(stray('power', 'tank').touched).toBeGreaterThan(stray('power', 'tank').twin);
    // Its reserve of a day is the unit's own number; nobody sets it.
    expect(spell('power', 'clock').from_s - BEGINS_s).toBeCloseTo(DAY, -4);
    expect(spell('power', 'clock').to_s).toBeUndefined();
    expect(spell('power', 'lamp').from_s).toBeGreaterThanOrEqual(over_s);
  });

  it('guests take air and bring dirt, away is the other way round', () => {
    expect(moreWater_m3('guests')).toBeGreaterThan(3);
    expect(moreWater_m3('away')).toBeLessThan(-10);
    expect(stray('guests', 'oxygen').touched).toBeLessThan(stray('guests', 'oxygen').twin);
    expect(stray('away', 'oxygen').touched).toBeGreaterThan(stray('away', 'oxygen').twin);
    expect(stray('guests', 'solids').touched).toBeGreaterThan(stray('guests', 'solids').twin);
    expect(stray('away', 'solids').touched).toBeLessThan(stray('away', 'solids').twin);
  });

  /** Source: seals of 50 to 75 mm (texts on traps, read) at 1 to 2 mm a day: dry in 25 to 75 days (observed 38). */
  it('an unused bath dries out in 25 to 75 days, and smells from then on', () => {
    const { from_s, to_s } = spell('bath', 'smellIndoors');
    expect((from_s - BEGINS_s) / DAY).toBeGreaterThan(25);
    expect((from_s - BEGINS_s) / DAY).toBeLessThan(75);
    expect(to_s).toBeUndefined();
    expect(stray('bath', 'seal').touched).toBeLessThan(stray('bath', 'seal').twin);
  });

  /** A softener's brine stays far below what halves growth (convention of the model, plant/poison.ts). */
  it('brine alone does no harm that one could tell', () => {
    expect(came('softener').spells).toEqual([]);
    for (const id of ['oxygen', 'solids', 'food'] as const) expect(stray('softener', id).size).toBeLessThan(1);
  });

  /** 150 mm on 40 m2 of ground is 6 m3, by arithmetic. */
  it('a storm that gets in is 6 m3 more, stirs the water up and is over in days', () => {
    expect(moreWater_m3('storm')).toBeCloseTo(6, 1);
    expect(stray('storm', 'solids').touched).toBeGreaterThan(stray('storm', 'solids').twin);
    expect(stray('storm', 'tank').touched).toBeGreaterThan(stray('storm', 'tank').twin);
    expect(spell('storm', 'cloudy').to_s).toBeLessThan(BEGINS_s + 3 * DAY);
  });
});
