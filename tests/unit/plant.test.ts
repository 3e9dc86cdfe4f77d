/** What the engine stands on: the calendar, the digest, levels and volumes, days of draws. */
import { createHash } from 'node:crypto';
import * as fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import {
  clarifierSurface,
  clarifierVolume,
  drawsOfDay,
  householdSource,
  levelOf,
  listSource,
  pumpLevel,
  pumpSurface,
  surfaceAt,
  volumeAt,
} from '../../src/plant/index.ts';
import { calendarDay, canonical, dayNumber, digest, parseInstant, weekday } from '../../src/unit/index.ts';
import { DAY, family, u1 } from './units.ts';

describe('the calendar', () => {
  it('agrees with the platform over four centuries, day by day', () => {
    const first = Date.UTC(1900, 0, 1);
    const zero = dayNumber({ year: 1900, month: 1, day: 1 });
    for (let n = 0; n < 146_097; n++) {
      const date = new Date(first + n * 86_400_000);
      const day = { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
      if (dayNumber(day) !== zero + n || weekday(zero + n) !== (date.getUTCDay() + 6) % 7) {
        expect.fail(`day ${n}: ${JSON.stringify(day)}`);
      }
      const back = calendarDay(zero + n);
      if (back.year !== day.year || back.month !== day.month || back.day !== day.day) expect.fail(JSON.stringify(back));
    }
  });

  it('reads a local instant, and only one that exists', () => {
    const leap = dayNumber({ year: 2032, month: 2, day: 29 });
    expect(parseInstant('2032-02-29T23:59')).toEqual({ day: leap, secondOfDay: 86_340 });
    expect(parseInstant('2031-05-14T00:00')?.secondOfDay).toBe(0);
    for (const text of ['2031-02-29T10:00', '2031-13-01T10:00', '2031-04-31T10:00', '2031-05-14T24:00']) {
      expect(parseInstant(text), text).toBeUndefined();
    }
    for (const text of [
      '2031-05-14',
      '2031-05-14T10:60',
      '2031-05-14 10:00',
      ' 2031-05-14T10:00',
      '2031-00-10T10:00',
      '',
    ]) {
      expect(parseInstant(text), text).toBeUndefined();
    }
  });
});

describe('the digest', () => {
  const sha256 = (text: string) => createHash('sha256').update(text, 'utf8').digest('hex');

  it('is SHA-256 of the canonical text', () => {
    expect(digest('abc')).toBe(sha256('"abc"'));
    expect(digest({ b: [1, 2.5, null], a: 'ñ€𝄞' })).toBe(sha256('{"a":"ñ€𝄞","b":[1,2.5,null]}'));
  });

  it('agrees with the platform on any value', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(digest(value as never)).toBe(sha256(canonical(value as never)));
        expect(digest(JSON.parse(JSON.stringify(value)))).toBe(digest(value as never));
      }),
      { numRuns: 200, seed: 1 },
    );
  });

  it('does not see the order of keys, what is undefined, nor the sign of zero', () => {
    expect(canonical({ b: 1, a: { d: -0, c: undefined } })).toBe('{"a":{"d":0},"b":1}');
    expect(digest({ x: 1, y: 0 })).toBe(digest({ y: -0, x: 1 }));
  });

  it('tells NaN, the infinities and null apart', () => {
    expect([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, null].map((v) => canonical(v))).toEqual([
      '"NaN"',
      '"Infinity"',
      '"-Infinity"',
      'null',
    ]);
  });

  it('sees the last bit of a number', () => {
    expect(digest([0.1 + 0.2])).not.toBe(digest([0.3]));
  });
});

