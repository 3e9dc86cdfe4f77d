/** The records on the sheet. They live in the page alone: nothing of them is kept, and a reload drops them. */
import { signal } from '@preact/signals';
import type { AnswersFile } from '../../quiz/answers.ts';
import { type ClassSheet, classSheet } from '../../records/class-sheet.ts';
import type { Marked } from '../../records/marked.ts';
import type { MarkReply } from './protocol.ts';

export interface Held {
  /** Its file as it was chosen, with the folders it was found in. */
  readonly file: string;
  readonly who: string;
  readonly text: string;
  readonly marked: MarkReply;
}

/** A record's place among them is its address while they are here. */
export const held = signal<readonly Held[]>([]);

export interface HeldSheet extends ClassSheet {
  /** Each record of a call as it stands on the sheet, in the order in which they are held. */
  readonly all: readonly Marked[];
}

export function sheetOf(records: readonly Held[], course: readonly string[]): HeldSheet {
  const all = records.flatMap(({ who, marked }): Marked[] => (marked.state === 'answers' ? [] : [{ ...marked, who }]));
  return { ...classSheet(all, course), all };
}

/** Names anew, those of whom `of` says so. A blank name changes nothing. */
export function renamed(records: readonly Held[], of: (one: Held, at: number) => boolean, name: string) {
  const who = name.trim();
  return who === '' ? records : records.map((one, at) => (of(one, at) ? { ...one, who } : one));
}

/** The answers of mock exams among them. */
export function answersIn(records: readonly Held[]): readonly AnswersFile[] {
  return records.flatMap(({ marked }) => (marked.state === 'answers' ? marked.answers : []));
}
