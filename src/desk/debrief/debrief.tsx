import { useState } from 'preact/hooks';
import type { StepReviewView } from '../../calls/lesson.ts';
import type { Rung } from '../../calls/rungs.ts';
import type { Assistance, DebriefView } from '../../calls/view.ts';
import { Bar } from '../bar.tsx';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { rungTaken, suggestedCall } from '../next-call.ts';
import { isRoundCall } from '../round-call.ts';
import { ScreenTitle } from '../screen.tsx';
import { NO_HELP } from '../session.ts';
import { Costs, Flags, Score, Truth } from './cards.tsx';
import { keepRecord } from './keep-record.ts';
import { useDebrief } from './load.ts';
import { Prompts } from './prompts.tsx';
import { firstLook, Replay } from './replay.tsx';
import { Steps } from './steps.tsx';
import { useReview } from './use-review.ts';
import { VerdictHead } from './verdict-head.tsx';

/** What happened on the call, what was true all along, and what to do first next time. */
export function DebriefScreen({ recordKey }: { recordKey: number }) {
  const desk = useDesk();
  const debrief = useDebrief(desk, recordKey);
  if (debrief === null) {
    return (
      <div class="debrief">
        <Bar />
        <main class="waiting">
          <ScreenTitle>{desk.t('debrief.opening')}</ScreenTitle>
        </main>
      </div>
    );
  }
  return <Debrief debrief={debrief} recordKey={recordKey} />;
}

function Debrief({ debrief: judged, recordKey }: { debrief: DebriefView; recordKey: number }) {
  const desk = useDesk();
  const [at_ms, setAt] = useState(firstLook(judged));
  const review = useReview(desk, recordKey);
  const debrief = { ...judged, done: marked(judged.done, review.steps) };
  const saved = desk.finished.value.find((one) => one.key === recordKey)?.saved;
  const assistance = saved?.mode === 'coached' ? (saved.assistance ?? NO_HELP) : undefined;
  const show = (ms: number) => {
    setAt(ms);
    document.querySelector('.replay')?.scrollIntoView({ block: 'start' });
    document.querySelector<HTMLElement>('.scrubber')?.focus({ preventScroll: true });
  };
  return (
    <div class="debrief">
      <Bar subtitle={`${desk.t('title.debrief')} · ${desk.local(debrief.title)}`}>
        <Onward debrief={debrief} rung={saved ? rungTaken(saved) : 'alone'} assistance={assistance} />
      </Bar>
      <main>
        <VerdictHead debrief={debrief} assistance={assistance} />
        <Replay debrief={debrief} at_ms={at_ms} onSeek={setAt} />
        <div class="debrief-cards">
          <Truth debrief={debrief} />
          <Score debrief={debrief} assistance={assistance} />
          <Costs debrief={debrief} />
          <Flags debrief={debrief} />
          <Prompts debrief={debrief} />
        </div>
        <Steps review={review} startOfDay_ms={debrief.startOfDay_ms} onShow={show} />
      </main>
    </div>
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

interface OnwardProps {
  readonly debrief: DebriefView;
  /** The one the call was taken on. */
  readonly rung: Rung;
  readonly assistance: Assistance | undefined;
}

function Onward({ debrief, rung, assistance }: OnwardProps) {
  const desk = useDesk();
  const suggested = suggestedCall(desk);
  // Who took this one alone goes on alone.
  const next = rung === 'alone' ? suggested && { ...suggested, rung } : suggested;
  const take = async (callId: string) => {
    await desk.store.dropProgress(callId);
    desk.go({ screen: 'call', callId, rung });
  };
  return (
    <div class="onward">
      <button type="button" class="pill" data-keep-record onClick={() => void keepRecord(desk, assistance)}>
        <Icon name="save" /> {desk.t('debrief.keep')}
      </button>
      {isRoundCall(debrief.callId) && (
        <a class="pill" href="#/round">
          <Icon name="next" /> {desk.t('round.back')}
        </a>
      )}
      <button type="button" class="pill" onClick={() => void take(debrief.callId)}>
        <Icon name="again" /> {desk.t('debrief.again')}
      </button>
      {next !== undefined && (
        <button type="button" class="pill bright" onClick={() => desk.go({ screen: 'call', ...next })}>
          {desk.t('debrief.next')} <Icon name="arrow" />
        </button>
      )}
    </div>
  );
}
