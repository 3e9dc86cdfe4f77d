import { useEffect, useState } from 'preact/hooks';
import type { DebriefView } from '../../calls/view.ts';
import type { Desk } from '../desk.ts';
import { EngineError, toldOf } from '../engine.ts';
import { haveRound } from '../round-call.ts';

/** Fetches the debrief of a finished record; after a reload the engine replays the record first. */
export function useDebrief(desk: Desk, recordKey: number): DebriefView | null {
  const [debrief, setDebrief] = useState<DebriefView | null>(null);
  useEffect(() => {
    let gone = false;
    load().catch((error: unknown) => {
      desk.fail(toldOf(error));
      desk.go({ screen: 'start' });
    });
    async function load() {
      if (desk.session.finishedKey.peek() !== recordKey) {
        const entry = await desk.store.finishedBy(recordKey);
        if (entry === undefined) throw new EngineError({ id: 'trouble.noRecord' });
        await haveRound(entry.callId, desk.engine, () => desk.store.round());
        await desk.engine.ask({ kind: 'resume', saved: entry.saved });
      }
      const reply = await desk.engine.ask({ kind: 'debrief' });
      await desk.refreshShelves();
      if (!gone) setDebrief(reply.debrief);
    }
    return () => {
      gone = true;
    };
  }, [desk, recordKey]);
  return debrief;
}
