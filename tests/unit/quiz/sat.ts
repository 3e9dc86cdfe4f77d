/** Exams that were sat, for tests: each question answered right or wrong as somebody wants it. */
import mock from '../../../scenarios/exams/mock.json';
import { type AnswersFile, answersSchema } from '../../../src/quiz/answers.ts';
import { type Answer, checked, type Drill } from '../../../src/quiz/drill.ts';
import { formOf } from '../../../src/quiz/exam.ts';
import type { ExamFile } from '../../../src/quiz/exam-schema.ts';
import { drill } from '../../../src/quiz/index.ts';
import { checkExam } from '../../../src/quiz/load-exam.ts';
import { SPECS } from '../../control/panels.ts';

function mockExam(): ExamFile {
  const exam = checkExam(mock);
  if (!exam.ok) throw new Error(JSON.stringify(exam.problems));
  return exam.value;
}
export const MOCK = mockExam();

/** An answer to a question that is right, or one that is not. */
export function answerTo(one: Drill, right: boolean): Answer {
  const all = answersTo(one);
  const found = all.find((given) => checked(one, given).right === right);
  if (found === undefined) throw new Error(`no such answer to ${one.skill} ${one.seed}`);
  return found;
}

/** A right answer and others. */
function answersTo({ ask }: Drill): readonly Answer[] {
  switch (ask.kind) {
    case 'choice':
    case 'point':
      return ask.options.map(({ id }) => id);
    case 'order':
      return [ask.right, ...swapped(ask.right).filter((ids) => ids.join() !== ask.items.map(({ id }) => id).join())];
    case 'number':
      return [ask.value, ask.value + 2 * ask.tolerance + 1];
  }
}

/** Each pair of neighbours swapped: sequences that are wrong. As a question first shows them, nobody would have answered. */
function swapped(ids: readonly string[]): readonly (readonly string[])[] {
  return ids.slice(1).map((id, i) => [...ids.slice(0, i), id, ids[i] ?? '', ...ids.slice(i + 2)]);
}

/** What somebody hands in who gets right what `right` says of each place. */
export function sat(form: number, right: (place: number) => boolean | null): AnswersFile {
  return answersSchema.parse({
    kind: 'underlawn-answers',
    version: 1,
    exam: MOCK.id,
    form,
    unit: 'u1',
    language: 'en',
    units: 'us',
    minutes: 60,
    used_s: 1200,
    items: formOf(MOCK, form).map(({ skill, seed }, place) => {
      const is = right(place);
      const given = is === null ? null : answerTo(drill(skill, seed, SPECS.u1), is);
      return { skill, seed, given, right: is === true, seconds: 40 };
    }),
  });
}
