/** Every promise under every fault that touches it, walked on the whole unit: what `npm test` leaves. */
import { afterAll, beforeAll, describe, it } from 'vitest';
import { inPlainNode } from '../bundled.ts';
import type { Asked, Lived } from './spec/lived.ts';
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
  let walkedBy: (asked: Asked) => Promise<Lived>;
  beforeAll(async () => {
    walkedBy = await inPlainNode('tests/control/spec/lived.ts', 'lived');
  }, 120_000);

  it.concurrent.for(walks)('%s, %s', async ([, fault, { name, unit }]) => {
    rows.push(keptAlive(await walkedBy({ name, unit, fault })));
  });
});

afterAll(() => console.log(tableOfLiving(rows)));
