/** So many random lives of a seed, as a worker of the deep run lives them. */
import * as fc from 'fast-check';
import { anyLife } from './any-history.ts';
import { live, noLives, type Tally } from './lives.ts';

export interface Chunk {
  readonly seed: number;
  readonly runs: number;
}

export interface Lived {
  readonly tally: Tally;
  /** What was broken, with the smallest life that breaks it; empty when nothing was. */
  readonly broken: string;
}

export function answer({ seed, runs }: Chunk): Lived {
  const tally = noLives();
  const details = fc.check(
    fc.property(anyLife, (life) => {
      const found = live(life, tally);
      if (found.length > 0) throw new Error(found.join('; '));
    }),
    { numRuns: runs, seed, endOnFailure: true },
  );
  return { tally, broken: fc.defaultReportMessage(details) ?? '' };
}
