/** What a call is measured by: its own solution or, on a property that lived before it, what the scripted expert does there. */
import type { Unit } from '../unit/index.ts';
import { playExpert } from './players/expert.ts';
import { playRoutine } from './players/routine.ts';
import { CallSession } from './session.ts';
import type { Prepared } from './setup.ts';
import { playSolution } from './solution.ts';

const played = new WeakMap<Prepared, CallSession>();

/** The call as its reference takes it, told to an observer; on a living property it is played once, without one. */
export function playReference(prepared: Prepared, observer?: (unit: Unit) => void): CallSession {
  if (!prepared.lived) return playSolution(prepared, observer);
  const session = played.get(prepared) ?? playLiving(new CallSession(prepared, 'practice'));
  played.set(prepared, session);
  return session;
}

/** Takes a call on a living property as the expert does: nothing noticed means a routine visit. */
export function playLiving(session: CallSession): CallSession {
  if (session.prepared.call.report.noticed?.length === 0) playRoutine(session);
  else playExpert(session);
  return session;
}
