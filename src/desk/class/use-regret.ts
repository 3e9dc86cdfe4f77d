import { signal } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import type { CallRecord } from '../../calls/schema.ts';
import type { Desk } from '../desk.ts';
import { startExpert } from '../expert.ts';
import { type Held, held } from './held.ts';
import { workersFor } from './pool.ts';
import { reviewEach, type ToReview } from './review-pool.ts';
import { keepReview, reviews } from './reviews.ts';
import { asSaved } from './saved-record.ts';

export interface Regret {
  /** Of so many records that count so many are reviewed. */
  readonly known: number;
  readonly of: number;
  readonly state: 'running' | 'stopped' | 'done' | 'failed';
  stop(): void;
  goOn(): void;
}

/** That somebody stopped it; it stays so until somebody has it go on. */
const stopped = signal(false);

/** Has every record that counts reviewed, once they are replayed (`ready`), for as long as the sheet is looked at. */
export function useRegret(desk: Desk, ready: boolean): Regret {
  const [gaveUp, setGaveUp] = useState<ReadonlySet<string>>(new Set());
  const [attempt, setAttempt] = useState(0);
  const counted = held.value.flatMap(({ marked }) => (marked.state === 'counts' ? marked.deeds : []));
  const unknown = counted.filter((deeds) => !reviews.value.has(deeds));
  const on = ready && !stopped.value;
  useEffect(() => {
    if (!on) return;
    let end = () => {};
    let gone = false;
    setGaveUp(new Set());
    void begin();
    async function begin() {
      const brought = new Map((await desk.store.brought()).map(({ card, text }) => [card.id, text]));
      if (gone) return;
      end = reviewEach(toReview(held.peek(), brought), {
        start: startExpert,
        workers: workersFor(navigator.hardwareConcurrency),
        known: (deeds) => reviews.peek().has(deeds),
        heard({ deeds }, review) {
          if (review === undefined) setGaveUp((before) => new Set(before).add(deeds));
          else keepReview(deeds, review);
        },
      });
    }
    return () => {
      gone = true;
      end();
    };
    // Names may change while it goes on; what was done does not.
  }, [desk, on, attempt, counted.join()]);
  return {
    known: counted.length - unknown.length,
    of: counted.length,
    state: stateOf(unknown, gaveUp),
    stop() {
      stopped.value = true;
    },
    goOn() {
      stopped.value = false;
      setAttempt(attempt + 1);
    },
  };
}

function stateOf(unknown: readonly string[], gaveUp: ReadonlySet<string>): Regret['state'] {
  if (unknown.length === 0) return 'done';
  if (stopped.value) return 'stopped';
  return unknown.every((deeds) => gaveUp.has(deeds)) ? 'failed' : 'running';
}

/** Each of the records that count, once. */
function toReview(records: readonly Held[], brought: ReadonlyMap<string, string>): readonly ToReview[] {
  const each = new Map<string, ToReview>();
  for (const { text, marked } of records) {
    if (marked.state !== 'counts') continue;
    const record = JSON.parse(text) as CallRecord;
    const { deeds } = marked;
    each.set(deeds, { deeds, callHash: record.callHash, saved: asSaved(record, brought.get(record.call)) });
  }
  return [...each.values()];
}
