/** Every promise of every unit, without a fault and under each fault that touches it, walked through all its states. */
import { afterAll, describe, expect, it } from 'vitest';
import { tableOf } from './panels.ts';
import { PROMISES } from './spec/promises.ts';
import { tableOfRows } from './spec/report.ts';
import { SOUND } from './spec/vocabulary.ts';
import { type Row, told, walk } from './spec/walk.ts';

const rows: Row[] = [];

describe.each(
  PROMISES.filter((p) => !process.env.SPEC || p.name.includes(process.env.SPEC)).map(
    (p) => [`${p.name} of ${p.unit}`, p] as const,
  ),
)('%s', (_, promised) => {
  it.each([SOUND, ...Object.keys(promised.faults)])('%s', (fault) => {
    const { row, failures, shortest } = walk(promised, fault, tableOf(promised.unit));
    rows.push(row);
    expect(shortest && told(shortest), 'the shortest sequence that fails').toBeUndefined();
    expect(failures.slice(0, 2).map(told).join('\n'), `${failures.length} of ${row.paths} paths failed`).toBe('');
    expect([row.statesDone, row.transitionsDone]).toEqual([1, 1]);
    expect(row.states).toBeLessThanOrEqual(1000);
  });
});

afterAll(() => console.log(tableOfRows(rows)));
