/** Every promise under every fault that touches it, walked on the whole unit: what `npm test` leaves. */
import { afterAll, describe, expect, it } from 'vitest';
import { SPECS } from './panels.ts';
import { tableOfLiving } from './spec/living-report.ts';
import { type LivingRow, walkLiving } from './spec/living-walk.ts';
import { ONE_FAULT, PROMISES } from './spec/promises.ts';
import { told } from './spec/walk.ts';

const rows: LivingRow[] = [];

const walks = PROMISES.flatMap((promised) =>
  Object.keys(promised.faults)
    .filter((fault) => fault !== ONE_FAULT[promised.name])
    .map((fault) => [`${promised.name} of ${promised.unit}`, fault, promised] as const),
);

describe('lived', () => {
  it.each(walks)('%s, %s', (_, fault, promised) => {
    const { row, failures, missed } = walkLiving(promised, fault, SPECS[promised.unit]);
    rows.push(row);
    expect(failures.map(told).join('\n')).toBe('');
    expect(missed, 'transitions that were never taken').toEqual([]);
    expect(row.done + row.airless).toBe(row.transitions);
  });
});

afterAll(() => console.log(tableOfLiving(rows)));
