import { expect, it } from 'vitest';
import { callOfDay } from '../../src/calls/day-call.ts';
import { allShipped } from '../../src/calls/index.ts';

const SHIPPED = allShipped();
const CALLS = SHIPPED.filter(({ kind }) => kind !== 'visit').map(({ id }) => id);
/** 1 January 2030, counted from 1 January 1970. */
const FIRST = 21_915;
const days = (n: number, from = FIRST) => Array.from({ length: n }, (_, i) => callOfDay(from + i, SHIPPED));

it('is one of the shipped calls, never a routine visit', () => {
  for (const id of days(200)) expect(CALLS).toContain(id);
});

it('is the same for everybody on a day, in whatever order the calls are listed', () => {
  const turned = [...SHIPPED].reverse();
  for (let day = FIRST; day < FIRST + 100; day++) expect(callOfDay(day, turned)).toBe(callOfDay(day, SHIPPED));
});

it('comes again only when every call has had its day', () => {
  const first = Math.ceil(FIRST / CALLS.length) * CALLS.length;
  for (let run = 0; run < 5; run++) {
    expect([...days(CALLS.length, first + run * CALLS.length)].sort()).toEqual([...CALLS].sort());
  }
});

it('is never the same on two days in a row, for ten years', () => {
  const all = days(3653);
  expect(all.filter((id, i) => id === all[i - 1])).toEqual([]);
});

it('goes by another order in each run through them', () => {
  const n = CALLS.length;
  const first = Math.ceil(FIRST / n) * n;
  expect(days(n, first)).not.toEqual(days(n, first + n));
});

it('does with three calls, two or one', () => {
  const few = (n: number) => Array.from({ length: n }, (_, i) => ({ id: `c${i}`, kind: 'alarm' as const }));
  for (const n of [1, 2, 3]) {
    const ids = Array.from({ length: 30 }, (_, day) => callOfDay(day, few(n)));
    expect(new Set(ids).size).toBe(n);
    if (n === 3) expect(ids.filter((id, i) => id === ids[i - 1])).toEqual([]);
  }
});
