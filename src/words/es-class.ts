import type { ofClass as en } from './en-class.ts';
import { classWords } from './es/class.ts';
import { replays } from './es/replays.ts';
import { later } from './es-later.ts';

/** What the sheet of a class says, in Spanish. */
export const ofClass: Record<keyof typeof en, string> = { ...later, ...classWords, ...replays };
