import type { PartId } from '../scene/types.ts';

/** The parts that water passes through carry numbers along its way, in the picture and in every list. */
export const IN_FLOW: readonly PartId[] = [
  'trash-tank',
  'aeration',
  'clarifier',
  'disinfection',
  'pump-tank',
  'disc-filter',
  'spray-field',
];
