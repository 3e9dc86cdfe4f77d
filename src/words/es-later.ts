import type { later as en } from './en-later.ts';
import { because } from './es/because.ts';
import { coach } from './es/coach.ts';
import { debrief } from './es/debrief.ts';
import { flags } from './es/flags.ts';
import { guide } from './es/guide.ts';
import { hints } from './es/hints.ts';
import { lesson } from './es/lesson.ts';
import { proofs } from './es/proofs.ts';
import { replays } from './es/replays.ts';
import { round } from './es/round.ts';
import { shows } from './es/shows.ts';
import { together } from './es/together.ts';
import { verdict } from './es/verdict.ts';

/** What only a debrief says, in Spanish. */
export const later: Record<keyof typeof en, string> = {
  ...because,
  ...coach,
  ...debrief,
  ...flags,
  ...guide,
  ...hints,
  ...lesson,
  ...together,
  ...proofs,
  ...replays,
  ...round,
  ...shows,
  ...verdict,
};
