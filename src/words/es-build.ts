import type { ofBuild as en } from './en-build.ts';
import { buildWords } from './es/build.ts';
import { families } from './es/families.ts';
import { sky } from './es/sky.ts';
import { later } from './es-later.ts';

/** What Build says, in Spanish. */
export const ofBuild: Record<keyof typeof en, string> = { ...later, ...families, ...buildWords, ...sky };
