import { families } from './en/families.ts';
import { find } from './en/find.ts';
import { proofs } from './en/proofs.ts';
import { shows } from './en/shows.ts';

/** What the search and the page of faults say, in English, with what each fault shows. */
export const ofFind = { ...find, ...families, ...proofs, ...shows };
