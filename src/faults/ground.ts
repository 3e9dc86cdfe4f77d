/** Faults between the house and the ground round the tanks: what gets in, what gets out, and lids that are no lids. */
import type { FaultEntry } from './entry.ts';

const COMMON = { family: 'ground', severity: 1, hiddenBy: [], proof: [] } as const satisfies Partial<FaultEntry>;
const TANK = { ...COMMON, place: 'trash-tank' } as const;

export const GROUND_FAULTS: readonly FaultEntry[] = [
  {
    // Ground that slopes to a riser with an open joint (convention).
    ...TANK,
    id: 'storm-infiltration',
    effect: { plant: { seepage_m2: 40 } },
    shownBy: ['look-at-risers'],
    mendedBy: ['seal-riser'],
    hiddenBy: ['reset-panel', 'pump-out:trash'],
    urgency: 'next-visit',
    commonness: 4,
  },
  {
    // Half of the roof of a small house (convention).
    ...COMMON,
    id: 'clear-water-connected',
    place: 'house',
    effect: { plant: { roof_m2: 90 } },
    shownBy: ['look-at-downspouts'],
    mendedBy: ['disconnect-downspout'],
    hiddenBy: ['reset-panel'],
    urgency: 'next-visit',
    commonness: 2,
  },
  {
    ...TANK,
    id: 'lid-unsealed',
    effect: { plant: { lidGap: 1 } },
    shownBy: ['look-at-lids'],
    mendedBy: ['seal-lid'],
    urgency: 'next-visit',
    commonness: 3,
  },
  {
    // Whether a lid would bear a child's weight, water and air do not tell.
    ...TANK,
    id: 'lid-unsafe',
    effect: {},
    shownBy: ['look-at-lids'],
    mendedBy: ['renew-lid'],
    urgency: 'now',
    commonness: 2,
  },
  {
    // Takes what a household of four sends while the tank stands half a metre over its seam (convention).
    ...TANK,
    id: 'tank-leaks',
    effect: { plant: { trashLeak_m2d: 2.5 } },
    shownBy: ['look-into-trash-tank'],
    mendedBy: ['repair-tank'],
    urgency: 'before-dosing',
    commonness: 1,
  },
  {
    // Roots or grease let seep what a day brings, with the sewer standing full (convention).
    ...COMMON,
    id: 'sewer-blocked',
    place: 'clean-out',
    effect: { plant: { sewerFlow: 0.0004 } },
    shownBy: ['look-into-clean-out'],
    mendedBy: ['snake-sewer'],
    hiddenBy: ['pump-out:trash'],
    urgency: 'now',
    commonness: 4,
  },
];
