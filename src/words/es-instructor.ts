import type { ofInstructor as en } from './en-instructor.ts';
import { instructor } from './es/instructor.ts';
import { teaching } from './es/teaching.ts';
import { later } from './es-later.ts';

/** What the instructor's desk says, in Spanish, with the debrief's words: it tells what happened and what was likely. */
export const ofInstructor: Record<keyof typeof en, string> = { ...later, ...teaching, ...instructor };
