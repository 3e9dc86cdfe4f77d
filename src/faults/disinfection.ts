/** Faults of disinfection: of hypochlorite and its feed, of tablets in their tube, of an ultraviolet lamp. */
import type { FaultEntry } from './entry.ts';

/** What these have in common: feed, store and light are all at the disinfection riser, and are seen at work there. */
const COMMON = {
  family: 'disinfection',
  place: 'disinfection',
  severity: 1,
  hiddenBy: [],
  proof: ['disinfects'],
  urgency: 'before-dosing',
} as const satisfies Partial<FaultEntry>;
const LIQUID = { ...COMMON, needs: { disinfection: 'liquid' } } as const;
const TABLETS = { ...COMMON, needs: { disinfection: 'tablets' } } as const;
const LIGHT = { ...COMMON, needs: { disinfection: 'ultraviolet' } } as const;

export const DISINFECTION_FAULTS: readonly FaultEntry[] = [
  {
    ...LIQUID,
    id: 'reservoir-empty',
    effect: { plant: { disinfectantStock: 0 } },
    shownBy: ['look-at-disinfectant'],
    mendedBy: ['refill-disinfectant'],
    commonness: 6,
  },
  {
    ...LIQUID,
    id: 'feed-clogged',
    effect: { plant: { disinfectantFeed: 0.05 } },
    shownBy: ['watch-feed'],
    mendedBy: ['clean-feed'],
    hiddenBy: ['refill-disinfectant'],
    commonness: 4,
  },
  {
    ...LIQUID,
    id: 'feed-air-locked',
    effect: { plant: { disinfectantFeed: 0 } },
    shownBy: ['watch-feed'],
    mendedBy: ['prime-feed'],
    hiddenBy: ['refill-disinfectant'],
    commonness: 3,
  },
  {
    ...LIQUID,
    id: 'overfeed',
    effect: { plant: { disinfectantFeed: 4 } },
    shownBy: ['watch-feed'],
    mendedBy: ['set-feed'],
    urgency: 'next-visit',
    commonness: 2,
  },
  {
    ...LIQUID,
    id: 'hypochlorite-stale',
    effect: { plant: { disinfectantStrength: 0.2 } },
    shownBy: ['test-hypochlorite'],
    mendedBy: ['refill-disinfectant'],
    commonness: 3,
  },
  {
    ...TABLETS,
    id: 'tablets-bridged',
    effect: { plant: { disinfectantFeed: 0 } },
    shownBy: ['watch-feed'],
    mendedBy: ['free-tablets', 'change-tablets'],
    hiddenBy: ['refill-disinfectant'],
    commonness: 5,
  },
  {
    ...TABLETS,
    id: 'tablets-used-up',
    effect: { plant: { disinfectantStock: 0 } },
    shownBy: ['look-at-disinfectant'],
    mendedBy: ['refill-disinfectant', 'change-tablets'],
    commonness: 6,
  },
  {
    // Slime in its slot backs water up over the whole stack, where a notch's depth should wet it (convention: eightfold).
    ...TABLETS,
    id: 'tablets-drowned',
    effect: { plant: { disinfectantFeed: 8 } },
    shownBy: ['watch-feed'],
    mendedBy: ['free-tablets', 'change-tablets'],
    urgency: 'next-visit',
    commonness: 2,
  },
  {
    // Trichlor dissolves too slowly for effluent; wetted again and again, or beside calcium hypochlorite, it forms
    // explosive nitrogen trichloride. Source: Texas A&M tablet chlorination sheet. The share is a convention.
    ...TABLETS,
    id: 'wrong-tablets',
    effect: { plant: { disinfectantStrength: 0.25 } },
    shownBy: ['read-tablet-label'],
    mendedBy: ['change-tablets'],
    urgency: 'now',
    commonness: 2,
  },
  {
    ...LIGHT,
    id: 'uv-lamp-out',
    effect: { control: { starts: ['ultraviolet.fails'], ends: ['ultraviolet.renewed'] } },
    shownBy: ['look-at-ultraviolet'],
    mendedBy: ['renew-ultraviolet-lamp'],
    proof: ['watched'],
    commonness: 4,
  },
  {
    ...LIGHT,
    id: 'uv-sleeve-dirty',
    effect: { plant: { sleeveLight: 0.1 } },
    shownBy: ['look-at-sleeve'],
    mendedBy: ['clean-sleeve', 'renew-ultraviolet-lamp'],
    commonness: 4,
  },
];
