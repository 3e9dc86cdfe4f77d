import type { PartId } from '../../scene/types.ts';

/** The way the water takes, and then what keeps it going. */
export const STOPS = [
  'house',
  'trash-tank',
  'aeration',
  'clarifier',
  'disinfection',
  'pump-tank',
  'spray-field',
  'compressor',
  'panel',
] as const satisfies readonly PartId[];
export type Stop = (typeof STOPS)[number];
