import type { ofFind as en } from './en-find.ts';
import { families } from './es/families.ts';
import { find } from './es/find.ts';
import { proofs } from './es/proofs.ts';
import { shows } from './es/shows.ts';

/** What the search and the page of faults say, in Spanish, with what each fault shows. */
export const ofFind: Record<keyof typeof en, string> = { ...find, ...families, ...proofs, ...shows };
