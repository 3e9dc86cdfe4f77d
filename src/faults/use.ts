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
  {
    id: 'crowd',
    family: 'use',
    place: 'house',
    severity: 1,
    effect: { uses: { fixture: 'toilet', times: 60, every_min: 6 } },
    shownBy: ['ask-use'],
    mendedBy: ['advise-save-water'],
    hiddenBy: [],
    proof: [],
    urgency: 'next-visit',
    commonness: 2,
  },
  {
    // As COD; cooking fat for many mouths (convention).
    id: 'grease',
    family: 'use',
    place: 'house',
    severity: 1,
    effect: { plant: { grease_gd: 300 } },
    shownBy: ['ask-use'],
    mendedBy: ['advise-spare-drains'],
    hiddenBy: [],
    proof: [],
    urgency: 'next-visit',
    commonness: 2,
  },
  {
    // Two litres of bleach and eight of a 5 % cleaner a day, as where animals are kept (convention).
    id: 'disinfectant-shock',
    family: 'use',
    place: 'house',
    severity: 1,
    effect: { plant: { bleach_gd: 100, quaternary_gd: 400 } },
    shownBy: ['ask-use'],
    mendedBy: ['advise-spare-drains'],
    hiddenBy: [],
    proof: [],
    urgency: 'next-visit',
    commonness: 2,
  },
];
