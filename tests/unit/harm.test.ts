import { describe, expect, it } from 'vitest';
import { shippedLibrary } from '../../src/calls/index.ts';
import { faultOn } from '../../src/faults/index.ts';
import { householdSource, notDisinfected, type Sample, steadyWeather, untreated } from '../../src/plant/index.ts';
import { readout, Unit } from '../../src/unit/index.ts';

const good: Sample = {
  cbod5_mgL: 5,
  solids_mgL: 8,
  ammonia_mgL: 0.5,
  nitrate_mgL: 10,
  kjeldahl_mgL: 1,
  oxygen_mgL: 5,
  alkalinity_mgL: 150,
  pH: 7.2,
  residual_mgL: 0.4,
  freeChlorine_mgL: 0.1,
  coliform_per100mL: 3,
  salt_mgL: 0,
};

/** 30 TAC 285.91(4): grab samples of at most 65 mg/L CBOD5 and TSS, and 0.1 mg/L of chlorine or 200 coliforms. */
describe('water that may not go to the field', () => {
  it('holds more than 65 mg/L of either, or germs without chlorine', () => {
    expect(untreated(good)).toBe(false);
    expect(untreated({ ...good, cbod5_mgL: 66 })).toBe(true);
    expect(untreated({ ...good, solids_mgL: 66 })).toBe(true);
    expect(untreated({ ...good, residual_mgL: 0.05, coliform_per100mL: 5000 })).toBe(true);
  });

  it('may do without chlorine where light has killed the germs', () => {
    expect(notDisinfected({ ...good, residual_mgL: 0, coliform_per100mL: 20 })).toBe(false);
  });

  it('is counted while a reservoir stands empty, and not before', () => {
    const spec = shippedLibrary().units.get('u1');
    const family = shippedLibrary().households.get('family-3');
    const empty = spec && faultOn(spec, 'reservoir-empty');
    if (!spec || !family || !empty) throw new Error('not shipped');
    const onset_s = 3 * 86_400;
    const fault = { id: empty.key, effect: empty.effect, onset_s, severity: 1, ramp_s: 0, present: 'always' } as const;
    const unit = new Unit({
      spec,
      source: householdSource(family, 1),
      seed: 1,
      weather: steadyWeather(20),
      faults: [fault],
    });
    unit.cutAt(onset_s);
    const before = readout(unit, unit.t);
    expect(before.untreated_m3).toBe(0);
    expect(before.undisinfected_h).toBe(0);
    unit.cutAt(onset_s + 4 * 86_400);
    const after = readout(unit, unit.t);
    expect(after.undisinfected_h).toBeGreaterThan(48);
    expect(after.undisinfected_h).toBeLessThanOrEqual(96);
    expect(after.untreated_m3).toBeGreaterThan(0.5);
    expect(after.untreated_m3).toBeLessThanOrEqual(after.sprayed_m3 - before.sprayed_m3 + 1e-9);
  });
});
