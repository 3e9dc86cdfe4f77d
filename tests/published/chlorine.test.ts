/** Chlorine: acid constant and split, breakpoint against full kinetics, kill against survivors that were counted. */
import { describe, expect, it } from 'vitest';
import {
  type ChlorineForms,
  chlorineForms,
  FECAL_KILL,
  hypochlorousPka,
  hypochlorousShare,
  passedBy,
  survivors,
} from '../../src/plant/index.ts';
import { chloramines } from './chloramine.ts';

describe('hypochlorous acid', () => {
  /** Source: Morris 1966, equation from memory; values computed once from it. */
  it.each([
    [0, 7.825],
    [5, 7.754],
    [10, 7.69],
    [15, 7.633],
    [20, 7.582],
    [25, 7.537],
    [30, 7.497],
  ])('pKa at %i degC is %f', (temperature_C, pKa) => {
    expect(Math.abs(hypochlorousPka(temperature_C) - pKa)).toBeLessThan(6e-4);
  });

  /** Source: worked example of a wastewater textbook: pH 7, 25 degC, pKa 7.54. */
  it('at pH 7 and pKa 7.54 leaves 22.37 % hypochlorite', () => {
    expect(100 * (1 - hypochlorousShare(7, 7.54))).toBeCloseTo(22.37, 1);
  });

  it.each([
    [10, [0.98, 0.939, 0.831, 0.608, 0.329, 0.134, 0.047]],
    [20, [0.974, 0.923, 0.792, 0.547, 0.276, 0.108, 0.037]],
    [25, [0.972, 0.916, 0.775, 0.521, 0.256, 0.098, 0.033]],
  ])('its share by pH 6 to 9 at %i degC (derived; 0.001)', (temperature_C, shares) => {
    shares.forEach((share, i) => {
      expect(Math.abs(hypochlorousShare(6 + i / 2, hypochlorousPka(temperature_C)) - share)).toBeLessThan(1e-3);
    });
  });
});

describe('chlorine and ammonia, full kinetics (Wahman 2018; test values of tidywater from the EPA model; 1e-4)', () => {
  it.each([
    [
      { pH: 7.5, temperature_C: 20, alkalinity: 50 },
      [10, 1, 5],
      { total: 2.164128e-5, mono: 1.13944e-5, di: 2.666012e-6, tri: 6.743913e-7 },
    ],
    [
      { pH: 8, temperature_C: 25, alkalinity: 60 },
      [6, 2, 10],
      { total: 5.700349e-10, mono: 8.433662e-5, di: 7.578846e-8 },
    ],
    [
      { pH: 6, temperature_C: 30, alkalinity: 90 },
      [10, 10 / 13, 30],
      { total: 4.565128e-5, di: 1.414666e-8, tri: 2.549642e-6 },
    ],
  ] as const)('at %o, dose, nitrogen and minutes %o', (water, [dose, nitrogen, minutes], wanted) => {
    const [, total, mono, di, tri] = chloramines(water, dose, nitrogen, minutes);
    for (const [name, value] of Object.entries({ total, mono, di, tri })) {
      const want = (wanted as Record<string, number | undefined>)[name];
      if (want !== undefined) expect(Math.abs((value as number) / want - 1), name).toBeLessThan(1e-4);
    }
  });
});

describe('the cheap model against the kinetics (pH 7, 20 degC, alkalinity 100, 1 mg/L nitrogen, 30 min)', () => {
  const water = { pH: 7, temperature_C: 20, alkalinity: 100 };
  const out: ChlorineForms = { combined: 0, free: 0, ammonia: 0, burnt: 0 };
  const kinetic = (dose: number) => {
    const [, free, mono, di, tri] = chloramines(water, dose, 1, 30) as [number, number, number, number, number];
    return { free: free * 71000, total: (free + mono + 2 * di + 3 * tri) * 71000 };
  };

  it.each([1, 2, 3, 4, 5])('up to the mole ratio all of it stays combined: dose %i (2 %%)', (dose) => {
    const { combined, free } = chlorineForms(dose, 1, out);
    expect(free).toBe(0);
    expect(Math.abs(combined / kinetic(dose).total - 1)).toBeLessThan(0.02);
  });

  it.each([10, 12, 15])('past the breakpoint what is over is free: dose %i (0.5 mg/L)', (dose) => {
    expect(Math.abs(chlorineForms(dose, 1, out).free - kinetic(dose).free)).toBeLessThan(0.5);
  });

  it.each([6, 6.5, 7, 7.6, 8, 8.5, 9])('in between the hump rises and falls: dose %f (0.8 mg/L)', (dose) => {
    const { combined, free } = chlorineForms(dose, 1, out);
    expect(Math.abs(combined + free - kinetic(dose).total)).toBeLessThan(0.8);
  });

  it('a nitrifying unit’s effluent passes the breakpoint with 10 mg/L, a failing one’s makes only chloramine', () => {
    expect(chlorineForms(10, 0.5, out).free).toBeGreaterThan(5);
    const failing = chlorineForms(10, 20, out);
    expect([failing.free, failing.combined]).toEqual([0, 10]);
    expect(failing.ammonia).toBeGreaterThan(18);
  });
});

/** Source: problem of a wastewater textbook: fecal coliform, 12 degC, pH 7.4, 500,000 per 100 mL at the start. */
describe('kill by Collins and Selleck', () => {
  const MINUTES = [10, 15, 30, 60];
  const COUNTED: readonly (readonly [number, readonly number[]])[] = [
    [1, [16000, 5400, 1100, 270]],
    [2, [4050, 1600, 190, 48]],
    [6, [112, 59, 16, 7]],
    [10, [29, 16, 6, 1]],
  ];

  it('comes within 0.35 log of every count, 0.17 log in the mean square', () => {
    const off = COUNTED.flatMap(([dose, counts]) =>
      counts.map((count, i) => Math.log10((5e5 * survivors(FECAL_KILL, dose, MINUTES[i] as number)) / count)),
    );
    const rms = Math.sqrt(off.reduce((sum, x) => sum + x * x, 0) / off.length);
    console.log(`Collins-Selleck: rms ${rms.toFixed(3)} log, worst ${Math.max(...off.map(Math.abs)).toFixed(3)} log`);
    expect(rms).toBeLessThan(0.175);
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(0.355);
  });

  it('kills nothing before its product of residual and time', () => {
    expect(survivors(FECAL_KILL, 0.1, 10)).toBe(1);
    expect(survivors(FECAL_KILL, 0, 60)).toBe(1);
  });
});

/** Derived: the tenth that leaves first has stayed this share of the mean time in 1, 2, 4 and 10 mixed tanks. */
describe('tanks in series', () => {
  it.each([
    [1, 0.105],
    [2, 0.266],
    [4, 0.436],
    [10, 0.622],
  ])('%i: t10 / t is %f', (tanks, share) => {
    expect(passedBy(tanks, share)).toBeCloseTo(0.1, 2);
  });
});
