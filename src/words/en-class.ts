import { classWords } from './en/class.ts';
import { replays } from './en/replays.ts';
import { later } from './en-later.ts';

/** What the sheet of a class says, in English, with the debrief's words: it tells what was missed, and opens debriefs. */
export const ofClass = { ...later, ...classWords, ...replays };
