/**
 * Every promise under every two faults that touch it, in all orders. Bounded by time: what was left when it ran out is
 * told, never passed over in silence.
 */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inPlainNode } from '../bundled.ts';
import type { AskedPairs, Paired } from './spec/paired.ts';
import { PROMISES } from './spec/promises.ts';
import { tableOfRows } from './spec/report.ts';
import type { Row } from './spec/walk.ts';

const LIMIT_min = 30;
const rows: Row[] = [];
const left: string[] = [];
const began = performance.now();

const firsts = PROMISES.flatMap(({ name, unit, faults }) =>
  Object.keys(faults)
    .slice(0, -1)
    .map((first) => [`${name} of ${unit}`, first, { name, unit, first }] as const),
);

describe('under two faults', () => {
  let walkedBy: (asked: AskedPairs) => Promise<Paired>;
  beforeAll(async () => {
    walkedBy = await inPlainNode('tests/control/spec/paired.ts', 'paired');
  }, 120_000);

  it.concurrent.for(firsts)('%s: %s and another', async ([promise, first, asked]) => {
    if (performance.now() - began > LIMIT_min * 60_000) {
      left.push(`${promise}: ${first} and those after it`);
      return;
    }
    const { rows: walked, broken } = await walkedBy(asked);
    rows.push(...walked);
    expect(broken).toEqual([]);
  });
});

afterAll(() => {
  console.log(tableOfRows(rows));
  const complete = `complete: all ${rows.length} pairs of faults were walked`;
  console.log(left.length === 0 ? complete : `not complete, these were left:\n${left.join('\n')}`);
});
