import { visit } from './es/visit.ts';

/** What only a routine visit says, in Spanish. */
export const ofVisit = visit;
