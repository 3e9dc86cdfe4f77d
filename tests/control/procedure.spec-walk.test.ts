/** The service procedure, step by step in every order, and whole calls by every short cut, on the real call service. */
import { afterAll, describe, expect, it } from 'vitest';
import { PROCEDURES, splitLine, takeCall, walkProcedure, wholeCalls } from './spec/call-walk.ts';
import { tableOfRows } from './spec/report.ts';
import { type Row, told } from './spec/walk.ts';

const rows: Row[] = [];
const prepared = splitLine();

describe('the procedure', () => {
  it.each(PROCEDURES.map((p) => [p.name, p] as const))('%s', (_, procedure) => {
    const { row, failures } = walkProcedure(procedure, prepared);
    rows.push(row);
    expect(failures.slice(0, 2).map(told).join('\n'), `${failures.length} of ${row.paths} paths failed`).toBe('');
    expect([row.statesDone, row.transitionsDone]).toEqual([1, 1]);
  });
});

describe('from the first ring to the closed record', () => {
  const calls = wholeCalls();

  it('has a known number of ways', () => {
    expect(calls).toHaveLength(40);
  });

  it.each(calls.map((c) => [c.events.join(' > '), c] as const))('%s', (_, way) => {
    expect(takeCall(prepared, way)).toEqual([]);
  });
});

afterAll(() => console.log(tableOfRows(rows)));
