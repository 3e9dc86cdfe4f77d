/** What a run of a unit with a fault came to: it takes a moment, so each is kept. */
import type { PlacedFault } from '../faults/index.ts';
import type { UnitSpec } from '../unit/spec.ts';

type OfFault<T> = (spec: UnitSpec, fault: PlacedFault) => T;

export function kept<T>(live: OfFault<T>): OfFault<T> {
  const known = new WeakMap<UnitSpec, Map<string, { readonly came: T }>>();
  return (spec, fault) => {
    const ofUnit = known.get(spec) ?? new Map<string, { readonly came: T }>();
    known.set(spec, ofUnit);
    const found = ofUnit.get(fault.key) ?? { came: live(spec, fault) };
    ofUnit.set(fault.key, found);
    return found.came;
  };
}
