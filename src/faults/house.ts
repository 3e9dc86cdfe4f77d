/** Faults of the house's own plumbing. */
import type { FaultEntry } from './entry.ts';

export const HOUSE_FAULTS: readonly FaultEntry[] = [
  {
    id: 'trap-dry',
    family: 'house',
    place: 'house',
    severity: 1,
    effect: { plant: { trapsUsed: 0 } },
    shownBy: ['look-at-traps'],
    mendedBy: ['fill-trap', 'advise-run-water'],
    hiddenBy: [],
    proof: [],
    urgency: 'next-visit',
    commonness: 3,
  },
];
