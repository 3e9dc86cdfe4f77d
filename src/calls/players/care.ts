/** What is cleaned on every visit, needed or not: else it comes back months later on the same door. */
import type { Hand } from './hand.ts';

/** Filters and sleeves that clog with use (common practice, no source). Those a unit lacks are passed over. */
const CLEANINGS = ['clean-intake-filter', 'clean-disc-filter', 'clean-sleeve'] as const;

/** What a household is told for good: cleaners and grease kept out of the drains, water run where none is used. */
export const LASTING_ADVICE = ['advise-spare-drains', 'advise-run-water'] as const;

export function cleanWear(hand: Hand): void {
  const done = new Set(hand.session.done.map((d) => d.def.id));
  for (const id of CLEANINGS) if (!done.has(id)) hand.doSafely(id);
}
