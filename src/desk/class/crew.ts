/**
 * Workers side by side, each given its next job when it is done with one. One that breaks or says nothing for too long is
 * replaced, and its job is given up.
 */

/** What this page needs of such a worker. */
export interface Port<Request> {
  postMessage(request: Request): void;
  addEventListener(type: 'message', on: (event: MessageEvent) => void): void;
  addEventListener(type: 'error' | 'messageerror', on: (event: Event) => void): void;
  terminate(): void;
}

/** Why a job was given up: its worker broke; no worker ever said a word, so that none could be fetched; it took too long. */
export type Lost = 'broken' | 'unfetched' | 'silent';

interface Parts<Job, Request, Reply> {
  readonly start: () => Port<Request>;
  readonly workers: number;
  readonly silence_ms: number;
  /** Said to a worker before its first job. */
  readonly greeting?: Request;
  /** A job for a worker whose last one was that; undefined where none is left. */
  readonly next: (last: Job | undefined) => Job | undefined;
  readonly ask: (job: Job) => Request;
  /** Hears what a worker says of its job; true where that was all. */
  readonly heard: (job: Job, reply: Reply) => boolean;
  readonly lost: (job: Job, why: Lost) => void;
}

/** Sets them to work. Gives the way to end it early: nothing is heard any more then. */
export function setToWork<Job, Request, Reply>(parts: Parts<Job, Request, Reply>): () => void {
  const { start, workers, silence_ms, greeting, next, ask, heard, lost } = parts;
  const dismissals = new Set<() => void>();
  let everHeard = false;
  let ended = false;

  function hire(first: Job): void {
    let job = first;
    let limit: ReturnType<typeof setTimeout> | undefined;
    const port = start();
    const dismiss = () => {
      clearTimeout(limit);
      port.terminate();
      dismissals.delete(dismiss);
    };
    const wait = () => {
      clearTimeout(limit);
      limit = setTimeout(() => lose('silent'), silence_ms);
    };
    const give = (one: Job) => {
      job = one;
      wait();
      port.postMessage(ask(job));
    };
    const lose = (why: Lost) => {
      if (!dismissals.has(dismiss)) return;
      dismiss();
      lost(job, why);
      if (!ended) hireOne();
    };
    dismissals.add(dismiss);
    port.addEventListener('message', ({ data }) => {
      if (!dismissals.has(dismiss)) return;
      everHeard = true;
      wait();
      if (!heard(job, data as Reply)) return;
      const following = dismissals.has(dismiss) ? next(job) : undefined;
      if (following === undefined) dismiss();
      else give(following);
    });
    const broken = () => lose(everHeard ? 'broken' : 'unfetched');
    port.addEventListener('error', broken);
    port.addEventListener('messageerror', broken);
    if (greeting !== undefined) port.postMessage(greeting);
    give(job);
  }

  function hireOne(): void {
    const job = next(undefined);
    if (job !== undefined) hire(job);
  }

  for (let i = 0; i < workers; i++) hireOne();
  return () => {
    ended = true;
    for (const dismiss of [...dismissals]) dismiss();
  };
}
