/**
 * Score, 0 to 100: 0 if unsafe, else outcome 50 (cause named on sufficient evidence 25, right mend 15, proof and
 * record 10; in a call rightly closed by phone decision 25, follow-up 15, record 10), cost 30 x min(1, cost of the
 * reference solution / cost), conduct 20 x (1 - flags / 5); a routine visit's outcome is judged in `visit/`. The weights are our choice, no source.
 */
import { type Message, quantity, say } from '../service/index.ts';
import { costOf, type Spent, spent } from './cost.ts';
import {
  causeRight,
  evidenceEnough,
  type Flag,
  flagsOf,
  isCleared,
  leftReady,
  missingProofs,
  trueFaults,
} from './flags.ts';
import { phaseOf } from './procedure.ts';
import type { CallSession } from './session.ts';
import type { ScoreLine } from './view.ts';
import { visitOutcome } from './visit/judge.ts';

export interface Judgement {
  readonly passed: boolean;
  readonly score: number;
  readonly lines: readonly ScoreLine[];
  readonly flags: readonly Flag[];
  readonly spent: Spent;
  readonly reference: Spent;
}

const COST = 30;
const CONDUCT = 20;
const MOST_FLAGS = 5;

/** Judges a call that has ended. `reference` is what the call's own solution spends. */
export function judge(session: CallSession, reference: Spent): Judgement {
  const flags = flagsOf(session);
  const used = spent(session);
  if (session.breach) {
    const line: ScoreLine = { id: 'safety', points: 0, of: 100, reason: say(`breach.${session.breach}`) };
    return { passed: false, score: 0, lines: [line], flags, spent: used, reference };
  }
  const outcome = outcomeOf(session, flags);
  const ratio = Math.min(1, costOf(reference) / Math.max(1, costOf(used)));
  const counted = Math.min(flags.length, MOST_FLAGS);
  const lines: ScoreLine[] = [
    { id: 'safety', points: 0, of: 0, reason: say('score.safety-kept') },
    ...outcome.lines,
    { id: 'cost', points: round(COST * ratio), of: COST, reason: costReason(used, reference) },
    {
      id: 'conduct',
      points: round(CONDUCT * (1 - counted / MOST_FLAGS)),
      of: CONDUCT,
      reason: flags.length === 0 ? say('score.no-flags') : say('score.flags', { n: quantity('count', flags.length) }),
    },
  ];
  const score = Math.round(lines.reduce((sum, l) => sum + l.points, 0));
  const passed = outcome.solved && score >= session.prepared.call.pass;
  return { passed, score, lines, flags, spent: used, reference };
}

interface OutcomePart {
  readonly lines: readonly ScoreLine[];
  readonly solved: boolean;
}

function outcomeOf(session: CallSession, flags: readonly Flag[]): OutcomePart {
  if (session.prepared.call.kind === 'visit') return visitOutcome(session, flags);
  return phaseOf(session.procedure) === 'closedByPhone' ? phoneOutcome(session, flags) : siteOutcome(session, flags);
}

function phoneOutcome(session: CallSession, flags: readonly Flag[]): OutcomePart {
  const right = session.prepared.call.expected.decision === 'close';
  const has = (id: Flag['id']) => flags.some((f) => f.id === id);
  const watched = !has('closed-unwatched');
  const decided = right && watched;
  const leversRead = right && !has('reset-before-reading');
  return {
    solved: decided,
    lines: [
      {
        id: 'decision',
        points: decided ? 25 : 0,
        of: 25,
        reason: say(!right ? 'score.decision-wrong' : watched ? 'score.decision-right' : 'score.decision-unwatched'),
      },
      line('followUp', right && !has('no-follow-up') ? 15 : 0, 15, right && !has('no-follow-up')),
      {
        id: 'record',
        points: leversRead ? 10 : 0,
        of: 10,
        reason: say(leversRead ? 'score.levers-yes' : 'score.levers-no'),
      },
    ],
  };
}

function siteOutcome(session: CallSession, flags: readonly Flag[]): OutcomePart {
  const truth = trueFaults(session);
  const right = causeRight(session);
  const enough = right && evidenceEnough(session);
  const cleared = truth.every((key) => isCleared(session, key));
  const missing = missingProofs(session);
  const ready = leftReady(session);
  const proof = cleared && missing.length === 0 && ready ? 6 : 0;
  const written = cleared && !flags.some((f) => f.id === 'record-short' || f.id === 'household-not-told') ? 4 : 0;
  return {
    solved: enough && cleared,
    lines: [
      {
        id: 'cause',
        points: enough ? 25 : right ? 10 : 0,
        of: 25,
        reason: say(
          enough
            ? 'score.cause-shown'
            : right
              ? 'score.cause-guessed'
              : session.cause
                ? 'score.cause-wrong'
                : 'score.cause-unnamed',
        ),
      },
      line('mend', cleared ? 15 : 0, 15, cleared),
      {
        id: 'proof',
        points: proof,
        of: 6,
        reason: proof > 0 ? say('score.proof-yes') : missingReason(missing, ready),
      },
      line('record', written, 4, written > 0),
    ],
  };
}

function missingReason(missing: readonly string[], ready: boolean): Message {
  const [first] = missing;
  return first === undefined
    ? say(ready ? 'score.mend-no' : 'score.left-unready')
    : say('score.proof-missing', { proof: say(`proof.${first}`) });
}

function line(id: ScoreLine['id'], points: number, of: number, yes: boolean): ScoreLine {
  return { id, points, of, reason: say(`score.${id}-${yes ? 'yes' : 'no'}`) };
}

function costReason(used: Spent, reference: Spent): Message {
  return say('score.spent', {
    minutes: quantity('duration_min', used.minutes, 1),
    money: quantity('money_usd', used.money_usd, 1),
    refMinutes: quantity('duration_min', reference.minutes, 1),
    refMoney: quantity('money_usd', reference.money_usd, 1),
  });
}

function round(x: number): number {
  return Math.round(x * 10) / 10;
}
