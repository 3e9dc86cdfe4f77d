import { describe, expect, it } from 'vitest';
import { geometryOf } from '../../src/scene/geometry.ts';
import { planClarifier, rise_mh } from '../../src/yard/clarifierPlan.ts';
import { gapsAt, groovesAt } from '../../src/yard/discsPlan.ts';
import { u1 } from './units.ts';

describe('the disc filter cut open', () => {
  it.each([0, 0.1, 0.4, 0.95, 1])('has as many gaps and grooves open as passage is left: %d', (share) => {
    const { open, shut } = gapsAt(share);
    expect(open.length / (open.length + shut.length)).toBeCloseTo(share, 1);
    const grooves = groovesAt(share);
    expect(grooves.filter((groove) => groove.open).length / grooves.length).toBeCloseTo(share, 1);
  });

  it('leaves shut what was shut as more dirt comes in', () => {
    const { shut } = gapsAt(0.3);
    for (const gap of gapsAt(0.7).shut) expect(shut).toContain(gap);
  });
});

describe('the clarifier cut open', () => {
  const { aeration } = geometryOf(u1());
  const plan = planClarifier(geometryOf(u1()));

  it('tells the rise rate of a surge of 5 gallons a minute on 5 square feet as 1440 gallons a day on each', () => {
    const GPM_Ls = 0.0630902;
    const FT2_m2 = 0.092903;
    expect(rise_mh(5 * GPM_Ls, 5 * FT2_m2)).toBeCloseTo(2.44, 1);
  });

  it('has the whole area at the surface, that of the slot at its foot, and less the deeper', () => {
    const { hopper, outletY } = plan;
    expect(plan.area_m2(outletY)).toBeCloseTo(aeration.clarifier.area_m2);
    expect(plan.area_m2(hopper.tip)).toBeCloseTo(aeration.clarifier.slot_m2);
    const deeper = [hopper.straight, (hopper.straight + hopper.tip) / 2, hopper.tip].map(plan.area_m2);
    expect(deeper).toEqual([...deeper].sort((a, b) => b - a));
  });

  it('stands with its slot above the floor, on true heights', () => {
    expect(plan.y(plan.slot_m)).toBeCloseTo(plan.hopper.tip);
    expect(plan.slot_m).toBeGreaterThan(aeration.floor_m);
  });
});
