/** What a coach says before an action that would skip a life-safety step. A file of its own: only a coached call needs it. */
import { breachOf, circuitsToLock, hindrance, type Message, say } from '../service/index.ts';
import { type CallSession, formProblem } from './session.ts';
import type { Action } from './view.ts';

/**
 * The word before an action, where one is due; changes nothing. A breach that only the hidden state of the unit makes one
 * is not told of: the coach knows no more than the person.
 */
export function cautionBefore(session: CallSession, action: Action): Message | undefined {
  const { service } = session;
  const def = session.definition(action.id);
  const fill = action.fill ?? {};
  if (session.mode !== 'coached' || session.ended || !def || hindrance(service, def, fill)) return undefined;
  if (typeof def.breach === 'function' || formProblem(def, fill)) return undefined;
  const breach = breachOf(service, def, session.dangerAsked(), fill);
  if (breach === undefined) return undefined;
  const [circuit] = circuitsToLock(def, fill).filter((one) => !service.person.locks.has(one));
  return say(`before.${breach}`, breach === 'not-locked-out' ? { circuit: say(`circuit.${circuit}`) } : undefined);
}
