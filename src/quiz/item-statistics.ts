/** Statistics of collected answers, form by form, and what in them calls for a look. They judge questions, not people. */
import type { AnswersFile } from './answers.ts';
import { type Chosen, chosen } from './distractors.ts';
import type { Item } from './exam.ts';
import {
  correctedPointBiserial,
  difficulty,
  kr20,
  kr21,
  type Matrix,
  mean,
  sem,
  totals,
  variance,
} from './statistics.ts';

/** Fewer answers tell nothing of a question (common practice, no source). */
export const LEAST_ANSWERS = 30;

/** Beyond these a question is looked at again (common practice, no source). */
const EASY_p = 0.95;
const HARD_p = 0.2;
const WEAK_r = 0.1;

/** Too easy, too hard, hardly tells who knows more, a wrong answer that those who know more prefer. */
export type ItemFlag = 'easy' | 'hard' | 'weak' | 'distractor';

export interface ItemStatistics extends Item {
  /** Its place in the form, from 1. */
  readonly place: number;
  /** Persons who answered it, and who did not. */
  readonly answered: number;
  readonly omitted: number;
  readonly p: number;
  /** Corrected point-biserial; undefined where everybody or nobody got it right. */
  readonly r: number | undefined;
  readonly chosen: readonly Chosen[];
  readonly flags: readonly ItemFlag[];
}

export interface Whole {
  /** In right answers. */
  readonly mean: number;
  readonly sd: number;
  readonly sem: number | undefined;
  readonly kr20: number | undefined;
  readonly kr21: number | undefined;
}

export interface FormStatistics {
  readonly exam: string;
  readonly form: number;
  readonly unit: string;
  readonly units: AnswersFile['units'];
  /** Files; one is one sitting. */
  readonly n: number;
  readonly items: readonly Item[];
  /** Not there while there are too few answers. */
  readonly found: { readonly whole: Whole; readonly items: readonly ItemStatistics[] } | null;
}

/** The forms that were sat, those with most answers first. */
export function formStatistics(files: readonly AnswersFile[]): readonly FormStatistics[] {
  const forms = new Map<string, AnswersFile[]>();
  for (const file of files) {
    // An exam that was changed since, or has questions of another version, is another form.
    // One in other units has other numbers.
    const key = JSON.stringify([
      file.exam,
      file.form,
      file.unit,
      file.units,
      file.items.map(({ skill, seed }) => [skill, seed]),
    ]);
    forms.set(key, [...(forms.get(key) ?? []), file]);
  }
  return [...forms.values()].sort((a, b) => b.length - a.length).flatMap(statisticsOf);
}

function statisticsOf(files: readonly AnswersFile[]): FormStatistics[] {
  const [first] = files;
  if (first === undefined) return [];
  const { exam, form, unit, units, items } = first;
  const n = files.length;
  const about = { exam, form, unit, units, n, items: items.map(({ skill, seed }) => ({ skill, seed })) };
  if (n < LEAST_ANSWERS) return [{ ...about, found: null }];
  const matrix = files.map((file) => file.items.map(({ right }) => right));
  return [
    { ...about, found: { whole: wholeOf(matrix), items: items.map((item, at) => itemOf(item, at, files, matrix)) } },
  ];
}

function wholeOf(matrix: Matrix): Whole {
  const sums = totals(matrix);
  return {
    mean: mean(sums),
    sd: Math.sqrt(variance(sums)),
    sem: sem(matrix),
    kr20: kr20(matrix),
    kr21: kr21(matrix),
  };
}

function itemOf({ skill, seed }: Item, at: number, files: readonly AnswersFile[], matrix: Matrix): ItemStatistics {
  const all = files.flatMap((file) => file.items[at] ?? []);
  const given = all.map((one) => (one.given === null ? undefined : String(one.given)));
  const right = new Set(all.flatMap((one) => (one.right ? String(one.given) : [])));
  const answers = chosen(given, totals(matrix), right);
  const p = difficulty(matrix, at);
  const r = correctedPointBiserial(matrix, at);
  const flags: ItemFlag[] = [];
  if (p > EASY_p) flags.push('easy');
  if (p < HARD_p) flags.push('hard');
  if (r !== undefined && r < WEAK_r) flags.push('weak');
  // A number that somebody worked out, or a sequence that was made, is no answer that was offered.
  const offered = all.every(({ given: one }) => one === null || typeof one === 'string');
  if (offered && answers.some((one) => !one.right && one.high > one.low)) flags.push('distractor');
  const omitted = given.filter((one) => one === undefined).length;
  return { skill, seed, place: at + 1, answered: files.length - omitted, omitted, p, r, chosen: answers, flags };
}
