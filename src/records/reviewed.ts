/** A record that counts, looked back on step by step: a replay, and seconds to a minute of work. */
import { type StepReviewView, stepReviewView } from '../calls/lesson.ts';
import { replay } from '../calls/record.ts';
import { reviewOf } from '../calls/review.ts';
import type { CallRecord } from '../calls/schema.ts';
import type { Prepared } from '../calls/setup.ts';

/** Its steps alone: what the readings make together is not worked out. */
export function reviewed(prepared: Prepared, record: CallRecord): readonly StepReviewView[] {
  const { session } = replay(prepared, record);
  const steps: StepReviewView[] = [];
  for (const review of reviewOf(session)) {
    steps.push(stepReviewView(session, review));
    if (steps.length === session.done.length) break;
  }
  return steps;
}
