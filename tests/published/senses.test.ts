/** What people see and smell, against the visual key of operators' guides and the clock of a unit without air. */
import { describe, expect, it } from 'vitest';
import {
  bubbling,
  clarityDepth_m,
  effluentColour,
  type FoamState,
  foam,
  liquorColour,
  pinFloc,
  smellIndoors,
  smellOutdoors,
} from '../../src/plant/senses.ts';
import { trapSeal_mm } from '../../src/plant/trap.ts';

/** Source: visual key (read: an extended-aeration guide, a textbook); hours derived from the oxygen left in nitrate. */
describe('colour', () => {
  it.each([
    [3000, 0, 'chocolate-brown'],
    [3000, 5.9, 'chocolate-brown'],
    [3000, 6, 'grey-brown'],
    [3000, 12, 'grey'],
    [3000, 24, 'black'],
    [500, 0, 'tan'],
    [500, 30, 'black'],
    [10, 30, 'clear'],
  ])('liquor of %i mg/L, %f h without oxygen, is %s', (solids_mgL, hoursWithoutOxygen, colour) => {
    expect(liquorColour({ solids_mgL, hoursWithoutOxygen })).toBe(colour);
  });

  /** Source: NSF/ANSI 40 class I: solids of 30 mg/L on the mean of 30 days. */
  it.each([
    [30, 0, 'clear'],
    [31, 0, 'cloudy'],
    [101, 0, 'tan'],
    [2000, 0, 'chocolate-brown'],
    [60, 14, 'grey'],
  ])('effluent of %i mg/L, %f h without oxygen, is %s', (solids_mgL, hoursWithoutOxygen, colour) => {
    expect(effluentColour({ solids_mgL, hoursWithoutOxygen })).toBe(colour);
  });
});

describe('clarity', () => {
  /** Source: fit for turbidity tubes, depth (cm) = 244.13 NTU^-0.662, at 2.2 mg/L a NTU (handbook, from memory): 1 %. */
  it.each([
    [10 * 2.2, 0.5316],
    [50 * 2.2, 0.1832],
    [200 * 2.2, 0.0732],
  ])('of %f mg/L is %f m', (solids, depth) => {
    expect(Math.abs(clarityDepth_m(solids) / depth - 1)).toBeLessThan(0.01);
  });

  it('never exceeds the tube and falls with the solids', () => {
    expect(clarityDepth_m(0)).toBe(1);
    expect(clarityDepth_m(1)).toBe(1);
    const depths = [10, 30, 100, 300, 1000, 3000].map(clarityDepth_m);
    expect(depths).toEqual([...depths].sort((a, b) => b - a));
    expect(depths[5]).toBeLessThan(0.03);
  });
});

describe('bubbles', () => {
  it('follow the air from a still surface to a healthy one', () => {
    expect(bubbling(0, 83)).toBe(0);
    expect(bubbling(41.5, 83)).toBe(0.5);
    expect(bubbling(100, 83)).toBe(1);
  });
});

