/** Faults of the house's own plumbing. */
import type { FaultEntry } from './entry.ts';

export const HOUSE_FAULTS: readonly FaultEntry[] = [
  {
    // Some 200 gal a day of a running toilet (municipal water pages, read).
    id: 'toilet-leaking',
    family: 'house',
    place: 'house',
    severity: 1,
    effect: { plant: { clearWater_m3d: 0.757 } },
    shownBy: ['dye-toilet'],
    mendedBy: ['renew-flapper'],
    hiddenBy: ['reset-panel'],
    proof: [],
    urgency: 'next-visit',
    commonness: 5,
  },
  {
    id: 'trap-dry',
    family: 'house',
    place: 'house',
    severity: 1,
    shows_d: 42,
    effect: { plant: { trapsUsed: 0 } },
    shownBy: ['look-at-traps'],
    mendedBy: ['fill-trap', 'advise-run-water'],
    hiddenBy: [],
    proof: [],
    urgency: 'next-visit',
    commonness: 3,
  },
];
