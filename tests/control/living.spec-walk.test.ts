/**
 * Every promise of a sound unit and of one with a fault, walked on the whole unit: ordinary hands, water that really
 * fills and drains, air that really leaks, delays that really run out. The other faults are walked in the deep run.
 */
import { afterAll, describe, expect, it } from 'vitest';
import { SPECS } from './panels.ts';
import { tableOfLiving } from './spec/living-report.ts';
import { type LivingRow, walkLiving } from './spec/living-walk.ts';
import { ONE_FAULT, PROMISES } from './spec/promises.ts';
import { SOUND } from './spec/vocabulary.ts';
import { told } from './spec/walk.ts';

const rows: LivingRow[] = [];

describe.each(PROMISES.map((p) => [`${p.name} of ${p.unit}`, p] as const))('%s, lived', (_, promised) => {
  it.each([SOUND, ONE_FAULT[promised.name] as string])('%s', (fault) => {
    const { row, failures, missed } = walkLiving(promised, fault, SPECS[promised.unit]);
    rows.push(row);
    expect(failures.map(told).join('\n')).toBe('');
    expect(missed, 'transitions that were never taken').toEqual([]);
    expect(row.done + row.airless).toBe(row.transitions);
  });
});

afterAll(() => console.log(tableOfLiving(rows)));
