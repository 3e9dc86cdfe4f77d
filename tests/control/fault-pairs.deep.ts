/**
 * Every promise under every two faults that touch it, in all orders. Bounded by time: what was left when it ran out is
 * told, never passed over in silence.
 */
import { afterAll, describe, expect, it } from 'vitest';
import { tableOf } from './panels.ts';
import { PROMISES } from './spec/promises.ts';
import { tableOfRows } from './spec/report.ts';
import { type Row, told, walk } from './spec/walk.ts';

const LIMIT_min = 30;
const rows: Row[] = [];
const left: string[] = [];
const began = performance.now();

describe.each(PROMISES.map((p) => [`${p.name} of ${p.unit}`, p] as const))('%s', (name, promised) => {
  it('under every two faults', () => {
    const faults = Object.keys(promised.faults);
    const pairs = faults.flatMap((one, i) => faults.slice(i + 1).map((other) => [one, other] as const));
    for (const pair of pairs) {
      if (performance.now() - began > LIMIT_min * 60_000) {
        left.push(`${name}: ${pair.join(' and ')}`);
        continue;
      }
      const { row, failures, shortest } = walk(promised, pair, tableOf(promised.unit));
      rows.push(row);
      expect(shortest && told(shortest), pair.join(' and ')).toBeUndefined();
      expect(failures, pair.join(' and ')).toEqual([]);
      expect([row.statesDone, row.transitionsDone]).toEqual([1, 1]);
    }
  });
});

afterAll(() => {
  console.log(tableOfRows(rows));
  const complete = `complete: all ${rows.length} pairs of faults were walked`;
  console.log(left.length === 0 ? complete : `not complete, ${left.length} pairs were left:\n${left.join('\n')}`);
});
