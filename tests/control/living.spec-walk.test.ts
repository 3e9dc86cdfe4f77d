/**
 * Every promise of a sound unit and of one with a fault, walked on the whole unit: ordinary hands, water that really
 * fills and drains, air that really leaks, delays that really run out. The other faults are walked in the deep run.
 */
import { afterAll, describe, it } from 'vitest';
import { answer } from './spec/lived.ts';
import { keptAlive, tableOfLiving } from './spec/living-check.ts';
import type { LivingRow } from './spec/living-walk.ts';
import { ONE_FAULT, PROMISES } from './spec/promises.ts';
import { SOUND } from './spec/vocabulary.ts';

const rows: LivingRow[] = [];

describe.each(PROMISES.map((p) => [`${p.name} of ${p.unit}`, p] as const))('%s, lived', (_, promised) => {
  it.each([SOUND, ONE_FAULT[promised.name] as string])('%s', (fault) => {
    rows.push(keptAlive(answer({ ...promised, fault })));
  });
});

afterAll(() => console.log(tableOfLiving(rows)));
