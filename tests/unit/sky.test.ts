/** What stands over the lawn: the sun's and the moon's place, rain and frost, all from the calendar and the weather. */
import { describe, expect, it } from 'vitest';
import { type Surroundings, skyOf } from '../../src/scene/light.ts';
import { fallSpeed, flashEvery_s } from '../../src/yard/storm.ts';

const MIDSUMMER = { year: 2031, month: 6, day: 21 };
const MIDWINTER = { year: 2031, month: 12, day: 21 };
const at = (hour: number, more: Partial<Surroundings> = {}) =>
  skyOf({ day: MIDSUMMER, secondOfDay: hour * 3600, cloud: 0, rain: 0, ...more });

describe('the sun', () => {
  it('stands highest and in the south at noon, and lower in winter', () => {
    const noon = at(12.2).sun;
    expect(noon.across).toBeCloseTo(0, 9);
    for (const hour of [5, 9, 11, 14, 18]) expect(at(hour).sun.up).toBeLessThan(noon.up);
    // 90 - latitude + 23.44 degrees: 72.0 and 25.2 degrees at 41.4 north (any textbook of astronomy).
    expect((Math.asin(noon.up) * 180) / Math.PI).toBeCloseTo(72, 0);
    expect((Math.asin(at(12.2, { day: MIDWINTER }).sun.up) * 180) / Math.PI).toBeCloseTo(25.2, 0);
  });

  it('rises in the east and sets in the west when the daylight comes and goes', () => {
    const dawn = at(12.2 - 7.5);
    const dusk = at(12.2 + 7.5);
    expect(dawn.sun.up).toBeCloseTo(0, 2);
    expect(dusk.sun.up).toBeCloseTo(0, 2);
    expect(dawn.sun.across).toBeLessThan(0);
    expect(dusk.sun.across).toBeGreaterThan(0);
    expect(dawn.daylight).toBeCloseTo(0.5, 2);
    expect(at(0).sun.up).toBeLessThan(-0.2);
  });
});

describe('the moon', () => {
  // Almanac dates, from memory: total eclipse of the moon on 20 December 2029, of the sun on 12 August 2026.
  it('is full at an eclipse of the moon and new at one of the sun', () => {
    expect(at(22, { day: { year: 2029, month: 12, day: 20 } }).moon.age).toBeCloseTo(0.5, 1);
    const { age } = at(17, { day: { year: 2026, month: 8, day: 12 } }).moon;
    expect(Math.min(age, 1 - age)).toBeLessThan(0.03);
  });

  it('stands opposite the sun when it is full', () => {
    const { moon, sun } = at(0.2, { day: { year: 2029, month: 12, day: 20 } });
    expect(sun.up).toBeLessThan(-0.8);
    expect(moon.up).toBeGreaterThan(0.8);
  });
});

describe('the weather', () => {
  it('takes its rain from the storms where there are any, and from the share of a downpour where not', () => {
    expect(at(12, { rain: 0.6 }).rain_mmh).toBeCloseTo(6, 9);
    expect(at(12, { rain: 0.6, storm: { rain_mmh: 0, fallen_mm: 30 } })).toMatchObject({ rain_mmh: 0, wet: 1 });
  });

  it('lets no rain fall from a clear sky', () => expect(at(12, { rain: 0.1 }).cloud).toBeGreaterThan(0.5));

  it('has frost on a clear winter dawn, none under cloud, at noon or in summer', () => {
    const january = { year: 2031, month: 1, day: 15 };
    expect(at(7, { day: january }).frost).toBeGreaterThan(0.9);
    expect(at(7, { day: january, cloud: 1 }).frost).toBe(0);
    expect(at(12.2, { day: january }).frost).toBeLessThan(at(7, { day: january }).frost);
    expect(at(4).frost).toBe(0);
  });

  it('makes the drops of a harder rain fall faster, none past nine metres a second', () => {
    expect(fallSpeed(1)).toBeLessThan(fallSpeed(10));
    expect(fallSpeed(1)).toBeGreaterThan(3);
    expect(fallSpeed(100)).toBeLessThan(9);
  });

  it('thunders in heavy rain only, and flashes far less often than harms', () => {
    expect(flashEvery_s(7)).toBe(Number.POSITIVE_INFINITY);
    for (const rain of [8, 20, 60, 200]) expect(flashEvery_s(rain)).toBeGreaterThanOrEqual(8);
    expect(flashEvery_s(60)).toBeLessThan(flashEvery_s(10));
  });
});
