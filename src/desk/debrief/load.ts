import { useEffect, useState } from 'preact/hooks';
import type { CallView, DebriefView } from '../../calls/view.ts';
import type { Desk } from '../desk.ts';
import { EngineError, toldOf } from '../engine.ts';
import { haveRound } from '../round-call.ts';

/** Fetches the debrief of a finished record; after a reload the engine replays the record first. */
export function useDebrief(desk: Desk, recordKey: number): DebriefView | null {
  return useFinished(desk, recordKey, debriefOf);
}

async function debriefOf(desk: Desk, recordKey: number): Promise<DebriefView> {
  if (desk.session.finishedKey.peek() !== recordKey) await takenUp(desk, recordKey);
  const reply = await desk.engine.ask({ kind: 'debrief' });
  await desk.refreshShelves();
  return reply.debrief;
}

/** Has the engine live through a finished call again; gives it as it stood when it ended. */
export async function takenUp(desk: Desk, recordKey: number): Promise<CallView> {
  const entry = await desk.store.finishedBy(recordKey);
  if (entry === undefined) throw new EngineError({ id: 'trouble.noRecord' });
  await haveRound(entry.callId, desk.engine, () => desk.store.round());
  return (await desk.engine.ask({ kind: 'resume', saved: entry.saved })).view;
}

/** Something of a finished record, once it is there; what goes wrong is told, and leads back to the start. */
export function useFinished<T>(
  desk: Desk,
  recordKey: number,
  load: (desk: Desk, recordKey: number) => Promise<T>,
): T | null {
  const [loaded, setLoaded] = useState<T | null>(null);
  useEffect(() => {
    let gone = false;
    load(desk, recordKey).then(
      (one) => {
        if (!gone) setLoaded(one);
      },
      (error: unknown) => {
        desk.fail(toldOf(error));
        desk.go({ screen: 'start' });
      },
    );
    return () => {
      gone = true;
    };
  }, [desk, recordKey, load]);
  return loaded;
}
