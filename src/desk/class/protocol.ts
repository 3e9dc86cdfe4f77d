/** What the page and the workers that replay a class's records say to each other: one record at a time, one answer each. */
import type { Handed, Marked } from '../../records/marked.ts';

export type MarkRequest =
  /** Files of calls that did not ship, by their ids. Has no answer. */
  | { readonly kind: 'brought'; readonly texts: ReadonlyMap<string, string> }
  | { readonly kind: 'mark'; readonly handed: Handed };

export type MarkReply = Marked;
