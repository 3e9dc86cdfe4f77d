import type { later as en } from './en-later.ts';
import { debrief } from './es/debrief.ts';
import { flags } from './es/flags.ts';
import { round } from './es/round.ts';
import { shows } from './es/shows.ts';
import { verdict } from './es/verdict.ts';

/** What only a debrief or the round says, in Spanish. */
export const later: Record<keyof typeof en, string> = { ...debrief, ...flags, ...round, ...shows, ...verdict };
