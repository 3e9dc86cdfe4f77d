import { useEffect, useState } from 'preact/hooks';
import type { StepReviewView } from '../../calls/lesson.ts';
import type { Desk } from '../desk.ts';
import { type Headway, review, startExpert } from '../expert.ts';
import { Review } from './review-shape.ts';

export interface ReviewState {
  readonly steps: readonly StepReviewView[];
  readonly state: 'working' | 'done' | 'failed';
  readonly headway: Headway | null;
  retry(): void;
}

/** What each step of a finished call was worth: as it was kept, or worked out now, step by step, and then kept. */
export function useReview(desk: Desk, recordKey: number): ReviewState {
  const [steps, setSteps] = useState<readonly StepReviewView[]>([]);
  const [state, setState] = useState<ReviewState['state']>('working');
  const [headway, setHeadway] = useState<Headway | null>(null);
  const [attempt, setAttempt] = useState(0);
  useEffect(() => {
    let end = () => {};
    let gone = false;
    setState('working');
    setSteps([]);
    setHeadway(null);
    begin().catch(() => setState('failed'));
    async function begin() {
      const entry = await desk.store.finishedBy(recordKey);
      if (gone || entry === undefined) return;
      if (Review(entry.review)) {
        setSteps(entry.review);
        setState('done');
        return;
      }
      const all: StepReviewView[] = [];
      end = review(startExpert(), entry.saved, {
        headway: setHeadway,
        step(one) {
          all.push(one);
          setSteps([...all]);
        },
        done() {
          setState('done');
          void desk.store.putReview(recordKey, all);
        },
        failed: () => setState('failed'),
      });
    }
    return () => {
      gone = true;
      end();
    };
  }, [desk, recordKey, attempt]);
  return { steps, state, headway, retry: () => setAttempt(attempt + 1) };
}
