/** Faults of what sinks, floats and hangs in the tanks: what nobody pumped out, and what holds it or lets it through. */
import type { FaultEntry } from './entry.ts';

/** What these have in common: nothing of the panel is broken, so nothing of it proves the cure. */
const COMMON = { family: 'solids', severity: 1, hiddenBy: [], proof: [] } as const satisfies Partial<FaultEntry>;
const TRASH = { ...COMMON, place: 'trash-tank' } as const;

export const SOLIDS_FAULTS: readonly FaultEntry[] = [
  {
    // Its bottom then comes within 6 in of the outlet's (EPA homeowner guide, from memory): of 0.48 m down to the tee.
    ...TRASH,
    id: 'scum-heavy',
    effect: { gathers: { trashScum_m: 0.28 } },
    shownBy: ['probe-trash'],
    mendedBy: ['pump-out:trash'],
    urgency: 'next-visit',
    commonness: 4,
  },
  {
    // Its top then comes within 12 in of the outlet's foot (EPA homeowner guide, from memory).
    ...TRASH,
    id: 'sludge-high',
    effect: { gathers: { trashSludge_m: 0.5 } },
    shownBy: ['probe-trash'],
    mendedBy: ['pump-out:trash'],
    urgency: 'next-visit',
    commonness: 5,
  },
  {
    // Three parts in ten still settle before they reach the open outlet (convention).
    ...TRASH,
    id: 'outlet-baffle-lost',
    effect: { plant: { baffle: 0.3 } },
    shownBy: ['look-at-tees'],
    mendedBy: ['refit-baffle'],
    hiddenBy: ['pump-out:trash'],
    urgency: 'next-visit',
    commonness: 2,
  },
  {
    // A mat of wipes lets seep what a day brings, with the sewer standing full (convention).
    ...TRASH,
    id: 'inlet-blocked',
    effect: { plant: { inletFlow: 0.0006 } },
    shownBy: ['look-at-tees'],
    mendedBy: ['clear-inlet'],
    hiddenBy: ['snake-sewer'],
    urgency: 'now',
    commonness: 4,
  },
  {
    // Passes the day's water, but only under a third of a metre of head (convention).
    ...TRASH,
    id: 'outlet-blocked',
    effect: { plant: { outletFlow: 0.001 } },
    shownBy: ['look-at-tees'],
    mendedBy: ['clear-outlet'],
    hiddenBy: ['pump-out:trash'],
    urgency: 'now',
    commonness: 2,
  },
  {
    // As much dead sludge as one more year without pumping leaves (three persons: docs/model.md).
    ...COMMON,
    id: 'mixed-liquor-old',
    place: 'aeration',
    effect: { gathers: { liquor_y: 1 } },
    shownBy: ['settle-jar'],
    mendedBy: ['pump-out:aeration'],
    urgency: 'next-visit',
    commonness: 4,
  },
  {
    // Rags let water through and hold sludge back (convention).
    ...COMMON,
    id: 'return-slot-blocked',
    place: 'clarifier',
    effect: { plant: { slotOpen: 0.02 } },
    shownBy: ['probe-slot'],
    mendedBy: ['clear-slot'],
    hiddenBy: ['pump-out:aeration'],
    urgency: 'before-dosing',
    commonness: 2,
  },
  {
    // Over 150 mL/g sludge bulks (Metcalf and Eddy, from memory); 400 is badly so (convention).
    ...COMMON,
    id: 'blanket-rising',
    place: 'clarifier',
    effect: { plant: { volumeIndex: 4 } },
    shownBy: ['settle-jar'],
    mendedBy: ['pump-out:aeration'],
    urgency: 'next-visit',
    commonness: 3,
  },
  {
    // About 9 in calls for pumping out soon (common practice, no source).
    ...COMMON,
    id: 'pump-tank-sludge',
    place: 'pump-tank',
    effect: { gathers: { pumpSludge_m: 0.22 } },
    shownBy: ['core-sludge'],
    mendedBy: ['pump-out:pump'],
    urgency: 'next-visit',
    commonness: 3,
  },
];
