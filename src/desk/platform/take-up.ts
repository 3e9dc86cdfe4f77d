/** What the platform keeps of a call is what goes on: others may sit at this browser too. */
import type { Message } from '../../service/message.ts';
import type { Desk } from '../desk.ts';
import type { SavedCall } from '../protocol.ts';
import type { Progress } from '../stored.ts';

/** Makes what the platform left the call that this browser goes on with. Why it begins anew, where it does for a reason. */
export async function takeUp(
  desk: Desk,
  callId: string,
  left: string,
  brought: string | undefined,
): Promise<Message | undefined> {
  const here = await desk.store.progressOf(callId);
  if (left === '') {
    if (here !== undefined) await setAside(desk, here);
    return undefined;
  }
  const { saved, why } = await desk.engine.ask({
    kind: 'unpack',
    callId,
    text: left,
    ...(here === undefined ? {} : { here: here.saved }),
    ...(brought === undefined ? {} : { brought }),
  });
  if (saved !== undefined && saved.now_ms === here?.saved.now_ms) return undefined;
  if (here !== undefined) await setAside(desk, here);
  if (saved !== undefined) await desk.store.putProgress(progressOf(saved, desk.wallClock()));
  return why;
}

/** Stage and clock are written anew as soon as the call is open. */
function progressOf(saved: SavedCall, savedAt: number): Progress {
  const clock = { year: 2000, month: 1, day: 1, weekday: 0, secondOfDay: 0 };
  return { version: 1, callId: saved.callId, savedAt, stage: 'ask', clock, saved };
}

/** Another attempt, or somebody else's: never thrown away, and never gone on with unasked. */
async function setAside({ store }: Desk, value: Progress): Promise<void> {
  const { callId: key } = value;
  await store.merge(() => [{ shelf: 'unread', value: { shelf: 'progress', key, value } }]);
  await store.dropProgress(key);
}
