import { useEffect, useState } from 'preact/hooks';
import type { StepReviewView } from '../../calls/lesson.ts';
import type { TogetherView } from '../../calls/together.ts';
import { type Headway, review, startExpert } from '../expert.ts';
import type { SavedCall } from '../protocol.ts';
import { isReview, type Review } from './review-shape.ts';

/** Where a finished call lies, and its review once there is one. */
export interface ReviewPlace {
  /** Undefined where the call is there no longer. */
  open(): Promise<{ readonly saved: SavedCall; readonly review?: unknown } | undefined>;
  keep(review: Review): void;
}

export interface ReviewState {
  readonly steps: readonly StepReviewView[];
  /** What the readings make together; once all steps are weighed. */
  readonly together: TogetherView | null;
  readonly state: 'working' | 'done' | 'failed';
  readonly headway: Headway | null;
  retry(): void;
}

/** What each step of a finished call was worth: as it was kept, or worked out now, step by step, and then kept. */
export function useReview(place: ReviewPlace): ReviewState {
  const [steps, setSteps] = useState<readonly StepReviewView[]>([]);
  const [together, setTogether] = useState<TogetherView | null>(null);
  const [state, setState] = useState<ReviewState['state']>('working');
  const [headway, setHeadway] = useState<Headway | null>(null);
  const [attempt, setAttempt] = useState(0);
  useEffect(() => {
    let end = () => {};
    let gone = false;
    setState('working');
    setSteps([]);
    setTogether(null);
    setHeadway(null);
    begin().catch(() => setState('failed'));
    async function begin() {
      const entry = await place.open();
      if (gone || entry === undefined) return;
      if (isReview(entry.review)) {
        setSteps(entry.review.steps);
        setTogether(entry.review.together);
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
        done(made) {
          setTogether(made);
          setState('done');
          place.keep({ steps: all, together: made });
        },
        failed: () => setState('failed'),
      });
    }
    return () => {
      gone = true;
      end();
    };
  }, [place, attempt]);
  return { steps, together, state, headway, retry: () => setAttempt(attempt + 1) };
}
