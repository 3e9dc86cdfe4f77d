/** What a call is measured by: its own solution or, on a property that lived before it, what the scripted expert does there. */
import { playExpert } from './players/expert.ts';
import { playRoutine } from './players/routine.ts';
import { CallSession } from './session.ts';
import type { Prepared } from './setup.ts';
import { playSolution } from './solution.ts';

const played = new WeakMap<Prepared, CallSession>();

/** The call as its reference takes it; what the expert does is worked out once. */
export function playReference(prepared: Prepared): CallSession {
  if (!prepared.lived) return playSolution(prepared);
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
