import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { Assistance, CallView } from '../calls/view.ts';
import type { Engine } from './engine.ts';
import type { SavedCall } from './protocol.ts';
import { isRoundCall } from './round-call.ts';
import type { Store } from './store.ts';

/** A call that only lets time go by is kept this often. */
const KEEP_EVERY_ms = 3000;

export interface Keeping {
  /** The call as it was last kept: all that was done. */
  readonly kept: Signal<SavedCall | null>;
  /** Whether time alone has gone by for long enough. */
  due(): boolean;
  keep(view: CallView): Promise<SavedCall>;
  /** Puts a call away that is over and kept. The key of its record. */
  finish(callId: string, saved: SavedCall): Promise<number>;
}

interface Needs {
  readonly engine: Engine;
  readonly store: Store;
  readonly wallClock: () => number;
}

export function createKeeping({ engine, store, wallClock }: Needs, assistance: ReadonlySignal<Assistance>): Keeping {
  const kept = signal<SavedCall | null>(null);
  let keptAt_ms = 0;
  return {
    kept,
    due: () => wallClock() - keptAt_ms > KEEP_EVERY_ms,
    async keep({ callId, stage, clock, mode }) {
      const reply = await engine.ask({ kind: 'save' });
      const saved = mode === 'coached' ? { ...reply.saved, assistance: assistance.value } : reply.saved;
      keptAt_ms = wallClock();
      await store.putProgress({ version: 1, callId, savedAt: keptAt_ms, stage, clock: { ...clock }, saved });
      kept.value = saved;
      return saved;
    },
    async finish(callId, saved) {
      const { score, passed } = (await engine.ask({ kind: 'debrief' })).debrief;
      const round = isRoundCall(callId) ? (await engine.ask({ kind: 'roundClose' })).kept : undefined;
      const key = await store.addFinished({ version: 1, callId, finishedAt: wallClock(), score, passed, saved }, round);
      store.letGo();
      return key;
    },
  };
}
