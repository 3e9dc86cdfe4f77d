/**
 * What cmi5 (Quartz, 1st edition) asks of the statements of one assignable unit, written out rule by rule beside the numbers of
 * its requirements in `@cmi5/requirements`. A record store of a test refuses whatever breaks one.
 */
import factory from '@learninglocker/xapi-validation/dist/factory.js';

type Json = Readonly<Record<string, unknown>>;

export interface Told extends Json {
  readonly id: string;
  readonly actor: unknown;
  readonly verb: { readonly id: string };
  readonly object: { readonly id: string };
  readonly result?: Json;
  readonly context: Json;
  readonly timestamp: string;
}

/** What the platform handed over at the launch, and what it has of this registration from before. */
export interface Session {
  readonly actor: unknown;
  readonly registration: string;
  readonly activityId: string;
  readonly launchMode: 'Normal' | 'Browse' | 'Review';
  readonly masteryScore?: number;
  readonly contextTemplate: Json;
  readonly earlier: readonly Told[];
}

const VERBS = 'http://adlnet.gov/expapi/verbs/';
const CATEGORY = 'https://w3id.org/xapi/cmi5/context/categories/';
const EXTENSION = 'https://w3id.org/xapi/cmi5/context/extensions/';
const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
const ABSOLUTE = /^[a-z][a-z0-9+.-]*:\S+$/i;
const UTC = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?Z$/;

const verbOf = ({ verb: { id } }: Told) => id.replace(VERBS, '');
const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);
const at = (value: unknown, ...path: readonly string[]): unknown =>
  path.reduce<unknown>((inner, key) => (inner as Json | undefined)?.[key], value);
const idsOf = (value: unknown): readonly string[] => ((value ?? []) as readonly { id: string }[]).map(({ id }) => id);
const categories = ({ context }: Told) => idsOf(at(context, 'contextActivities', 'category'));
/** "cmi5 defined": under the standard's own category. */
const isDefined = (one: Told) => categories(one).includes(`${CATEGORY}cmi5`);
const judged = (one: Told) => ['passed', 'failed'].includes(verbOf(one));
const has = (one: Told, ...path: readonly string[]) => at(one, ...path) !== undefined;
const implies = (condition: boolean, holds: boolean) => !condition || holds;

interface Rule {
  readonly ids: readonly string[];
  readonly rule: string;
  /** `before`: all that was told in this session until then. */
  readonly holds: (one: Told, session: Session, before: readonly Told[]) => boolean;
}

