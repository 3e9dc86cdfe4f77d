/** The sheet on which a judge writes how likely somebody who is just good enough gets each question right, and its reading. */
import type { Checked } from '../calls/check.ts';
import type { Problem } from '../calls/problems.ts';
import type { Item } from '../quiz/exam.ts';
import { TOPIC_OF } from '../quiz/topics.ts';
import { csvOf } from './csv.ts';
import type { Question } from './qti/question.ts';
import { readCsv } from './read-csv.ts';

const COLUMNS = ['place', 'topic', 'item', 'question', 'shown', 'answers', 'right', 'chance'] as const;

/** One line for each question; the last column is the judge's. */
export function angoffSheet(items: readonly Item[], questions: readonly Question[]): string {
  const rows = items.flatMap(({ skill, seed }, i) => {
    const question = questions[i];
    if (question === undefined) return [];
    const { answers, right } = inWords(question);
    const { prompt, shown } = question;
    return [[i + 1, TOPIC_OF[skill], `${skill}-${seed}`, prompt, shown.join(' | '), answers, right, '']];
  });
  return csvOf([COLUMNS, ...rows]);
}

export function inWords({ ask }: Question): { readonly answers: string; readonly right: string } {
  if (ask.kind === 'number') return { answers: ask.label, right: ask.value };
  const offered = ask.kind === 'order' ? ask.items : ask.options;
  const right = ask.right.flatMap((id) => offered.filter((one) => one.id === id));
  return { answers: offered.map(({ text }) => text).join(' | '), right: right.map(({ text }) => text).join(' | ') };
}

/** What a judge wrote, by item, in the order of the sheet. */
export interface Rated {
  readonly items: readonly string[];
  readonly chances: readonly number[];
}

export function readSheet(text: string): Checked<Rated> {
  const [head = [], ...rows] = readCsv(text);
  const [item, chance] = [head.indexOf('item'), head.indexOf('chance')];
  if (item < 0 || chance < 0) {
    const mend = 'name a sheet that angoff has written, with its first line';
    return { ok: false, problems: [{ path: '', message: 'no columns "item" and "chance"', mend }] };
  }
  const problems: Problem[] = [];
  const chances = rows.map((row, i) => {
    const typed = (row[chance] ?? '').trim();
    const value = typed === '' ? Number.NaN : Number(typed.replace(',', '.'));
    if (!(value >= 0 && value <= 1)) {
      const message = typed === '' ? 'no chance is written' : `"${typed}" is no chance`;
      problems.push({ path: `line ${i + 2}, chance`, message, mend: 'write a number from 0 to 1, such as 0.65' });
    }
    return value;
  });
  if (rows.length === 0)
    problems.push({ path: '', message: 'a sheet without questions', mend: 'have it written anew' });
  return problems.length > 0
    ? { ok: false, problems }
    : { ok: true, value: { items: rows.map((row) => row[item] ?? ''), chances } };
}
