/**
 * A record is what was done and when, with claims about how it ended. Replaying it recomputes everything; one that
 * does not come out at its claims is refused with the first difference named.
 */
import { type Message, quantity, say } from '../service/index.ts';
import { digest, type Json } from '../unit/index.ts';
import type { Checked } from './check.ts';
import { type Spent, spent } from './cost.ts';
import { type Judgement, judge } from './judge.ts';
import { parseJson, problemsOf } from './problems.ts';
import { type CallFile, type CallRecord, type Progress, progressSchema, recordSchema } from './schema.ts';
import { CallSession } from './session.ts';
import type { Prepared } from './setup.ts';
import { playSolution } from './solution.ts';
import type { CallMode } from './view.ts';

/** Raised whenever a change of the engine or of the actions can change the bits of a replay. */
export const ENGINE_VERSION = '6';

export function callHash(call: CallFile): string {
  return digest(call as unknown as Json);
}

const references = new Map<string, Spent>();

/** What the call's own solution spends, played once per call. */
export function referenceSpent(prepared: Prepared): Spent {
  const key = callHash(prepared.call);
  const known = references.get(key);
  if (known) return known;
  const made = spent(playSolution(prepared));
  references.set(key, made);
  return made;
}

export function judged(session: CallSession): Judgement {
  return judge(session, referenceSpent(session.prepared));
}

export function makeRecord(session: CallSession): CallRecord {
  const { call } = session.prepared;
  return {
    kind: 'underlawn-record',
    version: 1,
    engine: ENGINE_VERSION,
    call: call.id,
    callHash: callHash(call),
    mode: session.mode,
    seed: call.seed,
    actions: actionsOf(session),
    end_ms: session.now_ms,
    claims: claimsOf(session),
  };
}

function actionsOf(session: CallSession): CallRecord['actions'] {
  return session.log.map(({ at_ms, do: id, fill, state }) => ({
    at_ms,
    do: id,
    ...(fill
      ? { fill: Object.fromEntries(Object.entries(fill).map(([k, v]) => [k, typeof v === 'string' ? v : [...v]])) }
      : {}),
    state,
  }));
}

/** A call in progress, to be kept and taken up again. */
export function makeProgress(session: CallSession): Progress {
  return {
    engine: ENGINE_VERSION,
    callHash: callHash(session.prepared.call),
    actions: actionsOf(session),
    now_ms: session.now_ms,
  };
}

/** Takes up a call in progress from what was kept of it, checked and replayed. Says why where it cannot. */
export function resumeCall(
  prepared: Prepared,
  mode: CallMode,
  kept: unknown,
): { session: CallSession } | { why: Message } {
  const checked = progressSchema.safeParse(kept);
  if (!checked.success) return { why: say('trouble.progress-broken') };
  const progress = checked.data;
  if (progress.engine !== ENGINE_VERSION || progress.callHash !== callHash(prepared.call)) {
    return { why: say('trouble.progress-other-version') };
  }
  const session = new CallSession(prepared, mode);
  const difference = replayActions(session, progress.actions);
  if (difference) return { why: say('trouble.progress-differs', { what: difference }) };
  session.advance(progress.now_ms);
  return { session };
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

export function loadRecord(text: string): Checked<CallRecord> {
  const parsed = parseJson(text);
  if ('problem' in parsed) return { ok: false, problems: [parsed.problem] };
  const result = recordSchema.safeParse(parsed.value, { reportInput: true });
  return result.success ? { ok: true, value: result.data } : { ok: false, problems: problemsOf(result.error) };
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
  return record.callHash === callHash(prepared.call) ? undefined : say('replay.call-changed', { call: record.call });
}

function replayActions(session: CallSession, actions: CallRecord['actions']): Message | undefined {
  for (const [i, logged] of actions.entries()) {
    const number = quantity('count', i + 1);
    session.advance(logged.at_ms);
    if (session.now_ms !== logged.at_ms) return say('replay.instant', { n: number, id: logged.do });
    const why = session.act({ id: logged.do, ...(logged.fill ? { fill: logged.fill } : {}) });
    if (why) return say('replay.refused', { n: number, id: logged.do, why });
    if (session.log[i]?.state !== logged.state) return say('replay.state', { n: number, id: logged.do });
  }
  return undefined;
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
