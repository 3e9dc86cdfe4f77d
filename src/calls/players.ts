/** Scripted people: the expert follows the call's own solution; "reset-only" hopes the breakers will do. */
import { ACTION_BY_ID, type Message } from '../service/index.ts';
import type { SolutionStep } from './schema.ts';
import { CallSession, DRIVE_MIN } from './session.ts';
import { listOf } from './session-actions.ts';
import type { Prepared } from './setup.ts';
import type { Action } from './view.ts';

export const PLAYERS = ['expert', 'reset-only'] as const;
export type PlayerId = (typeof PLAYERS)[number];

const RESET_ONLY: readonly SolutionStep[] = [
  { do: 'ask-danger' },
  { do: 'ask-history' },
  { do: 'guide-silence' },
  { do: 'ask-breakers' },
  { do: 'guide-reset' },
  { do: 'guide-watch' },
  { do: 'decide-close', fill: { 'follow-up': ['call-tomorrow', 'count-trip', 'visit-if-again'] } },
];

export function stepsFor(player: PlayerId, prepared: Prepared): readonly SolutionStep[] {
  return player === 'expert' ? prepared.call.solution : RESET_ONLY;
}

/** Plays steps one after the other without a pause. Returns the first refusal, if one could not be done. */
export function playSteps(
  session: CallSession,
  steps: readonly SolutionStep[],
): { at: number; why: Message } | undefined {
  for (const [at, step] of steps.entries()) {
    const why = session.act(asAction(session, step));
    if (why) return { at, why };
    if (session.ended) return undefined;
  }
  return undefined;
}

export function play(prepared: Prepared, player: PlayerId): CallSession {
  const session = new CallSession(prepared, 'practice');
  playSteps(session, stepsFor(player, prepared));
  return session;
}

/** A step's form may name evidence by the check that gave it (`by:soap-air-line`): its newest note is meant. */
function asAction(session: CallSession, step: SolutionStep): Action {
  if (!step.fill) return { id: step.do };
  const fill = Object.fromEntries(
    Object.entries(step.fill).map(([field, value]) => [
      field,
      typeof value === 'string' ? value : listOf(value).flatMap((v) => resolve(session, v)),
    ]),
  );
  return { id: step.do, fill };
}

function resolve(session: CallSession, value: string): string[] {
  if (!value.startsWith('by:')) return [value];
  const by = value.slice(3);
  return session.service.person.notebook.filter((n) => n.by === by).map((n) => n.id);
}

/** Minutes the call's own solution takes by the actions' own times, the drive included. */
export function solutionMinutes(prepared: Prepared): number {
  const { solution } = prepared.call;
  const acts = solution.reduce((sum, step) => sum + (ACTION_BY_ID.get(step.do)?.minutes ?? 1), 0);
  return acts + (solution.some((step) => step.do === 'decide-visit') ? DRIVE_MIN : 0);
}
