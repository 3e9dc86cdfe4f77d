/** One fault of a promise with each that comes after it, walked on the panel; in plain data, so that a worker can do it. */
import { ControlTable, panelOf } from '../../../src/control/index.ts';
import { KINDS } from '../panels.ts';
import { PROMISES } from './promises.ts';
import type { Promised } from './vocabulary.ts';
import { type Row, told, walk } from './walk.ts';

export type AskedPairs = Pick<Promised, 'name' | 'unit'> & { readonly first: string };

export interface Paired {
  readonly rows: readonly Row[];
  /** What went wrong, each with the pair it went wrong with. */
  readonly broken: readonly string[];
}

export function answer({ name, unit, first }: AskedPairs): Paired {
  const promised = PROMISES.find((p) => p.name === name && p.unit === unit);
  if (!promised) throw new Error(`no promise "${name}" of ${unit}`);
  const faults = Object.keys(promised.faults);
  const table = new ControlTable(panelOf(KINDS[unit]));
  const rows: Row[] = [];
  const broken: string[] = [];
  for (const other of faults.slice(faults.indexOf(first) + 1)) {
    const { row, failures, shortest } = walk(promised, [first, other], table);
    rows.push(row);
    const pair = `${first} and ${other}`;
    if (shortest) broken.push(`${pair}: ${told(shortest)}`);
    else if (failures.length > 0) broken.push(`${pair}: ${failures.map(told).join('\n')}`);
    if (row.statesDone !== 1 || row.transitionsDone !== 1) broken.push(`${pair}: not all of it was walked`);
  }
  return { rows, broken };
}
