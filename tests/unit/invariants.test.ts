/** Some random lives of every unit, held against every invariant; the deep run lives ten thousand. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLife } from './any-history.ts';
import { live, noLives, told } from './lives.ts';

const SEED = Number(process.env.SEED ?? 20310514);

describe('random lives', () => {
  it('break no invariant, replay to the same bits, and can be healed', () => {
    const tally = noLives();
    fc.assert(
      fc.property(anyLife, (life) => {
        expect(live(life, tally)).toEqual([]);
      }),
      { numRuns: Number(process.env.HISTORIES ?? 40), seed: SEED },
    );
    console.info(`seed ${SEED}: ${told(tally)}`);
  });
});
