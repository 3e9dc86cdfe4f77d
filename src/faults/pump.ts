/** Faults of the effluent pump and of what it pumps through. */
import type { FaultEntry } from './entry.ts';

export const PUMP_FAULTS: readonly FaultEntry[] = [
  {
    id: 'winding-open',
    family: 'pump',
    place: 'pump-tank',
    severity: 1,
    effect: { control: { starts: ['winding.opens'], ends: ['winding.renewed'] } },
    shownBy: ['winding-ohms', 'pump-volts'],
    mendedBy: ['replace-pump'],
    hiddenBy: [],
    proof: ['dosing', 'spray', 'water-alarm'],
    urgency: 'before-dosing',
    commonness: 3,
  },
  {
    id: 'disc-filter-clogged',
    family: 'pump',
    place: 'disc-filter',
    severity: 0.6,
    effect: { plant: { filterFlow: 0.005 } },
    shownBy: ['open-disc-filter'],
    mendedBy: ['clean-disc-filter'],
    hiddenBy: ['replace-pump'],
    proof: ['dosing', 'spray'],
    urgency: 'next-visit',
    commonness: 5,
  },
];
