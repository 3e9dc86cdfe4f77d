import { debrief } from './en/debrief.ts';
import { flags } from './en/flags.ts';
import { round } from './en/round.ts';
import { shows } from './en/shows.ts';
import { verdict } from './en/verdict.ts';

/** What only a debrief or the round says, in English: a call begins without it. */
export const later = { ...debrief, ...flags, ...round, ...shows, ...verdict };
