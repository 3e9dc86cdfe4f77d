/**
 * Every promise under every two faults that touch it, in all orders. Bounded by time: what was left when it ran out is
 * told, never passed over in silence.
 */
import { afterAll, describe, expect, it } from 'vitest';
import { ControlTable, panelOf } from '../../src/control/index.ts';
import { KINDS } from './panels.ts';
import { PROMISES } from './spec/promises.ts';
import { tableOfRows } from './spec/report.ts';
import { type Row, told, walk } from './spec/walk.ts';

const LIMIT_min = 30;
const rows: Row[] = [];
const left: string[] = [];
const began = performance.now();

describe.each(PROMISES.map((p) => [`${p.name} of ${p.unit}`, p] as const))('%s', (name, promised) => {
  const faults = Object.keys(promised.faults);

  it.each(faults.slice(0, -1).map((fault, i) => [fault, i] as const))('%s and another', (one, i) => {
    // What is remembered of all pairs of a promise together would not fit: each first fault has a machine and a panel anew.
    const anew = { ...promised, machine: promised.machine.provide({}) };
    const table = new ControlTable(panelOf(KINDS[promised.unit]));
    for (const other of faults.slice(i + 1)) {
      if (performance.now() - began > LIMIT_min * 60_000) {
        left.push(`${name}: ${one} and ${other}`);
        continue;
      }
      const { row, failures, shortest } = walk(anew, [one, other], table);
      rows.push(row);
      expect(shortest && told(shortest), `${one} and ${other}`).toBeUndefined();
      expect(failures, `${one} and ${other}`).toEqual([]);
      expect([row.statesDone, row.transitionsDone]).toEqual([1, 1]);
    }
  });
});

afterAll(() => {
  console.log(tableOfRows(rows));
  const complete = `complete: all ${rows.length} pairs of faults were walked`;
  console.log(left.length === 0 ? complete : `not complete, ${left.length} pairs were left:\n${left.join('\n')}`);
});
