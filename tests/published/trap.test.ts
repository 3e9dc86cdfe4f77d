/** The water seal of a drain trap against what texts on traps say of it. */
import { describe, expect, it } from 'vitest';
import { daysToDry, SAFE_SEAL_mm, trapLoss_mmd, trapSeal_mm, vapourPressure_Pa } from '../../src/plant/trap.ts';

describe('vapour over water', () => {
  /** Source: steam tables (from memory), Pa; 0.4 % (observed at most 0.31, at 30 degC). */
  it.each([
    [0, 611.2],
    [10, 1228],
    [20, 2339],
    [30, 4247],
    [40, 7384],
  ])('saturates at %i degC at %f Pa', (temperature_C, pressure_Pa) => {
    expect(Math.abs(vapourPressure_Pa(temperature_C) / pressure_Pa - 1)).toBeLessThan(0.004);
  });
});

describe('what a trap loses', () => {
  /** Source: texts on traps (from memory): 1 to 2 mm a day; ordinary rooms of 18 to 22 degC at half humidity. */
  it('is 1.5 mm a day at 20 degC and half humidity, 1 to 2 in ordinary rooms', () => {
    expect(trapLoss_mmd(20, 0.5)).toBeCloseTo(1.5, 12);
    for (const t of [18, 20, 22]) {
      for (const h of [0.45, 0.5, 0.55]) {
        expect(trapLoss_mmd(t, h)).toBeGreaterThan(1);
        expect(trapLoss_mmd(t, h)).toBeLessThan(2);
      }
    }
  });

  it('grows with warmth and dryness, stops in saturated air', () => {
    expect(trapLoss_mmd(28, 0.5)).toBeGreaterThan(trapLoss_mmd(20, 0.5));
    expect(trapLoss_mmd(20, 0.3)).toBeCloseTo(1.4 * trapLoss_mmd(20, 0.5), 12);
    expect(trapLoss_mmd(20, 1)).toBe(0);
    expect(daysToDry(50, 20, 1)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('a trap that nobody uses', () => {
  /** Source: seals of 50 to 75 mm (read) at 1 to 2 mm a day: 25 to 75 days. */
  it('dries in 25 to 75 days', () => {
    expect(daysToDry(50, 20, 0.5)).toBeCloseTo(33.3, 1);
    expect(daysToDry(75, 20, 0.5)).toBeCloseTo(50, 6);
    for (const t of [18, 20, 22]) {
      expect(daysToDry(50, t, 0.5)).toBeGreaterThan(25);
      expect(daysToDry(75, t, 0.5)).toBeLessThan(75);
    }
  });

  /** Source: a page on dry traps (low authority): two to three weeks in air-conditioned rooms; 24 to 26 degC at 30 % is ours. */
  it('of 50 mm dries in two to three weeks in warm dry air', () => {
    for (const t of [24, 25, 26]) {
      expect(daysToDry(50, t, 0.3)).toBeGreaterThan(14);
      expect(daysToDry(50, t, 0.3)).toBeLessThan(21);
    }
  });

  it('sinks day by day to nothing and no further', () => {
    expect(trapSeal_mm(50, 0, 20, 0.5)).toBe(50);
    expect(trapSeal_mm(50, 10, 20, 0.5)).toBeCloseTo(35, 12);
    expect(trapSeal_mm(50, 60, 20, 0.5)).toBe(0);
    expect(daysToDry(0, 20, 0.5)).toBe(0);
  });

  /** Common practice, no source: half a minute of water a week keeps a trap sealed. Rooms of 15 to 27 degC, 30 to 70 %. */
  it('never comes below a safe seal when it is filled once a week', () => {
    for (const t of [15, 18, 21, 24, 27]) {
      for (const h of [0.3, 0.5, 0.7]) {
        const lowest = Math.min(...Array.from({ length: 60 }, (_, day) => trapSeal_mm(50, day % 7, t, h)));
        expect(lowest).toBeGreaterThan(SAFE_SEAL_mm);
        expect(trapSeal_mm(50, 7, t, h)).toBeGreaterThan(SAFE_SEAL_mm);
      }
    }
    expect(trapSeal_mm(50, 21, 27, 0.3)).toBe(0);
  });
});
