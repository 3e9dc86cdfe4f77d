import { drills } from './en/drills.ts';

/** What only the drills say, in English. */
export const ofDrills = drills;
