import { kept } from './en/kept.ts';

/** What is hardly ever said of what the browser keeps, in English. */
export const ofKept = kept;
