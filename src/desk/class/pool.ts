/** Has the records of a class replayed by a few workers side by side. */
import type { Handed } from '../../records/marked.ts';
import type { Message } from '../../service/message.ts';
import { type Lost, type Port, setToWork } from './crew.ts';
import type { MarkReply, MarkRequest } from './protocol.ts';

export type MarkPort = Port<MarkRequest>;

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

const WHY = { broken: 'class.stopped', unfetched: 'trouble.notLoaded', silent: 'class.too-long' } as const;

interface Parts {
  readonly start: () => MarkPort;
  readonly workers: number;
  readonly brought: ReadonlyMap<string, string>;
  /** What came of the record at this place; every one is heard once, in whatever order. */
  readonly heard: (at: number, marked: MarkReply) => void;
}

/** Gives the way to end it early: nothing is heard any more then. */
export function markAll(handed: readonly Handed[], { start, workers, brought, heard }: Parts): () => void {
  let given = 0;
  return setToWork<number, MarkRequest, MarkReply>({
    start,
    workers,
    silence_ms: LONGEST_ms,
    greeting: { kind: 'brought', texts: brought },
    next: () => (given < handed.length ? given++ : undefined),
    ask: (at) => ({ kind: 'mark', handed: handed[at] as Handed }),
    heard(at, marked) {
      heard(at, marked);
      return true;
    },
    lost: (at, why) => heard(at, givenUp(handed[at]?.who ?? '', why)),
  });
}

function givenUp(who: string, why: Lost): MarkReply {
  const said: Message = { id: WHY[why] };
  return { state: 'refused', who, otherEngine: false, why: said, problems: [] };
}
