/** A walk on a whole unit, asked for and told in plain data, so that a worker can do it. */
import { SPECS } from '../panels.ts';
import { type LivingRow, walkLiving } from './living-walk.ts';
import { PROMISES } from './promises.ts';
import type { Promised } from './vocabulary.ts';
import { told } from './walk.ts';

export type Asked = Pick<Promised, 'name' | 'unit'> & { readonly fault: string };

export interface Lived {
  readonly row: LivingRow;
  readonly failures: readonly string[];
  readonly missed: readonly string[];
}

export function answer({ name, unit, fault }: Asked): Lived {
  const promised = PROMISES.find((p) => p.name === name && p.unit === unit);
  if (!promised) throw new Error(`no promise "${name}" of ${unit}`);
  const { row, failures, missed } = walkLiving(promised, fault, SPECS[unit]);
  return { row, failures: failures.map(told), missed };
}
