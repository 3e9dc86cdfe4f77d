/**
 * Ten thousand random lives of every unit. HISTORIES, SEED and MINUTES (a time box) change the run; a chunk that
 * would begin after the box is left out and the last line says how many were lived.
 */
import * as fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { anyLife } from './any-history.ts';
import { live, noLives, told } from './lives.ts';

const SEED = Number(process.env.SEED ?? 20310514);
const HISTORIES = Number(process.env.HISTORIES ?? 10_000);
const BOX_ms = Number(process.env.MINUTES ?? 90) * 60_000;
const CHUNK = 250;

const began = performance.now();
const tally = noLives();
const chunks = Array.from({ length: Math.ceil(HISTORIES / CHUNK) }, (_, i) => ({
  seed: SEED + i,
  runs: Math.min(CHUNK, HISTORIES - i * CHUNK),
}));

describe(`${HISTORIES} random lives, seeds ${SEED} to ${SEED + chunks.length - 1}`, () => {
  it.for(chunks)('$runs of seed $seed', ({ seed, runs }, { skip }) => {
    if (performance.now() - began > BOX_ms) skip();
    fc.assert(
      fc.property(anyLife, (life) => {
        expect(live(life, tally)).toEqual([]);
      }),
      { numRuns: runs, seed, endOnFailure: true },
    );
    console.info(`seed ${seed}: ${told(tally)}, ${Math.round((performance.now() - began) / 1000)} s`);
  });

  afterAll(() => {
    const lived = tally.lives >= HISTORIES ? 'all lived' : `only ${tally.lives} of ${HISTORIES} lived`;
    console.info(`seeds from ${SEED}: ${lived}; ${told(tally)}`);
  });
});
