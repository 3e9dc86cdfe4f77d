/** What a household does that looks like a fault: nothing is broken, and nothing on the property mends it. */
import type { FaultEntry } from './entry.ts';

export const USE_FAULTS: readonly FaultEntry[] = [
  {
    id: 'wash-day',
    family: 'use',
    place: 'house',
    severity: 1,
    effect: { uses: { fixture: 'washer', times: 6, every_min: 50 } },
    shownBy: ['ask-use'],
    mendedBy: ['advise-save-water'],
    hiddenBy: [],
    proof: [],
    urgency: 'next-visit',
    commonness: 3,
  },
];
