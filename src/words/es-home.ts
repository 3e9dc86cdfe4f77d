import type { ofHome as en } from './en-home.ts';
import { homeWords } from './es/home.ts';

/** What the household's part says, in Spanish. */
export const ofHome: Record<keyof typeof en, string> = { ...homeWords };
