/** What ran out onto the ground: read off, and cleaned up when a visit ends, so that the next one does not find it again. */
import { marked, WATER } from '../../plant/index.ts';
import type { Snapshot } from '../../unit/index.ts';

const SPILLED = [WATER.relieved, WATER.indoors, WATER.leaked] as const;

/** Sewage over the clean-out, indoors and out of leaks, since it was last cleaned up, m3. */
export function spilled_m3({ y }: { readonly y: ArrayLike<number> }): number {
  return SPILLED.reduce((sum, i) => sum + (y[i] ?? 0), 0);
}

/** The same state with the ledgers of what was spilled at nothing; what has passed since the last stretch stays. */
export function cleanedUp(from: Snapshot): Snapshot {
  const y = [...from.y];
  for (const i of SPILLED) {
    const at = from.y[marked(i)] ?? 0;
    y[i] = (from.y[i] ?? 0) - at;
    y[marked(i)] = 0;
  }
  return { ...from, y };
}
