import { useEffect, useRef, useState } from 'preact/hooks';
import type { Draft } from '../../build/draft.ts';
import type { Desk } from '../desk.ts';
import type { Looked, LookReply, LookRequest } from './protocol.ts';

/** Typing goes on for so long before a draft is looked at, ms. */
const PAUSE_ms = 250;

type ReplyOf<K> = Extract<LookReply, { kind: K }>;

export interface LookLine {
  ask<R extends LookRequest>(request: R): Promise<ReplyOf<R['kind']>>;
  end(): void;
}

/** Asks the worker one thing after the other; each gets its own reply. */
export function openLine(): LookLine {
  const worker = new Worker(new URL('./look-worker.ts', import.meta.url), { type: 'module' });
  const waiting: { readonly resolve: (reply: LookReply) => void; readonly reject: (why: Error) => void }[] = [];
  let broken = false;
  worker.addEventListener('message', ({ data }: MessageEvent<LookReply>) => {
    const next = waiting.shift();
    if (data.kind === 'failed') next?.reject(new Error('the draft could not be looked at'));
    else next?.resolve(data);
  });
  worker.addEventListener('error', () => {
    broken = true;
    for (const one of waiting.splice(0)) one.reject(new Error('the worker stopped'));
  });
  return {
    ask<R extends LookRequest>(request: R) {
      return new Promise<ReplyOf<R['kind']>>((resolve, reject) => {
        if (broken) return reject(new Error('the worker stopped'));
        // Replies come in the order of the requests, so this one is of their kind.
        waiting.push({ resolve: resolve as (reply: LookReply) => void, reject });
        worker.postMessage(request);
      });
    },
    end: () => worker.terminate(),
  };
}

/** Asks one thing of a worker of its own; none where that cannot be done, which the page then says. */
export async function askedOnce<R extends LookRequest>(
  desk: Desk,
  request: R,
): Promise<ReplyOf<R['kind']> | undefined> {
  const line = openLine();
  try {
    return await line.ask(request);
  } catch {
    desk.fail({ id: 'trouble.notLoaded' });
    return undefined;
  } finally {
    line.end();
  }
}

export interface Looking {
  readonly line: LookLine | null;
  readonly looked: Looked | undefined;
  /** Whether a change is still to be looked at. */
  readonly busy: boolean;
}

/** Has the newest draft looked at, as soon as nobody changes it for a moment. */
export function useLooker(desk: Desk, draft: Draft | undefined): Looking {
  const [line, setLine] = useState<LookLine | null>(null);
  const [looked, setLooked] = useState<{ readonly of: Draft; readonly it: Looked } | undefined>();
  const newest = useRef(draft);
  newest.current = draft;
  useEffect(() => {
    const opened = openLine();
    setLine(opened);
    return () => opened.end();
  }, []);
  useEffect(() => {
    if (line === null || draft === undefined) return;
    const timer = setTimeout(
      async () => {
        try {
          const { looked: it } = await line.ask({ kind: 'look', draft });
          if (newest.current === draft) setLooked({ of: draft, it });
        } catch {
          desk.fail({ id: 'trouble.notLoaded' });
        }
      },
      looked === undefined ? 0 : PAUSE_ms,
    );
    return () => clearTimeout(timer);
  }, [line, draft]);
  return { line, looked: looked?.it, busy: looked?.of !== draft };
}
