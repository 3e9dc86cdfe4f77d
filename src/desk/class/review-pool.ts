/** Has records that count reviewed by a few experts side by side, those of one call by one of them as far as it goes. */
import type { StepReviewView } from '../../calls/lesson.ts';
import type { Review } from '../debrief/review-shape.ts';
import type { ExpertPort } from '../expert.ts';
import type { ExpertReply, ExpertRequest } from '../expert-protocol.ts';
import type { SavedCall } from '../protocol.ts';
import { setToWork } from './crew.ts';
import { type OfCall, Waiting } from './waiting.ts';

export interface ToReview extends OfCall {
  readonly deeds: string;
  readonly saved: SavedCall;
}

interface Parts {
  readonly start: () => ExpertPort;
  readonly workers: number;
  /** What was worked out elsewhere meanwhile is passed over. */
  readonly known: (deeds: string) => boolean;
  /** The review of a record, or that it could not be had. */
  readonly heard: (one: ToReview, review: Review | undefined) => void;
}

/** An expert is at its longest without a word over a mend and over what the readings make together: some seconds. */
export const LONGEST_SILENCE_ms = 180_000;

/** Gives the way to end it early: nothing is heard any more then. */
export function reviewEach(records: readonly ToReview[], { start, workers, known, heard }: Parts): () => void {
  const waiting = new Waiting(records);
  const told = new Map<ToReview, StepReviewView[]>();
  const settle = (one: ToReview, review: Review | undefined) => {
    told.delete(one);
    heard(one, review);
  };
  return setToWork<ToReview, ExpertRequest, ExpertReply>({
    start,
    workers,
    silence_ms: LONGEST_SILENCE_ms,
    next(last) {
      let one = waiting.next(last);
      while (one !== undefined && known(one.deeds)) one = waiting.next(last);
      return one;
    },
    ask: ({ saved }) => ({ kind: 'review', saved }),
    heard(one, reply) {
      if (reply.kind === 'step') told.set(one, [...(told.get(one) ?? []), reply.review]);
      if (reply.kind === 'reviewed') settle(one, { steps: told.get(one) ?? [], together: reply.together });
      if (reply.kind === 'error') settle(one, undefined);
      return reply.kind === 'reviewed' || reply.kind === 'error';
    },
    lost: (one) => settle(one, undefined),
  });
}
