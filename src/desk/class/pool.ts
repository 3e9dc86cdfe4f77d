/** Has the records of a class replayed by a few workers side by side, each given the next record when it is done with one. */
import type { Handed, Marked } from '../../records/marked.ts';
import type { Message } from '../../service/message.ts';
import type { MarkReply, MarkRequest } from './protocol.ts';

/** What this page needs of such a worker. */
export interface MarkPort {
  postMessage(request: MarkRequest): void;
  addEventListener(type: 'message', on: (event: MessageEvent) => void): void;
  addEventListener(type: 'error' | 'messageerror', on: (event: Event) => void): void;
  terminate(): void;
}

export function startMarker(): MarkPort {
  return new Worker(new URL('./class-worker.ts', import.meta.url), { type: 'module' });
}

const MOST_WORKERS = 4;

/** One processor stays with the page. */
export function workersFor(processors: number): number {
  return Math.min(Math.max(processors - 1, 1), MOST_WORKERS);
}

/** A record takes a fraction of a second; one that names instants years away would never come to its end. */
export const LONGEST_ms = 60_000;

interface Parts {
  readonly start: () => MarkPort;
  readonly workers: number;
  readonly brought: ReadonlyMap<string, string>;
  /** What came of the record at this place; every one is heard once, in whatever order. */
  readonly heard: (at: number, marked: Marked) => void;
}

/** Gives the way to end it early: nothing is heard any more then. */
export function markAll(handed: readonly Handed[], { start, workers, brought, heard }: Parts): () => void {
  const dismissals = new Set<() => void>();
  let next = 0;
  let everHeard = false;

  function hire(): void {
    let at = next;
    let limit: ReturnType<typeof setTimeout> | undefined;
    const port = start();
    const dismiss = () => {
      clearTimeout(limit);
      port.terminate();
      dismissals.delete(dismiss);
    };
    const give = () => {
      const one = handed[next];
      if (one === undefined) return dismiss();
      at = next++;
      limit = setTimeout(() => lose({ id: 'class.too-long' }), LONGEST_ms);
      port.postMessage({ kind: 'mark', handed: one });
    };
    /** The record is given up with its worker, and another worker goes on with the others. */
    const lose = (why: Message) => {
      if (!dismissals.has(dismiss)) return;
      dismiss();
      if (next < handed.length) hire();
      heard(at, { state: 'refused', who: handed[at]?.who ?? '', otherEngine: false, why, problems: [] });
    };
    dismissals.add(dismiss);
    port.addEventListener('message', ({ data }) => {
      if (!dismissals.has(dismiss)) return;
      clearTimeout(limit);
      everHeard = true;
      const done = at;
      give();
      heard(done, data as MarkReply);
    });
    // A worker that never said a word could not be fetched.
    const broken = () => lose({ id: everHeard ? 'class.stopped' : 'trouble.notLoaded' });
    port.addEventListener('error', broken);
    port.addEventListener('messageerror', broken);
    port.postMessage({ kind: 'brought', texts: brought });
    give();
  }

  for (let i = 0; i < workers && next < handed.length; i++) hire();
  return () => {
    for (const dismiss of [...dismissals]) dismiss();
  };
}