export const RULES: readonly Rule[] = [
  {
    ids: ['4.1.0.0-1', '7.0.0.0-2'],
    rule: 'it is a statement of xAPI 1.0.3',
    holds: (one) => factory.statement(one, ['statement']).length === 0,
  },
  {
    ids: ['3.0.0.0-1'],
    rule: 'its identifiers are absolute',
    holds: (one) => [one.verb.id, one.object.id, ...categories(one)].every((id) => ABSOLUTE.test(id)),
  },
  { ids: ['9.1.0.0-1'], rule: 'it has an id of its own', holds: ({ id }) => UUID.test(id) },
  {
    ids: ['8.1.3.0-3', '9.2.0.0-2', '9.2.0.0-3'],
    rule: 'it is of the agent that the platform named',
    holds: ({ actor }, session) => same(actor, session.actor),
  },
  {
    ids: ['7.1.1.0-1', '9.3.0.0-4', '9.3.2.0-2'],
    rule: 'initialized comes first',
    holds: (one, _, before) => (verbOf(one) === 'initialized') === (before.length === 0),
  },
  {
    ids: ['7.1.2.0-1', '7.1.3.0-1', '9.3.0.0-5', '9.3.8.0-2'],
    rule: 'nothing comes after terminated',
    holds: (_, __, before) => before.every((other) => verbOf(other) !== 'terminated'),
  },
  {
    ids: ['9.3.0.0-2', '9.3.2.0-3'],
    rule: 'no defined verb comes twice in a session',
    holds: (one, _, before) =>
      implies(
        isDefined(one),
        before.every((other) => !isDefined(other) || verbOf(other) !== verbOf(one)),
      ),
  },
  {
    ids: ['9.3.0.0-3'],
    rule: 'passed or failed, once in a session',
    holds: (one, _, before) => implies(judged(one), !before.some(judged)),
  },
  {
    ids: ['9.3.0.0-6', '9.3.3.0-2', '9.3.0.0-7', '9.3.4.0-3'],
    rule: 'completed and passed come once in a registration',
    holds: (one, { earlier }) =>
      implies(
        ['completed', 'passed'].includes(verbOf(one)),
        earlier.every((other) => verbOf(other) !== verbOf(one)),
      ),
  },
  {
    ids: ['9.3.0.0-8'],
    rule: 'failed never comes after passed',
    holds: (one, { earlier }) =>
      implies(
        verbOf(one) === 'failed',
        earlier.every((other) => verbOf(other) !== 'passed'),
      ),
  },
  {
    ids: ['8.1.5.0-6', '9.4.0.0-1', '9.4.0.0-2'],
    rule: 'a defined statement is of the launched activity',
    holds: (one, { activityId }) => implies(isDefined(one), one.object.id === activityId),
  },
  {
    ids: ['9.3.0.0-1', '7.0.0.0-5', '9.6.2.1-1'],
    rule: 'the verbs of the standard stand under its category',
    holds: (one) =>
      isDefined(one) === ['initialized', 'completed', 'passed', 'failed', 'terminated'].includes(verbOf(one)),
  },
  {
    ids: ['9.6.2.2-1', '9.6.2.2-2'],
    rule: 'under the moveOn category stands what has success or completion, and nothing else',
    holds: (one) =>
      categories(one).includes(`${CATEGORY}moveon`) ===
      (isDefined(one) && (has(one, 'result', 'success') || has(one, 'result', 'completion'))),
  },
  {
    ids: ['9.5.1.0-2'],
    rule: 'a score stands in passed and failed only',
    holds: (one) => implies(isDefined(one) && has(one, 'result', 'score'), judged(one)),
  },
  {
    ids: ['9.5.1.0-3'],
    rule: 'a raw score comes with its least and most',
    holds: (one) =>
      implies(
        has(one, 'result', 'score', 'raw'),
        has(one, 'result', 'score', 'min') && has(one, 'result', 'score', 'max'),
      ),
  },
  {
    ids: ['9.3.4.0-2', '9.3.5.0-2', '9.5.1.0-1', '10.2.4.0-2'],
    rule: 'a score speaks for the verdict, by the mastery score',
    holds: (one, { masteryScore }) => {
      const scaled = at(one, 'result', 'score', 'scaled');
      if (!judged(one) || masteryScore === undefined || typeof scaled !== 'number') return true;
      return (verbOf(one) === 'passed') === scaled >= masteryScore;
    },
  },
  {
    ids: ['9.6.3.2-2'],
    rule: 'what is judged by a mastery score names it',
    holds: (one, { masteryScore }) =>
      implies(
        judged(one) && masteryScore !== undefined,
        at(one, 'context', 'extensions', `${EXTENSION}masteryscore`) === masteryScore,
      ),
  },
  {
    ids: ['9.5.2.0-1', '9.5.2.0-2', '9.5.2.0-3'],
    rule: 'success stands in passed and failed, as they say',
    holds: (one) =>
      implies(isDefined(one), at(one, 'result', 'success') === (judged(one) ? verbOf(one) === 'passed' : undefined)),
  },
  {
    ids: ['9.5.3.0-1', '9.5.3.0-2'],
    rule: 'completion stands in completed only',
    holds: (one) =>
      implies(isDefined(one), at(one, 'result', 'completion') === (verbOf(one) === 'completed' ? true : undefined)),
  },
  {
    ids: ['9.5.4.1-1', '9.5.4.1-2', '9.5.4.1-3', '9.5.4.1-4'],
    rule: 'terminated, completed, passed and failed have a duration',
    holds: (one) => implies(isDefined(one) && verbOf(one) !== 'initialized', has(one, 'result', 'duration')),
  },
  {
    ids: ['8.1.4.0-3', '9.6.0.0-1', '9.6.1.0-1'],
    rule: 'the registration is that of the launch',
    holds: ({ context }, { registration }) => context.registration === registration,
  },
  {
    ids: ['9.6.2.0-1', '10.2.1.0-6', '10.2.1.0-7', '9.6.3.1-4', '10.2.1.0-4'],
    rule: 'the context has all of the platform’s template, as it was, the session’s id among it',
    holds: ({ context }, { contextTemplate }) => holdsAll(context, contextTemplate),
  },
  {
    ids: ['9.7.0.0-1', '9.7.0.0-2'],
    rule: 'its time is given, in UTC',
    holds: ({ timestamp }) => UTC.test(timestamp),
  },
  {
    ids: ['10.2.2.0-2', '10.2.2.0-3', '10.2.2.0-5', '10.2.2.0-9', '10.2.2.0-11'],
    rule: 'where it is only looked at, nothing but initialized and terminated is told',
    holds: (one, { launchMode }) =>
      implies(launchMode !== 'Normal', ['initialized', 'terminated'].includes(verbOf(one))),
  },
];

/** Whether all of a template stands in a value, lists as a part of theirs. */
function holdsAll(value: unknown, template: unknown): boolean {
  if (Array.isArray(template)) {
    return template.every((one) => ((value ?? []) as readonly unknown[]).some((other) => same(other, one)));
  }
  if (typeof template !== 'object' || template === null) return value === template;
  return Object.entries(template).every(([key, inner]) => holdsAll((value as Json | undefined)?.[key], inner));
}

/** The rules that a statement breaks, given what was told before it. */
export function broken(one: Told, session: Session, before: readonly Told[]): readonly string[] {
  return RULES.filter(({ holds }) => !holds(one, session, before)).map(({ ids, rule }) => `${ids.join(', ')}: ${rule}`);
}
