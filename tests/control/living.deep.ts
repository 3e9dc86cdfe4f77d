/** Every promise under every fault that touches it, walked on the whole unit: what `npm test` leaves. */
import { afterAll, describe, it } from 'vitest';
import { keptAlive, tableOfLiving } from './spec/living-check.ts';
import type { LivingRow } from './spec/living-walk.ts';
import { ONE_FAULT, PROMISES } from './spec/promises.ts';

const rows: LivingRow[] = [];

const walks = PROMISES.flatMap((promised) =>
  Object.keys(promised.faults)
    .filter((fault) => fault !== ONE_FAULT[promised.name])
    .map((fault) => [`${promised.name} of ${promised.unit}`, fault, promised] as const),
);

describe('lived', () => {
  it.each(walks)('%s, %s', (_, fault, promised) => {
    rows.push(keptAlive(promised, fault));
  });
});

afterAll(() => console.log(tableOfLiving(rows)));
