import { because } from './en/because.ts';
import { coach } from './en/coach.ts';
import { debrief } from './en/debrief.ts';
import { flags } from './en/flags.ts';
import { guide } from './en/guide.ts';
import { hints } from './en/hints.ts';
import { lesson } from './en/lesson.ts';
import { proofs } from './en/proofs.ts';
import { replays } from './en/replays.ts';
import { round } from './en/round.ts';
import { shows } from './en/shows.ts';
import { together } from './en/together.ts';
import { verdict } from './en/verdict.ts';

/** What only a debrief says, in English: a call begins without it. */
export const later = {
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
