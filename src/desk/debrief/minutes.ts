import type { DebriefView } from '../../calls/view.ts';

/** Minutes that what was done in a call took. */
export function minutesOf({ done }: DebriefView): number {
  return done.reduce((sum, block) => sum + (block.to_ms - block.from_ms) / 60_000, 0);
}
