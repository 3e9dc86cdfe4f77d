import { homeWords } from './en/home.ts';

/** What the household's part says, in English. */
export const ofHome = { ...homeWords };
