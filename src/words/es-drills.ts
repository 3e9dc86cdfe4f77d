import type { ofDrills as en } from './en-drills.ts';
import { drills } from './es/drills.ts';

/** What only the drills say, in Spanish. */
export const ofDrills: Record<keyof typeof en, string> = drills;
