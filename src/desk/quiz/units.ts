import type { UnitSpec } from '../../unit/spec.ts';
import { UNITS } from '../drills/units.ts';

export function unitBy(id: string): UnitSpec | undefined {
  return UNITS.find((unit) => unit.id === id);
}
