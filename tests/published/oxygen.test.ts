/** Dissolved oxygen against published tables and worked examples. */
import { describe, expect, it } from 'vitest';
import { shippedLibrary } from '../../src/calls/index.ts';
import {
  endogenousUptake,
  fieldSaturation,
  odourIndex,
  oxygenAt,
  oxygenSaturation,
  oxygenTransfer,
} from '../../src/plant/index.ts';

const u1 = shippedLibrary().units.get('u1');
if (!u1) throw new Error('no unit u1');

describe('saturation of fresh water', () => {
  /** Source: Benson and Krause, as in USGS tables and Standard Methods 4500-O: mg/L at 1 atm; 0.002. */
  it.each([
    [0, 14.621],
    [5, 12.771],
    [10, 11.288],
    [15, 10.084],
    [20, 9.092],
    [25, 8.263],
    [30, 7.559],
    [35, 6.949],
    [40, 6.413],
  ])('at %d C is %d mg/L', (t, mgL) => expect(Math.abs(oxygenSaturation(t) - mgL)).toBeLessThan(0.002));

  /** Source: EN 25814, table to three figures. */
  it.each([
    [0, 14.6],
    [5, 12.8],
    [10, 11.3],
    [15, 10.1],
    [20, 9.09],
    [25, 8.26],
    [30, 7.56],
  ])('at %d C agrees with EN 25814: %d', (t, mgL) => {
    expect(Math.abs(oxygenSaturation(t) - mgL)).toBeLessThan(mgL > 10 ? 0.05 : 0.005);
  });
});

describe('transfer from clean-water rating to the tank', () => {
  /** Derived worked example (ASCE form): 100 L/min at 1.2 m, 6 %/m; 25 C, beta 0.95, alpha 0.6; sea level: KLa field 102.2 1/d in 2 m3. */
  it('gives a field KLa of 102.2 1/d (1 %)', () => {
    const spec = { ...u1.plant.air, transferPerMetre: 0.06, transferReference_Lmin: 100, alpha: 0.6, beta: 0.95 };
    const kla = oxygenTransfer(spec, oxygenAt(25), 100, 1.2, 2) * 86_400;
    expect(Math.abs(kla / 102.2 - 1)).toBeLessThan(0.01);
  });

  it('tends to beta C* with the depth factor 1 + 0.03858 d', () => {
    const spec = { ...u1.plant.air, beta: 0.95 };
    expect(fieldSaturation(spec, oxygenAt(20), 1.2)).toBeCloseTo(0.95 * 9.092 * (1 + 0.03858 * 1.2), 3);
  });
});

/** Derived: 31.9 g/h in 2.0 m3 is 16 mg/L/h, so liquor at 3 mg/L is oxygen-free in about 11 min (10 %). */
describe('after the air stops', () => {
  it('oxygen of 3 mg/L is under 0.5 mg/L in 11 min at an uptake of 16 mg/L/h (it slows below that)', () => {
    const uptake = { ...u1.plant.uptake, endogenous_gm3h: 16 };
    let oxygen = 3;
    let t = 0;
    while (oxygen > 0.5) {
      oxygen -= endogenousUptake(uptake, oxygen);
      t += 1;
    }
    expect(Math.abs(t / 60 / 11 - 1)).toBeLessThan(0.1);
  });

  /** Derived; qualitative in the literature: sulfide and odour begin 12 to 24 h after the oxygen is gone. */
  it('it does not smell for six hours, does between 12 and 24, and fully after a day', () => {
    expect(odourIndex(6)).toBe(0);
    expect(odourIndex(12)).toBeGreaterThan(0.2);
    expect(odourIndex(12)).toBeLessThan(0.5);
    expect(odourIndex(24)).toBe(1);
  });
});
