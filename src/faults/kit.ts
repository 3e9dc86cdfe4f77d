/** What is wrong with the kit of the one who looks: the unit is sound, the reading is not. */
import type { FaultEntry } from './entry.ts';

export const KIT_FAULTS: readonly FaultEntry[] = [
  {
    // Pads that took moisture hardly colour (common practice, no source).
    id: 'kit-stale',
    family: 'kit',
    place: 'disinfection',
    severity: 1,
    effect: { strips: 0.1 },
    shownBy: ['check-strips'],
    mendedBy: ['open-fresh-strips'],
    hiddenBy: ['refill-disinfectant'],
    proof: [],
    urgency: 'next-visit',
    commonness: 2,
  },
];
