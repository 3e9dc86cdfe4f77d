/** A mock exam as it is being sat: the questions of its form, what was answered so far, the time. Plain, to be kept. */
import type { AnswersFile } from '../../quiz/answers.ts';
import { type Answer, checked, SKILLS } from '../../quiz/drill.ts';
import { formOf } from '../../quiz/exam.ts';
import type { ExamFile } from '../../quiz/exam-schema.ts';
import { drill } from '../../quiz/index.ts';
import { listOf, orNull } from '../instructor/shaped.ts';
import { fields, finite, flag, oneOf, type Shape, type ShapeOf, text } from '../shape.ts';
import { unitBy } from './units.ts';

const ids = listOf(text);
const given: Shape<Answer | null> = (value): value is Answer | null =>
  value === null || text(value) || finite(value) || ids(value);

const SittingShape = fields({
  exam: text,
  form: finite,
  unit: text,
  /** Units that the page spoke when it began. */
  units: oneOf('us', 'si'),
  /** Share of right answers to pass with. */
  pass: finite,
  /** Minutes given, with those that were added; null without a clock. */
  minutes: orNull(finite),
  /** Time that it was open. */
  used_s: finite,
  /** Place of the question that is looked at. */
  at: finite,
  items: listOf(fields({ skill: oneOf(...SKILLS), seed: finite, given, marked: flag, seconds: finite })),
  handedIn: flag,
});
/** Of one that was kept and may be of another page. */
export type Sitting = ShapeOf<typeof SittingShape>;
export type SatItem = Sitting['items'][number];

export interface Chosen {
  readonly form: number;
  readonly unit: string;
  readonly units: AnswersFile['units'];
  readonly minutes: number | null;
}

export function begun(exam: ExamFile, { form, unit, units, minutes }: Chosen): Sitting {
  const items = formOf(exam, form).map((item) => ({ ...item, given: null, marked: false, seconds: 0 }));
  return { exam: exam.id, form, unit, units, pass: exam.pass, minutes, used_s: 0, at: 0, items, handedIn: false };
}

/** What was kept, where this page can go on with it. */
export function readSitting(kept: unknown): Sitting | undefined {
  if (!SittingShape(kept) || kept.items.length === 0 || unitBy(kept.unit) === undefined) return undefined;
  return kept.items[kept.at] === undefined ? { ...kept, at: 0 } : kept;
}

/** After so many seconds on the question that is looked at. */
export function later(sitting: Sitting, seconds: number): Sitting {
  return {
    ...sitting,
    used_s: sitting.used_s + seconds,
    items: sitting.items.map((item, i) => (i === sitting.at ? { ...item, seconds: item.seconds + seconds } : item)),
  };
}

export function withItem(sitting: Sitting, change: Partial<Pick<SatItem, 'given' | 'marked'>>): Sitting {
  return { ...sitting, items: sitting.items.map((item, i) => (i === sitting.at ? { ...item, ...change } : item)) };
}

/** Whole seconds left; null without a clock. */
export function left_s({ minutes, used_s }: Sitting, since_s: number): number | null {
  return minutes === null ? null : Math.max(0, Math.ceil(minutes * 60 - used_s - since_s));
}

export function drillOf(
  { unit, units }: Pick<Sitting, 'unit' | 'units'>,
  { skill, seed }: Pick<SatItem, 'skill' | 'seed'>,
) {
  const spec = unitBy(unit);
  if (spec === undefined) throw new Error(`no unit ${unit}`);
  return drill(skill, seed, spec, units);
}

/** Each item with what it came to: only once the exam is handed in. */
export function judged(sitting: Sitting) {
  return sitting.items.map((item) => {
    const one = drillOf(sitting, item);
    return { ...item, drill: one, right: item.given !== null && checked(one, item.given).right };
  });
}

/** The file that is handed to a trainer. Times to the second: no more is known of them. */
export function answersOf(sitting: Sitting, language: AnswersFile['language']): AnswersFile {
  const { exam, form, unit, units, minutes, used_s } = sitting;
  return {
    kind: 'underlawn-answers',
    version: 1,
    ...{ exam, form, unit, units, language, minutes, used_s: Math.round(used_s) },
    items: judged(sitting).map((item) => ({
      ...{ skill: item.skill, seed: item.seed, given: item.given, right: item.right },
      seconds: Math.round(item.seconds),
    })),
  };
}
