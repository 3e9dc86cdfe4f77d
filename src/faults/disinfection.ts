/** Faults of disinfection. */
import type { FaultEntry } from './entry.ts';

export const DISINFECTION_FAULTS: readonly FaultEntry[] = [
  {
    id: 'uv-lamp-out',
    family: 'disinfection',
    place: 'disinfection',
    severity: 1,
    effect: { control: { starts: ['ultraviolet.fails'], ends: ['ultraviolet.renewed'] } },
    shownBy: ['look-at-ultraviolet'],
    mendedBy: ['renew-ultraviolet-lamp'],
    hiddenBy: [],
    proof: ['watched'],
    urgency: 'before-dosing',
    commonness: 4,
  },
];
