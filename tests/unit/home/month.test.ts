/** What a month of chlorine takes, against amounts worked out by hand. */
import { describe, expect, it } from 'vitest';
import { shippedLibrary } from '../../../src/calls/index.ts';
import { chlorineFor, MONTH_d, monthOfWater } from '../../../src/home/month.ts';
import { meanDaily } from '../../../src/plant/index.ts';
import { family, u1 } from '../units.ts';

const GALLONS_500_m3 = 1.893;

describe('chlorine for so much water', () => {
  const tablets = { kind: 'tablets', dose_mgL: 10, flow_m3d: 1.9, tube_g: 380, restocked_d: 30 } as const;

  /** Source: 500 gal at 10 mg/L take 18.9 g of chlorine: 27.8 g of tablets at 68 %, 344 mL of bleach at 55 g/L (labels, derived). */
  it('is 27.8 g of tablets or 344 mL of bleach for 500 gal at 10 mg/L', () => {
    const day = chlorineFor(tablets, GALLONS_500_m3);
    expect(day?.chlorine_g).toBeCloseTo(18.93, 2);
    expect(day?.tablet_g).toBeCloseTo(27.8, 1);
    expect((day?.liquid_L ?? 0) * 1000).toBeCloseTo(344, 0);
  });

  /** Source: as above, a tablet of 140 g lasts 5.0 days. */
  it('wears a tablet of 140 g off in five days', () => {
    expect(1 / (chlorineFor(tablets, GALLONS_500_m3)?.tablets ?? 0)).toBeCloseTo(5.0, 1);
  });

  it('goes by the strength that a unit feeds, and is none where a lamp disinfects', () => {
    const liquid = chlorineFor(u1().plant.disinfection, 30);
    expect(liquid).toMatchObject({ dose_mgL: 8, chlorine_g: 240, strength_gL: 60, liquid_L: 4 });
    const u3 = shippedLibrary().units.get('u3');
    expect(u3 && chlorineFor(u3.plant.disinfection, 30)).toBeUndefined();
  });
});

describe('a month of water', () => {
  it('is what the household lets run, day by day', () => {
    const steps = monthOfWater(u1(), family(3), 1);
    const shares: number[] = [];
    let step = steps.next();
    for (; step.done !== true; step = steps.next()) shares.push(step.value);
    expect(shares).toHaveLength(MONTH_d);
    expect(shares.at(-1)).toBe(1);
    // By chance of the draws; observed within 5 %.
    expect(Math.abs(step.value / (MONTH_d * meanDaily(family(3))) - 1)).toBeLessThan(0.1);
  });
});
