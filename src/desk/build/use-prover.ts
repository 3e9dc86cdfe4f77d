import { useEffect, useRef, useState } from 'preact/hooks';
import type { Draft } from '../../build/draft.ts';
import type { ProveReply, ProveRequest } from './protocol.ts';

export type Ended = Exclude<ProveReply, { kind: 'stage' }>;

export interface Proving {
  /** What is going on, and how far it has come. */
  readonly running: {
    readonly kind: ProveRequest['kind'];
    readonly stage?: Extract<ProveReply, { kind: 'stage' }>;
  } | null;
  /** How it came out, and of which draft. */
  readonly ended: { readonly of: Draft; readonly it: Ended } | null;
  begin(kind: ProveRequest['kind'], draft: Draft, heard?: (ended: Ended) => void): void;
  cancel(): void;
}

/** A proof is done by a worker of its own, which is ended to stop it. */
export function useProver(): Proving {
  const [running, setRunning] = useState<Proving['running']>(null);
  const [ended, setEnded] = useState<Proving['ended']>(null);
  const worker = useRef<Worker | null>(null);
  const stop = () => {
    worker.current?.terminate();
    worker.current = null;
    setRunning(null);
  };
  useEffect(() => stop, []);
  return {
    running,
    ended,
    cancel: stop,
    begin(kind, draft, heard) {
      stop();
      const one = new Worker(new URL('./prove-worker.ts', import.meta.url), { type: 'module' });
      worker.current = one;
      setRunning({ kind });
      const end = (it: Ended) => {
        stop();
        setEnded({ of: draft, it });
        heard?.(it);
      };
      one.addEventListener('message', ({ data }: MessageEvent<ProveReply>) => {
        if (worker.current !== one) return;
        if (data.kind === 'stage') setRunning({ kind, stage: data });
        else end(data);
      });
      one.addEventListener('error', () => worker.current === one && end({ kind: 'failed' }));
      one.postMessage({ kind, draft } satisfies ProveRequest);
    },
  };
}
