/** A class on one sheet: people by calls, what was missed most, and what does not count. */
import type { Counts, Marked, Refused } from './marked.ts';

export interface Cell {
  /** The best of what was handed in: passed before not passed, then the higher score. */
  readonly best: Counts;
  readonly tries: number;
}

export interface Row {
  readonly who: string;
  readonly cells: ReadonlyMap<string, Cell>;
  readonly passed: number;
}

/** How many of the records that count had it at least once. */
export interface Missed {
  readonly id: string;
  readonly records: number;
}

export interface ClassSheet {
  /** In the order of the course, as far as they are known; then as they came. */
  readonly calls: readonly string[];
  readonly rows: readonly Row[];
  readonly counted: number;
  readonly refused: readonly Refused[];
  readonly flags: readonly Missed[];
  readonly short: readonly Missed[];
}

export function classSheet(all: readonly Marked[], course: readonly string[]): ClassSheet {
  const counts = all.filter((one): one is Counts => one.state === 'counts');
  const people = [...new Set(counts.map(({ who }) => who))].sort((a, b) => (a < b ? -1 : 1));
  return {
    calls: inOrder([...new Set(counts.map(({ call }) => call))], course),
    rows: people.map((who) => rowOf(who, counts)),
    counted: counts.length,
    refused: all.filter((one): one is Refused => one.state === 'refused'),
    flags: missedMost(counts.map(({ flags }) => flags)),
    short: missedMost(counts.map(({ short }) => short)),
  };
}

function inOrder(calls: readonly string[], course: readonly string[]): readonly string[] {
  const place = (call: string) => (course.includes(call) ? course.indexOf(call) : course.length + calls.indexOf(call));
  return [...calls].sort((a, b) => place(a) - place(b));
}

function rowOf(who: string, counts: readonly Counts[]): Row {
  const theirs = counts.filter((one) => one.who === who);
  const cells = new Map<string, Cell>();
  for (const one of theirs) {
    const before = cells.get(one.call);
    cells.set(one.call, {
      best: before && !isBetter(one, before.best) ? before.best : one,
      tries: (before?.tries ?? 0) + 1,
    });
  }
  return { who, cells, passed: [...cells.values()].filter(({ best }) => best.passed).length };
}

function isBetter(one: Counts, other: Counts): boolean {
  return one.passed === other.passed ? one.score > other.score : one.passed;
}

function missedMost(records: readonly (readonly string[])[]): readonly Missed[] {
  const times = new Map<string, number>();
  for (const record of records) for (const id of new Set(record)) times.set(id, (times.get(id) ?? 0) + 1);
  return [...times]
    .map(([id, n]) => ({ id, records: n }))
    .sort((a, b) => b.records - a.records || (a.id < b.id ? -1 : 1));
}
