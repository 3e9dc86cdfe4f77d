import { useEffect, useRef, useState } from 'preact/hooks';
import type { Desk } from '../desk.ts';
import type { HomeReply, HomeRequest } from './protocol.ts';

type ReplyTo<R extends HomeRequest> = Extract<HomeReply, { kind: R['kind'] }>;

/** Has a worker of its own answer a request; the function that comes back ends it, done or not. */
function askHome<R extends HomeRequest>(
  request: R,
  on: { reply(reply: ReplyTo<R>): void; progress(share: number): void; failed(): void },
): () => void {
  const worker = new Worker(new URL('./home-worker.ts', import.meta.url), { type: 'module' });
  // What it had posted before it was ended still comes in.
  let ended = false;
  worker.addEventListener('message', ({ data }: MessageEvent<HomeReply>) => {
    if (ended) return;
    if (data.kind === 'progress') return on.progress(data.share);
    if (data.kind === 'failed') on.failed();
    else on.reply(data as ReplyTo<R>);
    worker.terminate();
  });
  worker.addEventListener('error', () => {
    if (!ended) on.failed();
  });
  worker.postMessage(request);
  return () => {
    ended = true;
    worker.terminate();
  };
}

export interface Asking<R extends HomeRequest> {
  readonly reply: ReplyTo<R> | undefined;
  /** How far it has come while it is worked on, 0 to 1. */
  readonly share: number | undefined;
  readonly stopped: boolean;
  ask(request: R): void;
  stop(): void;
}

/** One question at a time; a new one, and leaving the screen, ends the one before it. */
export function useHome<R extends HomeRequest>(desk: Desk): Asking<R> {
  const [reply, setReply] = useState<ReplyTo<R>>();
  const [share, setShare] = useState<number>();
  const [stopped, setStopped] = useState(false);
  const end = useRef(() => {});
  useEffect(() => () => end.current(), []);
  return {
    reply,
    share,
    stopped,
    ask(request) {
      end.current();
      setReply(undefined);
      setStopped(false);
      setShare(0);
      end.current = askHome(request, {
        reply(came) {
          setReply(came);
          setShare(undefined);
        },
        progress: setShare,
        failed() {
          desk.fail({ id: 'trouble.notLoaded' });
          setShare(undefined);
        },
      });
    },
    // At once, not with the next drawing: what comes in meanwhile would count as progress.
    stop() {
      end.current();
      setShare(undefined);
      setStopped(true);
    },
  };
}
