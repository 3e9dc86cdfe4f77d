import { instructor } from './en/instructor.ts';
import { teaching } from './en/teaching.ts';
import { later } from './en-later.ts';

/** What the instructor's desk says, in English, with the debrief's words: it tells what happened and what was likely. */
export const ofInstructor = { ...later, ...teaching, ...instructor };
