/** Speaks `expert-protocol.ts` over a worker that is started for one review, or for one coached call, and then ended. */
import type { Advice } from '../calls/coach.ts';
import type { StepReviewView } from '../calls/lesson.ts';
import type { TogetherView } from '../calls/together.ts';
import type { Message } from '../service/message.ts';
import type { ExpertReply, ExpertRequest } from './expert-protocol.ts';
import type { SavedCall } from './protocol.ts';

/** What this page needs of the expert's worker. */
export interface ExpertPort {
  postMessage(request: ExpertRequest): void;
  addEventListener(type: 'message', on: (event: MessageEvent) => void): void;
  addEventListener(type: 'error' | 'messageerror', on: (event: Event) => void): void;
  terminate(): void;
}

export function startExpert(): ExpertPort {
  return new Worker(new URL('./expert-worker.ts', import.meta.url), { type: 'module' });
}

/** How far the expert is with what it does before it can say anything, and with what it says. */
export interface Headway {
  readonly at: 'causes' | 'steps';
  readonly done: number;
  readonly of: number;
}

interface ReviewHeard {
  readonly headway: (headway: Headway) => void;
  readonly step: (review: StepReviewView) => void;
  readonly done: (together: TogetherView) => void;
  readonly failed: (told: Message) => void;
}

/** Has a finished call reviewed. Gives the way to end it. */
export function review(port: ExpertPort, saved: SavedCall, heard: ReviewHeard): () => void {
  listen(port, heard.failed, (reply) => {
    if (reply.kind === 'lived') heard.headway({ at: 'causes', done: reply.done, of: reply.of });
    if (reply.kind === 'step') {
      heard.step(reply.review);
      heard.headway({ at: 'steps', done: reply.review.step + 1, of: reply.of });
    }
    if (reply.kind === 'reviewed') {
      port.terminate();
      heard.done(reply.together);
    }
  });
  port.postMessage({ kind: 'review', saved });
  return () => port.terminate();
}

interface AdviceHeard {
  readonly headway: (headway: Headway) => void;
  /** `fresh`: nothing was done meanwhile that it does not know of. */
  readonly advice: (advice: Advice, fresh: boolean) => void;
  readonly failed: (told: Message) => void;
}

/** A coach that is told of a call as it goes on. While it thinks, only the last it was told waits. */
export interface CoachLine {
  tell(saved: SavedCall): void;
  close(): void;
}

export function coach(port: ExpertPort, heard: AdviceHeard): CoachLine {
  let thinking = false;
  let waiting: SavedCall | undefined;
  const ask = (saved: SavedCall) => {
    thinking = true;
    port.postMessage({ kind: 'advise', saved });
  };
  listen(port, heard.failed, (reply) => {
    if (reply.kind === 'lived') heard.headway({ at: 'causes', done: reply.done, of: reply.of });
    if (reply.kind !== 'advice') return;
    thinking = false;
    heard.advice(reply.advice, waiting === undefined);
    if (waiting !== undefined) ask(waiting);
    waiting = undefined;
  });
  return {
    tell(saved) {
      if (thinking) waiting = saved;
      else ask(saved);
    },
    close: () => port.terminate(),
  };
}

function listen(port: ExpertPort, failed: (told: Message) => void, on: (reply: ExpertReply) => void): void {
  const fail = (told: Message) => {
    port.terminate();
    failed(told);
  };
  port.addEventListener('message', (event) => {
    const reply = event.data as ExpertReply;
    if (reply.kind === 'error') fail(reply.message);
    else on(reply);
  });
  const broken = () => fail({ id: 'trouble.expert' });
  port.addEventListener('error', broken);
  port.addEventListener('messageerror', broken);
}
