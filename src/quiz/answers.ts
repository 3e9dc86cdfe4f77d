/**
 * The answers file: what somebody answered in a mock exam. It names nobody: whose it is, is the name of the file. What it
 * claims of right and wrong is worked out again.
 */
import * as z from 'zod/mini';
import type { Checked } from '../calls/check.ts';
import { type Problem, parseJson, problemsOf } from '../calls/problems.ts';
import { identifier } from '../unit/schema.ts';
import type { UnitSpec } from '../unit/spec.ts';
import { checked, SKILLS, type System } from './drill.ts';
import { drill } from './index.ts';

const seed = z.int().check(z.gte(0), z.lte(4294967295));
const seconds = z.number().check(z.gte(0));
const id = z.string().check(z.maxLength(400));

export const answersSchema = z.strictObject({
  kind: z.literal('underlawn-answers'),
  version: z.literal(1),
  exam: identifier,
  /** Seed of the form: the same form has the same questions. */
  form: seed,
  unit: identifier,
  language: z.enum(['en', 'es']),
  /** Units that the page spoke when it began. */
  units: z.enum(['us', 'si']),
  /** Minutes that were given, with those that were added; null without a clock. */
  minutes: z.nullable(z.number().check(z.positive())),
  /** Time that the exam was open. */
  used_s: seconds,
  items: z
    .array(
      z.strictObject({
        skill: z.enum(SKILLS),
        seed,
        /** An option's id, ids in sequence, or a number in the unit asked for; null where nothing was answered. */
        given: z.nullable(z.union([id, z.readonly(z.array(id).check(z.maxLength(20))), z.number()])),
        right: z.boolean(),
        /** Time that the question was open. */
        seconds,
      }),
    )
    .check(z.minLength(1), z.maxLength(400)),
});

export type AnswersFile = z.infer<typeof answersSchema>;
export type AnsweredItem = AnswersFile['items'][number];

/** Whether a text is meant as an answers file, whatever else is wrong with it. */
export function isAnswers(text: string): boolean {
  const parsed = parseJson(text);
  return 'value' in parsed && kindOf(parsed.value) === 'underlawn-answers';
}

function kindOf(value: unknown): unknown {
  return typeof value === 'object' && value !== null && 'kind' in value ? value.kind : undefined;
}

/** Answers from the text of their file, each worked out again on the unit that they name. */
export function loadAnswers(text: string, unitOf: (id: string) => UnitSpec | undefined): Checked<AnswersFile> {
  const wrong = (...problems: Problem[]) => ({ ok: false, problems }) as const;
  const parsed = parseJson(text);
  if ('problem' in parsed) return wrong(parsed.problem);
  if (kindOf(parsed.value) !== 'underlawn-answers') {
    return wrong({ path: 'kind', message: 'no answers file', mend: 'name files that a mock exam has saved' });
  }
  const result = answersSchema.safeParse(parsed.value, { reportInput: true });
  if (!result.success) return wrong(...problemsOf(result.error));
  const answers = result.data;
  const spec = unitOf(answers.unit);
  if (!spec) return wrong({ path: 'unit', message: 'no such unit', mend: 'write the id of a unit that ships' });
  const problems = answers.items.flatMap((item, i) => problemWith(item, `items[${i}]`, spec, answers.units));
  return problems.length > 0 ? wrong(...problems) : { ok: true, value: answers };
}

function problemWith(
  { skill, seed, given, right }: AnsweredItem,
  path: string,
  spec: UnitSpec,
  system: System,
): Problem[] {
  let found: boolean;
  try {
    found = given !== null && checked(drill(skill, seed, spec, system), given).right;
  } catch {
    return [{ path: `${path}.given`, message: 'no answer to this question', mend: SAVE_ANEW }];
  }
  const is = found ? 'right' : 'wrong';
  return found === right ? [] : [{ path: `${path}.right`, message: `the answer is ${is} here`, mend: SAVE_ANEW }];
}

const SAVE_ANEW = 'nothing is to be changed by hand; another version of Underlawn asks other questions';
