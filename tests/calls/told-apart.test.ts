/**
 * Every fault at its usual severity against every other single fault, by all checks, simulated on each unit. What a
 * household does with its drains is asked about, and not looked for.
 */
import { describe, expect, it } from 'vitest';
import { shippedLibrary } from '../../src/calls/index.ts';
import { alikePairs, type Signature, signaturesOf } from '../../src/diagnosis/index.ts';
import { faultsOf } from '../../src/faults/index.ts';
import { householdSource, steadyWeather } from '../../src/plant/index.ts';
import type { UnitSpec } from '../../src/unit/index.ts';

/** Truly alike, with the reason in docs/diagnosis.md. */
const ALIKE = [['winding-open', 'protector-open']];

function signatures(spec: UnitSpec): readonly Signature[] {
  const family = shippedLibrary().households.get('family-3');
  if (!family) throw new Error('the household does not ship');
  const around = { spec, source: householdSource(family, 1), seed: 1, weather: steadyWeather(18) };
  const faults = faultsOf(spec).filter((f) => f.family !== 'use');
  return signaturesOf(around, faults, ({ severity }) => [severity]);
}

describe.each([...shippedLibrary().units])('on %s', { timeout: 300_000 }, (_id, spec) => {
  const all = signatures(spec);

  it('every fault is told from a sound unit by some check', () => {
    expect(all.filter((s) => !s.checks.some((c) => c.tells)).map((s) => s.fault)).toEqual([]);
  });

  it('every fault is told from every other, but for the pairs that are listed as alike', () => {
    expect(alikePairs(all)).toEqual(ALIKE);
  });
});
