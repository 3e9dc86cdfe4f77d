import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { StepReviewView } from '../../calls/lesson.ts';
import type { Assistance, DebriefView } from '../../calls/view.ts';
import { useLater } from '../use-later.ts';
import { Costs, Flags, Score, Taught, Truth } from './cards.tsx';
import { firstLook, Replay } from './replay.tsx';
import { Steps } from './steps.tsx';
import { type ReviewPlace, useReview } from './use-review.ts';
import { VerdictHead } from './verdict-head.tsx';

interface Props {
  readonly debrief: DebriefView;
  /** Of a coached call only. */
  readonly assistance: Assistance | undefined;
  readonly place: ReviewPlace;
  /** Where it lies on the shelf, if it does. */
  readonly recordKey?: number;
  /** One card more, beside the others. */
  readonly children?: ComponentChildren;
}

/** A call that is over, from its outcome to what each step was worth: the same whoever took it. */
export function LookBack({ debrief: judged, assistance, place, recordKey, children }: Props) {
  const [at_ms, setAt] = useState(firstLook(judged));
  const review = useReview(place);
  const visits = useLater(judged.visit !== undefined, () => import('../visit/decisions.tsx'), 'visit');
  const debrief = { ...judged, done: marked(judged.done, review.steps) };
  const show = (ms: number) => {
    setAt(ms);
    document.querySelector('.replay')?.scrollIntoView({ block: 'start' });
    document.querySelector<HTMLElement>('.scrubber')?.focus({ preventScroll: true });
  };
  return (
    <main>
      <VerdictHead debrief={debrief} assistance={assistance} />
      <Replay debrief={debrief} at_ms={at_ms} onSeek={setAt} />
      <div class="debrief-cards">
        <Truth debrief={debrief} />
        {debrief.visit && visits && <visits.Decisions visit={debrief.visit} recordKey={recordKey} />}
        <Score debrief={debrief} assistance={assistance} />
        <Costs debrief={debrief} />
        <Flags debrief={debrief} />
        <Taught debrief={debrief} />
        {children}
      </div>
      <Steps review={review} startOfDay_ms={debrief.startOfDay_ms} onShow={show} />
    </main>
  );
}

/** The time line's blocks with what the review found of them, where that is worth a flag. */
function marked(done: DebriefView['done'], steps: readonly StepReviewView[]): DebriefView['done'] {
  const flags = new Map(steps.map((one) => [one.at_ms, one.finding]));
  return done.map((block) => {
    const finding = block.kind === 'drive' ? undefined : flags.get(block.from_ms);
    return finding === undefined || finding === 'best' ? block : { ...block, flag: finding };
  });
}
