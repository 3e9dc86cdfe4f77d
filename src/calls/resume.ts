/** A call that was kept, taken up again. Whoever kept it may have changed it, so it is checked first. */
import { type Message, say } from '../service/index.ts';
import { callHash, ENGINE_VERSION, replayActions } from './progress.ts';
import { progressSchema } from './schema.ts';
import { CallSession } from './session.ts';
import type { Prepared } from './setup.ts';
import type { CallMode } from './view.ts';

/** Takes up a call in progress from what was kept of it, checked and replayed. Says why where it cannot. */
export function resumeCall(
  prepared: Prepared,
  mode: CallMode,
  kept: unknown,
): { session: CallSession } | { why: Message } {
  const checked = progressSchema.safeParse(kept);
  if (!checked.success) return { why: say('trouble.progress-broken') };
  const progress = checked.data;
  if (progress.engine !== ENGINE_VERSION || progress.callHash !== callHash(prepared)) {
    return { why: say('trouble.progress-other-version') };
  }
  const session = new CallSession(prepared, mode);
  const difference = replayActions(session, progress.actions);
  if (difference) return { why: say('trouble.progress-differs', { what: difference }) };
  session.advance(progress.now_ms);
  return { session };
}
