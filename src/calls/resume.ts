/** A call that was kept, taken up again. Whoever kept it may have changed it, so it is checked first. */
import { type Message, say } from '../service/index.ts';
import { callHash, ENGINE_VERSION, engineAge, engineOf, replayActions } from './progress.ts';
import { type Progress, progressSchema } from './schema.ts';
import { CallSession } from './session.ts';
import type { Prepared } from './setup.ts';
import type { CallMode } from './view.ts';

/** What was kept of a call, once it has the right shape and is of this version. Says why where it has not. */
export function checkProgress(prepared: Prepared, kept: unknown): { progress: Progress } | { why: Message } {
  // First of all whose it is: another version may keep other things.
  const age = engineAge(kept);
  const engines = { made: engineOf(kept) ?? '', here: ENGINE_VERSION };
  if (age === 'older') return { why: say('trouble.progress-older', engines) };
  if (age === 'newer') return { why: say('trouble.progress-newer', engines) };
  const checked = progressSchema.safeParse(kept);
  if (!checked.success) return { why: say('trouble.progress-broken') };
  const progress = checked.data;
  if (progress.callHash !== callHash(prepared)) return { why: say('trouble.progress-other-version') };
  return { progress };
}

/** Takes up a call in progress from what was kept of it, checked and replayed. Says why where it cannot. */
export function resumeCall(
  prepared: Prepared,
  mode: CallMode,
  kept: unknown,
): { session: CallSession } | { why: Message } {
  const checked = checkProgress(prepared, kept);
  if ('why' in checked) return checked;
  const session = new CallSession(prepared, mode);
  const difference = replayActions(session, checked.progress.actions);
  if (difference) return { why: say('trouble.progress-differs', { what: difference }) };
  session.advance(checked.progress.now_ms);
  return { session };
}
