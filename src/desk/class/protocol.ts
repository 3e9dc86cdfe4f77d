/** What the page and the workers that replay a class's records say to each other: one record at a time, one answer each. */
import type { AnswersFile } from '../../quiz/answers.ts';
import type { Handed, Marked } from '../../records/marked.ts';

export type MarkRequest =
  /** Files of calls that did not ship, by their ids. Has no answer. */
  | { readonly kind: 'brought'; readonly texts: ReadonlyMap<string, string> }
  | { readonly kind: 'mark'; readonly handed: Handed };

/** What somebody answered in a mock exam: no record of a call, and counted by itself. */
export interface Sat {
  readonly state: 'answers';
  readonly who: string;
  readonly answers: AnswersFile;
}

export type MarkReply = Marked | Sat;
