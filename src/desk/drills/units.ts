import type { UnitSpec } from '../../unit/spec.ts';

const FILES = import.meta.glob<UnitSpec>('../../../scenarios/units/*.json', { eager: true, import: 'default' });

/** The shipped units, which take turns. They are taken as they are: a test holds them against their schema. */
export const UNITS = Object.values(FILES);

export function unitOfTurn(turn: number): UnitSpec {
  const unit = UNITS[turn % UNITS.length];
  if (unit === undefined) throw new Error('no units ship');
  return unit;
}
