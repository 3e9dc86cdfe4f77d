import { buildWords } from './en/build.ts';
import { families } from './en/families.ts';
import { sky } from './en/sky.ts';
import { later } from './en-later.ts';

/** What Build says, in English, with the debrief's words: its time line tells what happens. */
export const ofBuild = { ...later, ...families, ...buildWords, ...sky };
