/**
 * A call that has ended as a record of learning: the verdict, and the decision, the cause, the way and each line of the
 * score as interactions. It names the files it needs of `calls`: their `index.ts` would bring along all that ships.
 */
import { trueFaults } from '../../calls/flags.ts';
import type { Judgement } from '../../calls/judge.ts';
import { judged } from '../../calls/record.ts';
import type { CallSession } from '../../calls/session.ts';
import { listOf } from '../../calls/session-actions.ts';
import { decisionsOf, writtenRecord } from '../../calls/visit/decisions.ts';
import type { Interaction, Learnt, Performed } from './learnt.ts';

/** What the clock on the wall tells, which no replay could. */
export interface Wall {
  readonly started_ms: number;
  readonly ended_ms: number;
  /** Seconds of this session before an action was done, by its id. */
  readonly after_s?: Readonly<Record<string, number>>;
}

const DECISIONS = ['decide-close', 'decide-visit'] as const;
const CAUSE = 'state-cause';

export function learntOfCall(session: CallSession, { started_ms, ended_ms, after_s = {} }: Wall): Learnt {
  const { call } = session.prepared;
  const verdict = judged(session);
  return {
    activity: call.id,
    title: call.title,
    mode: session.mode,
    started_ms,
    ended_ms,
    duration_s: Math.max(0, Math.round((ended_ms - started_ms) / 10) / 100),
    completed: true,
    // Practice is for trying: it is finished, and judged by whoever takes it.
    ...(session.mode === 'graded' ? { passed: verdict.passed } : {}),
    score: verdict.score,
    pass: call.pass,
    interactions: interactionsOf(session, verdict, after_s),
  };
}

function interactionsOf(
  session: CallSession,
  { lines, flags }: Judgement,
  after_s: Readonly<Record<string, number>>,
): readonly Interaction[] {
  const numbers = lines.flatMap(({ id, points, of }): Interaction[] =>
    of === 0
      ? []
      : [
          {
            id: `score.${id}`,
            kind: 'numeric',
            response: points,
            correct: { low: of, high: of },
            result: points < of ? 'incorrect' : 'correct',
            weighting: of,
          },
        ],
  );
  const decided =
    session.prepared.call.kind === 'visit'
      ? visited(session)
      : [...decision(session, after_s), ...cause(session, after_s)];
  return [...decided, way(session), seen(flags), ...numbers];
}

/** Closed by phone, or how soon somebody drives out. Nothing where it did not come so far. */
function decision(session: CallSession, after_s: Readonly<Record<string, number>>): readonly Interaction[] {
  const { expected } = session.prepared.call;
  const done = session.done.find(({ def }) => DECISIONS.some((id) => id === def.id));
  if (!done) return [];
  const response = done.def.id === 'decide-close' ? 'close' : (session.urgency ?? 'visit');
  const correct = expected.decision === 'close' ? ['close'] : expected.urgency;
  return [
    {
      id: 'decision',
      kind: 'choice',
      response: [response],
      correct: correct.map((one) => [one]),
      result: correct.some((one) => one === response) ? 'correct' : 'incorrect',
      weighting: 0,
      ...latency(after_s[done.def.id]),
    },
  ];
}

/** What a routine visit's record decided. */
function visited(session: CallSession): readonly Interaction[] {
  return decisionsOf(session).map(
    ({ id, right }): Interaction => ({
      id: `decision.${id}`,
      kind: 'performance',
      response: [...listOf(writtenRecord(session)?.action.fill?.[id])],
      result: right ? 'correct' : 'incorrect',
      weighting: 0,
    }),
  );
}

/** What was named as the cause; asked for where a visit is due. */
function cause(session: CallSession, after_s: Readonly<Record<string, number>>): readonly Interaction[] {
  const named = session.cause?.keys ?? [];
  if (named.length === 0 && session.prepared.call.expected.decision === 'close') return [];
  const truth = trueFaults(session);
  const right = named.length === truth.length && truth.every((key) => named.includes(key));
  return [
    {
      id: 'cause',
      kind: 'choice',
      response: [...named],
      correct: [[...truth]],
      result: right ? 'correct' : 'incorrect',
      weighting: 0,
      ...latency(after_s[CAUSE]),
    },
  ];
}

/** All that was done, in its order, beside the call's own solution: one right way, not the only one. */
function way(session: CallSession): Performed {
  const { solution } = session.prepared.call;
  return {
    id: 'steps',
    kind: 'performance',
    response: session.done.map(({ def }) => def.id),
    correct: solution.map((step) => step.do),
    weighting: 0,
  };
}

/** What there was to look at again, in the order in which it came. */
function seen(flags: Judgement['flags']): Performed {
  return {
    id: 'flags',
    kind: 'performance',
    response: flags.map(({ id }) => id),
    result: flags.length === 0 ? 'correct' : 'incorrect',
    weighting: 0,
  };
}

function latency(seconds: number | undefined): { readonly latency_s?: number } {
  return seconds === undefined ? {} : { latency_s: seconds };
}
