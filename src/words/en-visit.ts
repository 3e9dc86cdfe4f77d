import { visit } from './en/visit.ts';

/** What only a routine visit says, in English. */
export const ofVisit = visit;
