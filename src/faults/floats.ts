/** Faults of the floats: caught up or held down, each of them. */
import { FLOATS } from '../control/index.ts';
import type { FaultEntry } from './entry.ts';

export const FLOAT_FAULTS: readonly FaultEntry[] = [
  {
    id: 'stuck-up',
    family: 'floats',
    place: 'pump-tank',
    parts: FLOATS,
    severity: 1,
    effect: { control: { starts: ['{part}.heldUp'], ends: ['{part}.freed'] } },
    shownBy: ['look-into-pump-tank', 'float-continuity:{part}'],
    mendedBy: ['free-float:{part}', 'replace-float:{part}'],
    hiddenBy: [],
    proof: ['floats', 'dosing', 'spray', 'water-alarm'],
    urgency: 'before-dosing',
    commonness: 3,
  },
  {
    id: 'stuck-down',
    family: 'floats',
    place: 'pump-tank',
    parts: FLOATS,
    severity: 1,
    effect: { control: { starts: ['{part}.heldDown'], ends: ['{part}.freed'] } },
    shownBy: ['look-into-pump-tank', 'float-continuity:{part}', 'lift-float:{part}'],
    mendedBy: ['free-float:{part}', 'replace-float:{part}'],
    hiddenBy: ['selector-hand'],
    proof: ['floats', 'dosing', 'spray', 'water-alarm'],
    urgency: 'before-dosing',
    commonness: 4,
  },
];
