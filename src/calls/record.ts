/**
 * A record is what was done and when, with claims about how it ended. Replaying it recomputes everything; one that
 * does not come out at its claims is refused with the first difference named.
 */
import { type Message, say } from '../service/index.ts';
import { type Spent, spent } from './cost.ts';
import { type Judgement, judge } from './judge.ts';
import { actionsOf, callHash, ENGINE_VERSION, replayActions } from './progress.ts';
import { playReference } from './reference.ts';
import type { CallRecord } from './schema.ts';
import { CallSession } from './session.ts';
import type { Prepared } from './setup.ts';
import { solutionSpends } from './solution.ts';
import type { Assistance } from './view.ts';

const references = new Map<string, Spent>();

/**
 * What the reference spends, played once per call. With another seed a solution can meet a dose where it did not expect one and
 * end short: then the times of its own steps count, for a part of the work is no measure of the whole.
 */
export function referenceSpent(prepared: Prepared): Spent {
  const key = callHash(prepared);
  const known = references.get(key);
  if (known) return known;
  const reference = playReference(prepared);
  const made = reference.ended ? spent(reference) : solutionSpends(prepared);
  references.set(key, made);
  return made;
}

export function judged(session: CallSession): Judgement {
  return judge(session, referenceSpent(session.prepared));
}

export function makeRecord(session: CallSession, assistance?: Assistance): CallRecord {
  const { call } = session.prepared;
  return {
    kind: 'underlawn-record',
    version: 1,
    engine: ENGINE_VERSION,
    call: call.id,
    callHash: callHash(session.prepared),
    mode: session.mode,
    seed: call.seed,
    actions: actionsOf(session),
    end_ms: session.now_ms,
    ...(assistance ? { assistance } : {}),
    claims: claimsOf(session),
  };
}

function claimsOf(session: CallSession): CallRecord['claims'] {
  const verdict = judged(session);
  return {
    passed: verdict.passed,
    score: verdict.score,
    cause: [...(session.cause?.keys ?? [])],
    minutes: verdict.spent.minutes,
    money_usd: verdict.spent.money_usd,
    flags: verdict.flags.map((f) => f.id),
    state: session.stateDigest(),
  };
}

export interface Replay {
  readonly session: CallSession;
  readonly ok: boolean;
  readonly score: number;
  readonly claimed: number;
  readonly firstDifference?: Message;
}

/** Plays a record's actions on the call again, each at its instant, and holds the claims against what comes out. */
export function replay(prepared: Prepared, record: CallRecord): Replay {
  const session = new CallSession(prepared, record.mode);
  const difference =
    foreign(prepared, record) ?? replayActions(session, record.actions) ?? differentClaim(session, record);
  const score = judged(session).score;
  return {
    session,
    ok: difference === undefined,
    score,
    claimed: record.claims.score,
    ...(difference ? { firstDifference: difference } : {}),
  };
}

function foreign(prepared: Prepared, record: CallRecord): Message | undefined {
  if (record.engine !== ENGINE_VERSION) return say('replay.engine', { made: record.engine, here: ENGINE_VERSION });
  if (record.callHash !== callHash(prepared)) return say('replay.call-changed', { call: record.call });
  const { seed } = prepared.call;
  return record.seed === seed ? undefined : say('replay.seed', { claimed: String(record.seed), came: String(seed) });
}

function differentClaim(session: CallSession, record: CallRecord): Message | undefined {
  session.advance(record.end_ms);
  const computed = claimsOf(session);
  for (const key of Object.keys(computed) as (keyof CallRecord['claims'])[]) {
    const claimed = JSON.stringify(record.claims[key]);
    const came = JSON.stringify(computed[key]);
    if (claimed !== came) return say('replay.claim', { claim: key, claimed, came });
  }
  return session.now_ms === record.end_ms ? undefined : say('replay.end');
}
