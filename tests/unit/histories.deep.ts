/**
 * Ten thousand random lives of every unit. HISTORIES, SEED and MINUTES (a time box) change the run; a chunk that
 * would begin after the box is left out and the last line says how many were lived.
 */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inPlainNode } from '../bundled.ts';
import { noLives, told } from './lives.ts';
import type { Chunk, Lived } from './many-lives.ts';

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
  let livedBy: (chunk: Chunk) => Promise<Lived>;
  beforeAll(async () => {
    livedBy = await inPlainNode('tests/unit/many-lives.ts', 'many-lives');
  }, 120_000);

  it.concurrent.for(chunks)('$runs of seed $seed', async (chunk, { skip, expect }) => {
    if (performance.now() - began > BOX_ms) skip();
    const lived = await livedBy(chunk);
    tally.lives += lived.tally.lives;
    tally.events += lived.tally.events;
    tally.hours += lived.tally.hours;
    tally.worst = Math.max(tally.worst, lived.tally.worst);
    console.info(`seed ${chunk.seed}: ${told(tally)}, ${Math.round((performance.now() - began) / 1000)} s`);
    expect(lived.broken).toBe('');
  });

  afterAll(() => {
    const all = tally.lives >= HISTORIES ? 'all lived' : `only ${tally.lives} of ${HISTORIES} lived`;
    console.info(`seeds from ${SEED}: ${all}; ${told(tally)}`);
    expect(tally.lives).toBeGreaterThan(0);
  });
});
