/** A year of a neglected unit beside a served one: what the trade says comes of it does, and nothing comes of nothing. */
import { describe, expect, it } from 'vitest';
import { shippedClimates } from '../../../src/calls/climates.ts';
import { drained } from '../../../src/calls/drained.ts';
import { shippedLibrary } from '../../../src/calls/index.ts';
import type { SignId } from '../../../src/home/signs.ts';
import { type NeglectId, WEEKS, type Year, yearOf } from '../../../src/home/year.ts';
import { family } from '../units.ts';

function year(neglect: NeglectId, id = 'u1'): Year<number> {
  const spec = shippedLibrary().units.get(id);
  const climate = shippedClimates().get('ridge');
  if (!spec || !climate) throw new Error('no such unit or climate');
  return drained(yearOf({ neglect, spec, household: family(4), climate, seed: 1 }, (_, t) => t));
}

const MARCH = 60;
const weekOf = (day: number) => Math.floor(day / 7);
/** Weeks from a day of the year on in which a sign showed. */
function weeksOf({ weeks }: Year<number>, side: 'touched' | 'twin', sign: SignId, fromDay = 0): number {
  return weeks.slice(weekOf(fromDay)).filter((week) => week[side].signs.includes(sign)).length;
}

describe('a year without air', () => {
  const airless = year('air-off');

  it('has a page a week, each at noon, warmest in late summer', () => {
    expect(airless.weeks).toHaveLength(WEEKS);
    for (const { touched } of airless.weeks) expect(touched.seen % 86_400).toBe(43_200);
    const warmest = airless.weeks.reduce((top, week) => (week.water_C > top.water_C ? week : top));
    expect([7, 8, 9]).toContain(warmest.date.month);
  });

  it('is the same as the served one until it begins', () => {
    const before = airless.weeks.slice(0, weekOf(MARCH));
    for (const { touched, twin } of before) expect(touched).toEqual(twin);
  });

  it('lights the lamp, smells and clouds the water for the rest of it, and the served one does none of it in spring', () => {
    const left = WEEKS - weekOf(MARCH) - 1;
    for (const sign of ['lamp', 'smellOutdoors', 'airless'] as const) {
      expect(weeksOf(airless, 'touched', sign, MARCH), sign).toBeGreaterThan(left - 3);
    }
    // A truck that takes the dead liquor leaves clear water for some weeks.
    expect(weeksOf(airless, 'touched', 'cloudy', MARCH)).toBeGreaterThan(30);
    expect(weeksOf(airless, 'twin', 'lamp')).toBe(0);
    expect(weeksOf(airless, 'twin', 'airless')).toBe(0);
    expect(airless.weeks.at(-1)?.touched.oxygen_mgL).toBeLessThan(0.1);
  });
});

describe('six years without the truck', () => {
  const full = year('never-pumped');

  /** Source: codes have a first tank pumped when sludge and scum take a third of its depth. */
  it('leave more than a third of the trash tank full, and the served one less', () => {
    const depth_m = 1.2;
    const [first] = full.weeks;
    expect((first?.touched.sludge_m ?? 0) + (first?.touched.scum_m ?? 0)).toBeGreaterThan(depth_m / 3);
    for (const { twin } of full.weeks) expect(twin.sludge_m + twin.scum_m).toBeLessThan(depth_m / 3);
  });

  it('cloud the water for months, and in good care it stays clear', () => {
    expect(weeksOf(full, 'touched', 'cloudy')).toBeGreaterThan(10);
    expect(weeksOf(full, 'twin', 'cloudy')).toBe(0);
  });
});

describe.each([
  ['u1', 'a reservoir that nobody fills'],
  ['u3', 'a lamp that nobody renews'],
] as const)('on %s, %s', (id, _what) => {
  it('lets live germs out for most of the rest of the year', () => {
    const dry = year('no-refill', id);
    expect(weeksOf(dry, 'touched', 'germs', MARCH)).toBeGreaterThan(35);
    expect(weeksOf(dry, 'twin', 'germs', MARCH)).toBeLessThan(10);
  });
});
