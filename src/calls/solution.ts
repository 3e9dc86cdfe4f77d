/** A call's own solution: what every score measures its cost by. */
import { ACTION_BY_ID, type Message } from '../service/index.ts';
import type { Unit } from '../unit/index.ts';
import type { Spent } from './cost.ts';
import type { SolutionStep } from './schema.ts';
import { CallSession, DRIVE_MIN } from './session.ts';
import { listOf } from './session-actions.ts';
import type { Prepared } from './setup.ts';
import type { Action } from './view.ts';

/** Takes the call as its file solves it. */
export function playSolution(prepared: Prepared, observer?: (unit: Unit) => void): CallSession {
  const session = new CallSession(prepared, 'practice', observer);
  playSteps(session, prepared.call.solution);
  return session;
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

/** A step's form may name evidence by the check that gave it (`by:soap-air-line`): its newest note is meant. */
export function asAction(session: CallSession, step: SolutionStep): Action {
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

/** What the call's own solution spends by the actions' own minutes and money, the drive included. */
export function solutionSpends({ call: { solution, kind } }: Prepared): Spent {
  const drives = kind === 'visit' || solution.some((step) => step.do === 'decide-visit');
  const defs = solution.map((step) => ACTION_BY_ID.get(step.do));
  return {
    minutes: defs.reduce((sum, def) => sum + (def?.minutes ?? 1), drives ? DRIVE_MIN : 0),
    money_usd: defs.reduce((sum, def) => sum + (def?.cost_usd ?? 0), 0),
  };
}

/** What was done on a call as the steps of a solution. Evidence is named by the check that gave it. */
export function stepsDone(session: CallSession): SolutionStep[] {
  const { notebook } = session.service.person;
  const by = (noteId: string) => {
    const check = notebook.find((n) => n.id === noteId)?.by;
    return check === undefined ? noteId : `by:${check}`;
  };
  return session.done.map(({ action, def }) => {
    if (!action.fill) return { do: def.id };
    const fill = Object.entries(action.fill).map(([field, value]) => [
      field,
      typeof value === 'string' ? value : [...new Set(field === 'evidence' ? value.map(by) : value)],
    ]);
    return { do: def.id, fill: Object.fromEntries(fill) };
  });
}
