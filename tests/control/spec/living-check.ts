/** A promise kept on the whole unit, as a test says it; and the table of what was walked. */
import { expect } from 'vitest';
import type { Lived } from './lived.ts';
import type { LivingRow } from './living-walk.ts';

/** Expects that nothing failed and that only what nature forbids was left; gives the row. */
export function keptAlive({ row, failures, missed }: Lived): LivingRow {
  expect(failures.join('\n')).toBe('');
  expect(missed, 'transitions that were never taken').toEqual([]);
  expect(row.done + row.airless).toBe(row.transitions);
  return row;
}

export function tableOfLiving(rows: readonly LivingRow[]): string {
  const sum = (of: (row: LivingRow) => number) => rows.reduce((total, row) => total + of(row), 0);
  const line = (name: string, transitions: number, done: number, airless: number, steps: number, ms: number) =>
    `${name}: ${done} of ${transitions} transitions, ${airless} without air, ${steps} steps, ${ms.toFixed(0)} ms`;
  return [
    ...rows.map((r) => line(`${r.promise} ${r.unit}, ${r.fault}`, r.transitions, r.done, r.airless, r.steps, r.ms)),
    line(
      `all ${rows.length} walks on whole units`,
      sum((r) => r.transitions),
      sum((r) => r.done),
      sum((r) => r.airless),
      sum((r) => r.steps),
      sum((r) => r.ms),
    ),
  ].join('\n');
}