/** Source: visual key (read), and a fault list: start-up, low solids, detergent, poisoned sludge (read). */
describe('foam', () => {
  const mature: FoamState = {
    air_Lmin: 83,
    reference_Lmin: 83,
    heterotrophs_mgL: 320,
    activity: 1,
    inertShare: 0.9,
    soap: 1,
  };

  it('is a little, crisp and white, on healthy liquor', () => {
    expect(foam(mature)).toEqual({ kind: 'crisp-white', amount: 0.15 });
  });

  it.each([
    ['young sludge', { heterotrophs_mgL: 40, inertShare: 0.6 }],
    ['poisoned sludge', { activity: 0.2 }],
    ['three households of detergent', { soap: 3 }],
  ])('billows white on %s', (_what, change) => {
    const seen = foam({ ...mature, ...change });
    expect(seen.kind).toBe('billowing-white');
    expect(seen.amount).toBeGreaterThan(0.4);
    expect(seen.amount).toBeLessThanOrEqual(1);
  });

  it('is dark and greasy on old sludge, and more of it as it ages', () => {
    const threeYears = foam({ ...mature, inertShare: 0.966 });
    expect(threeYears.kind).toBe('dark-greasy');
    expect(foam({ ...mature, inertShare: 0.979 }).amount).toBeGreaterThan(threeYears.amount);
  });

  it('old sludge that is poisoned billows', () => {
    expect(foam({ ...mature, inertShare: 0.96, activity: 0.1 }).kind).toBe('billowing-white');
  });

  it('few who live there need few heterotrophs, and nobody at home makes no soap', () => {
    expect(foam({ ...mature, heterotrophs_mgL: 107, soap: 0.33 }).kind).toBe('crisp-white');
    expect(foam({ ...mature, heterotrophs_mgL: 20, soap: 0 }).kind).toBe('crisp-white');
  });

  it('needs air', () => {
    expect(foam({ ...mature, air_Lmin: 0, activity: 0 })).toEqual({ kind: 'none', amount: 0 });
    expect(foam({ ...mature, air_Lmin: 41.5 }).amount).toBeCloseTo(0.075, 12);
  });
});

/** Source: a trouble list of operators' guides (read): over-aeration, oxygen over 3 mg/L, very old sludge. */
describe('pin floc', () => {
  it.each([
    [0.96, 3.1, true],
    [0.96, 2.9, false],
    [0.9, 6, false],
  ])('of an inert share of %f at %f mg/L of oxygen: %s', (inertShare, oxygen_mgL, specks) => {
    expect(pinFloc({ inertShare, oxygen_mgL })).toBe(specks);
  });
});

describe('smell outdoors', () => {
  const air = { hoursWithoutOxygen: 0, residual_mgL: 1, open: 1 };

  it('is of earth under an open lid and of nothing beside a tight one', () => {
    expect(smellOutdoors(air)).toEqual({ kind: 'earthy', strength: 0.2 });
    expect(smellOutdoors({ ...air, open: 0 })).toEqual({ kind: 'none', strength: 0 });
  });

  /** Derived: sulfide begins 12 to 24 h after the oxygen is gone. */
  it('turns musty, then to rotten eggs from half a day', () => {
    expect(smellOutdoors({ ...air, hoursWithoutOxygen: 9 }).kind).toBe('musty');
    expect(smellOutdoors({ ...air, hoursWithoutOxygen: 12 }).kind).toBe('rotten-eggs');
    expect(smellOutdoors({ ...air, hoursWithoutOxygen: 24 })).toEqual({ kind: 'rotten-eggs', strength: 1 });
    expect(smellOutdoors({ ...air, hoursWithoutOxygen: 24, open: 0 }).strength).toBe(0.5);
  });

  /** Common practice (from memory): a strong smell of chlorine means a residual above 4 mg/L. */
  it('is of chlorine above 4 mg/L, unless the stench is stronger', () => {
    expect(smellOutdoors({ ...air, residual_mgL: 4 }).kind).toBe('earthy');
    expect(smellOutdoors({ ...air, residual_mgL: 8 })).toEqual({ kind: 'chlorine', strength: 0.8 });
    expect(smellOutdoors({ ...air, residual_mgL: 8, hoursWithoutOxygen: 24 }).kind).toBe('rotten-eggs');
  });
});

/** Common practice, no source: indoors first suspect a dry trap. */
describe('smell indoors', () => {
  it('comes past a trap dry after a month and a half away, not after a week', () => {
    const after = (days: number) => smellIndoors({ seal_mm: trapSeal_mm(50, days, 20, 0.5), backedUp: false });
    expect(after(7).kind).toBe('none');
    expect(after(45)).toEqual({ kind: 'sewer-air', strength: 0.6 });
  });

  it('is strongest when sewage backs up, whatever the traps', () => {
    expect(smellIndoors({ seal_mm: 50, backedUp: true })).toEqual({ kind: 'septic', strength: 1 });
    expect(smellIndoors({ seal_mm: 0, backedUp: true })).toEqual({ kind: 'septic', strength: 1 });
  });
});
