/**
 * A session as cmi5 tells it in statements of xAPI 1.0.3: initialized, what was answered, completed, passed or failed,
 * terminated. Whoever sends them gives the instants; their ids follow from registration, session and what is said, so that
 * one that is sent twice is one.
 */
import type { LocalText } from '../../service/message.ts';
import { isoDuration, utc } from '../instants.ts';
import { type Interaction, type Learnt, scaled } from '../learnt/learnt.ts';
import { NUMBER, number } from '../limits.ts';
import { patternsOf, responseOf } from '../scorm/responses.ts';
import { uuid5 } from '../uuid.ts';
import { type Launch, type LaunchData, SESSION } from './launch.ts';

export const VERB = {
  initialized: 'http://adlnet.gov/expapi/verbs/initialized',
  answered: 'http://adlnet.gov/expapi/verbs/answered',
  completed: 'http://adlnet.gov/expapi/verbs/completed',
  passed: 'http://adlnet.gov/expapi/verbs/passed',
  failed: 'http://adlnet.gov/expapi/verbs/failed',
  terminated: 'http://adlnet.gov/expapi/verbs/terminated',
} as const;
export type Verb = keyof typeof VERB;

const CMI5 = 'https://w3id.org/xapi/cmi5/context/categories/cmi5';
const MOVE_ON = 'https://w3id.org/xapi/cmi5/context/categories/moveon';
const MASTERY = 'https://w3id.org/xapi/cmi5/context/extensions/masteryscore';
const INTERACTION = 'http://adlnet.gov/expapi/activities/cmi.interaction';

/** Plain JSON, as it is sent. */
export interface Statement {
  readonly id: string;
  readonly actor: Launch['actor'];
  readonly verb: { readonly id: string; readonly display: Readonly<Record<string, string>> };
  readonly object: Readonly<Record<string, unknown>>;
  readonly result?: Readonly<Record<string, unknown>>;
  readonly context: Readonly<Record<string, unknown>>;
  readonly timestamp: string;
}

/** One session of one launch. */
export interface Cmi5Session {
  readonly launch: Launch;
  readonly data: LaunchData;
  /** The publisher's UUID of what was launched, which its interactions are named within. */
  readonly activity: string;
}

/** What the platform has of this registration from earlier sessions. */
export interface Before {
  readonly completed: boolean;
  readonly passed: boolean;
}

export function initialized(session: Cmi5Session, at_ms: number): Statement {
  return defined(session, 'initialized', at_ms);
}

/** The last of a session; `duration_s` is all of it. */
export function terminated(session: Cmi5Session, at_ms: number, duration_s: number): Statement {
  return defined(session, 'terminated', at_ms, { duration: isoDuration(duration_s) });
}

export interface Ended {
  /** What was answered on the way. */
  readonly answers: readonly Statement[];
  /** What the standard defines, in its order. */
  readonly defined: readonly Statement[];
}

/**
 * The end of a call. Nothing where the platform only lets it be looked at (10.2.2); completed once in a registration, nothing
 * more once it was passed (9.3).
 */
export function ended(session: Cmi5Session, learnt: Learnt, before: Before): Ended {
  if (session.data.launchMode !== 'Normal' || before.passed) return { answers: [], defined: [] };
  const { ended_ms, duration_s } = learnt;
  const duration = isoDuration(duration_s);
  const completed = before.completed ? [] : [defined(session, 'completed', ended_ms, { completion: true, duration })];
  return {
    answers: learnt.interactions.map((one) => answered(session, learnt, one)),
    defined: [...completed, ...judged(session, learnt)],
  };
}

/** Passed takes the mastery score as well as our own verdict; a score that speaks against the verdict is not given (9.3.4, 9.3.5). */
function judged(session: Cmi5Session, learnt: Learnt): readonly Statement[] {
  if (learnt.passed === undefined) return [];
  const { masteryScore } = session.data;
  const share = number(NUMBER.scaledXapi, scaled(learnt));
  const mastered = masteryScore === undefined || share >= masteryScore;
  const passed = learnt.passed && mastered;
  const speaksAgainst = !passed && masteryScore !== undefined && mastered;
  const score = { score: { scaled: share, raw: learnt.score, min: 0, max: 100 } };
  const result = { success: passed, duration: isoDuration(learnt.duration_s), ...(speaksAgainst ? {} : score) };
  return [defined(session, passed ? 'passed' : 'failed', learnt.ended_ms, result)];
}

/** "cmi5 allowed": of the session, but no part of what the standard defines (7.1.3). */
function answered(session: Cmi5Session, learnt: Learnt, one: Interaction): Statement {
  const response = responseOf(one);
  const patterns = patternsOf(one);
  const name = (of: LocalText) => ({ en: `${of.en}: ${one.id}`, es: `${of.es}: ${one.id}` });
  return {
    ...framed(session, 'answered', learnt.ended_ms, one.id),
    object: {
      objectType: 'Activity',
      id: `urn:uuid:${uuid5(session.activity, one.id)}`,
      definition: {
        type: INTERACTION,
        name: name(learnt.title),
        interactionType: one.kind,
        ...(patterns.length === 0 ? {} : { correctResponsesPattern: patterns }),
      },
    },
    result: {
      response,
      ...(one.result === undefined ? {} : { success: one.result === 'correct' }),
      ...(one.latency_s === undefined ? {} : { duration: isoDuration(one.latency_s) }),
    },
    context: contextOf(session, []),
  };
}

/** A statement that the standard defines: of the launched activity, under its category, and `moveon` where it counts (9.6.2). */
function defined(session: Cmi5Session, verb: Verb, at_ms: number, result?: Statement['result']): Statement {
  const counts = result !== undefined && ('success' in result || 'completion' in result);
  const { masteryScore } = session.data;
  const byMastery = (verb === 'passed' || verb === 'failed') && masteryScore !== undefined;
  return {
    ...framed(session, verb, at_ms),
    object: { objectType: 'Activity', id: session.launch.activityId },
    ...(result === undefined ? {} : { result }),
    context: contextOf(session, counts ? [CMI5, MOVE_ON] : [CMI5], byMastery ? { [MASTERY]: masteryScore } : {}),
  };
}

function framed({ launch, data }: Cmi5Session, verb: Verb, at_ms: number, about = '') {
  const said = `${String(data.contextTemplate.extensions[SESSION])} ${verb} ${about} ${at_ms}`;
  return {
    id: uuid5(launch.registration, said),
    actor: launch.actor,
    verb: { id: VERB[verb], display: { en: verb } },
    timestamp: utc(at_ms),
  };
}

/** The platform's template with what is ours added to it; nothing of it is taken away or written over (10.2.1). */
function contextOf(
  { launch, data: { contextTemplate } }: Cmi5Session,
  categories: readonly string[],
  extensions: Readonly<Record<string, unknown>> = {},
): Statement['context'] {
  const { contextActivities = {} } = contextTemplate;
  const there = contextActivities.category ?? [];
  const added = categories.filter((id) => there.every((one) => one.id !== id)).map((id) => ({ id }));
  const category = [...there, ...added];
  return {
    ...contextTemplate,
    registration: launch.registration,
    contextActivities: { ...contextActivities, ...(category.length === 0 ? {} : { category }) },
    extensions: { ...extensions, ...contextTemplate.extensions },
  };
}
