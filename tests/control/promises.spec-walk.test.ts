/** Every promise of every unit, without a fault and under each fault that touches it, walked through all its states. */
import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { tableOf } from './panels.ts';
import { COVERAGE_PAGE, coveragePage, coverageTables, faultsOf, MODEL_PAGE, withSection } from './spec/pages.ts';
import { PROMISES } from './spec/promises.ts';
import { tableOfRows } from './spec/report.ts';
import { type Row, told, walk } from './spec/walk.ts';

const rows: Row[] = [];

describe.each(PROMISES.map((p) => [`${p.name} of ${p.unit}`, p] as const))('%s', (_, promised) => {
  it.each(faultsOf(promised))('%s', (fault) => {
    const { row, failures, shortest } = walk(promised, fault, tableOf(promised.unit));
    rows.push(row);
    expect(shortest && told(shortest), 'the shortest sequence that fails').toBeUndefined();
    expect(failures.slice(0, 2).map(told).join('\n'), `${failures.length} of ${row.paths} paths failed`).toBe('');
    expect([row.statesDone, row.transitionsDone]).toEqual([1, 1]);
    expect(row.states).toBeLessThanOrEqual(1000);
  });
});

it('has its extent told by the pages; if they are stale, run: npm run diagrams', () => {
  const { every, sums } = coverageTables(rows);
  const page = readFileSync(MODEL_PAGE, 'utf8');
  expect(readFileSync(COVERAGE_PAGE, 'utf8')).toBe(coveragePage(every));
  expect(withSection(page, 'coverage', sums)).toBe(page);
});

afterAll(() => console.log(tableOfRows(rows)));