describe('levels and volumes', () => {
  const { plant } = u1();
  const basins = { trash: plant.trash, aeration: plant.aeration, pump: plant.pump };
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const runs = { numRuns: 200, seed: 2 };
  /** Slope by a small difference, away from a corner. */
  const slope = (f: (x: number) => number, x: number) => (f(x + 1e-6) - f(x - 1e-6)) / 2e-6;

  it.each(Object.entries(basins))('%s: each is the inverse of the other, floor to above the lid', (_, basin) => {
    fc.assert(
      fc.property(share, (s) => {
        const level = basin.floor_m + s * (0.3 - basin.floor_m);
        expect(Math.abs(levelOf(basin, volumeAt(basin, level)) - level)).toBeLessThan(1e-12);
        if (Math.abs(level - basin.ceiling_m) > 1e-5 && s > 1e-3) {
          expect(slope((x) => volumeAt(basin, x), level)).toBeCloseTo(surfaceAt(basin, level), 5);
        }
      }),
      runs,
    );
  });

  it('below the floor there is nothing', () => expect(volumeAt(plant.trash, plant.trash.floor_m - 1)).toBe(0));

  it('the pump tank takes the riser with it above its inlet, without a jump', () => {
    const level = (v: number) => pumpLevel(plant.pump, plant.riser, v);
    fc.assert(
      fc.property(share, (s) => {
        const v = 0.01 + s * 4.6;
        const h = level(v);
        expect(level(v + 1e-6)).toBeGreaterThan(h);
        const corner = Math.min(Math.abs(h - plant.pump.inlet_m), Math.abs(h - plant.pump.ceiling_m)) < 1e-5;
        if (!corner) expect(1 / slope(level, v)).toBeCloseTo(pumpSurface(plant.pump, plant.riser, h), 4);
      }),
      runs,
    );
  });

  it('the clarifier holds 0.45 m3 at its outlet, and its surface is the slope of its volume', () => {
    const volume = (h: number) => clarifierVolume(plant.clarifier, plant.aeration.outlet_m, h);
    expect(Math.abs(volume(plant.aeration.outlet_m) - 0.45)).toBeLessThan(0.01);
    expect(volume(plant.aeration.floor_m)).toBe(0);
    fc.assert(
      fc.property(share, (s) => {
        const h = plant.aeration.outlet_m - 1.19 + s * 1.6;
        expect(slope(volume, h)).toBeCloseTo(clarifierSurface(plant.clarifier, plant.aeration.outlet_m, h), 4);
      }),
      runs,
    );
  });

  it('holds the volumes of the data sheet', () => {
    expect(volumeAt(plant.trash, plant.trash.outlet_m)).toBeCloseTo(1.9, 2);
    expect(volumeAt(plant.aeration, plant.aeration.outlet_m)).toBeCloseTo(2.27, 2);
  });
});

describe('draws', () => {
  const household = family(4);

  it('of a day depend on house, seed and day alone, in whatever order days are asked for', () => {
    const days = [0, 1, 2, 3, 4, 5];
    const forward = days.map((day) => drawsOfDay(household, 9, day));
    const backward = [...days].reverse().map((day) => drawsOfDay(household, 9, day));
    expect(backward.reverse()).toEqual(forward);
    expect(drawsOfDay(household, 10, 3)).not.toEqual(forward[3]);
    const tomorrow = forward[4]?.map((d) => ({ ...d, start_s: d.start_s - DAY, end_s: d.end_s - DAY }));
    expect(tomorrow).not.toEqual(forward[3]);
  });

  it('are in an order that no engine may change: equal ones stay as they were made', () => {
    const [faucet] = household.fixtures;
    if (!faucet) throw new Error('no fixture');
    const busy = { ...faucet, usesPerPersonDay: 90, spread: 0.001, hours: [1, ...new Array<number>(23).fill(0)] };
    const sort = vi.spyOn(Array.prototype, 'sort');
    let equal = 0;
    for (let day = 0; day < 20; day++) {
      sort.mockClear();
      const draws = drawsOfDay({ ...household, persons: 1, fixtures: [busy] }, 3, day);
      const inOrder = sort.mock.lastCall?.[0] as (a: unknown, b: unknown) => number;
      for (const [i, a] of draws.entries()) {
        const b = draws[i + 1];
        if (a.start_s !== b?.start_s || a.end_s !== b.end_s) continue;
        equal += 1;
        expect([inOrder(a, b), inOrder(b, a)]).toEqual([0, 0]);
      }
    }
    sort.mockRestore();
    expect(equal).toBeGreaterThan(5);
  });

  it('start within their day, in order, at whole seconds', () => {
    for (let day = 0; day < 30; day++) {
      const draws = drawsOfDay(household, 3, day);
      expect(draws.map((d) => d.start_s)).toEqual(draws.map((d) => d.start_s).sort((a, b) => a - b));
      for (const d of draws) {
        expect(d.start_s).toBeGreaterThanOrEqual(day * DAY);
        expect(Number.isInteger(d.start_s) && Number.isInteger(d.end_s) && d.end_s > d.start_s).toBe(true);
      }
    }
  });

  it('give the same flow whether their source was asked before or not', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 9 * DAY, noNaN: true }), { minLength: 1, maxLength: 20 }), (ts) => {
        const asked = householdSource(household, 9);
        for (const t of ts) asked.flowAt(t);
        for (const t of ts) expect(householdSource(household, 9).flowAt(t)).toBe(asked.flowAt(t));
      }),
      { numRuns: 20, seed: 4 },
    );
  });

  it.each([
    ['a household', householdSource(household, 9)],
    ['a list', listSource(drawsOfDay(household, 9, 1), 1e-6)],
  ])('%s: the flow changes at the edges it names and nowhere between', (_, source) => {
    let t = DAY;
    for (let i = 0; i < 200 && t < 2 * DAY; i++) {
      const next = Math.min(source.nextEdge(t), 2 * DAY);
      expect(next).toBeGreaterThan(t);
      for (const s of [0.1, 0.5, 0.999]) expect(source.flowAt(t + s * (next - t))).toBe(source.flowAt(t));
      t = next;
    }
  });
});
