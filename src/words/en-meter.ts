import { meter } from './en/meter.ts';

/** What only the drawn panel with a meter says, in English. */
export const ofMeter = meter;
