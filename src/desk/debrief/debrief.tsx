import { useMemo } from 'preact/hooks';
import type { Rung } from '../../calls/rungs.ts';
import type { Assistance, DebriefView } from '../../calls/view.ts';
import { Bar } from '../bar.tsx';
import { type Desk, useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { rungTaken, suggestedCall } from '../next-call.ts';
import { isRoundCall } from '../round-call.ts';
import { writeRoute } from '../routes.ts';
import { ScreenTitle } from '../screen.tsx';
import { NO_HELP } from '../session.ts';
import { DayLine } from './day-line.tsx';
import { keepRecord } from './keep-record.ts';
import { useDebrief } from './load.ts';
import { LookBack } from './look-back.tsx';
import { Prompts } from './prompts.tsx';
import type { ReviewPlace } from './use-review.ts';

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

function Debrief({ debrief, recordKey }: { debrief: DebriefView; recordKey: number }) {
  const desk = useDesk();
  const place = useMemo(() => onShelf(desk, recordKey), [desk, recordKey]);
  const saved = desk.finished.value.find((one) => one.key === recordKey)?.saved;
  const assistance = saved?.mode === 'coached' ? (saved.assistance ?? NO_HELP) : undefined;
  return (
    <div class="debrief">
      <Bar subtitle={`${desk.t('title.debrief')} · ${desk.local(debrief.title)}`}>
        <Onward
          recordKey={recordKey}
          debrief={debrief}
          rung={saved ? rungTaken(saved) : 'alone'}
          assistance={assistance}
        />
      </Bar>
      <LookBack debrief={debrief} assistance={assistance} place={place} recordKey={recordKey}>
        <DayLine debrief={debrief} recordKey={recordKey} />
        <Prompts debrief={debrief} />
      </LookBack>
    </div>
  );
}

function onShelf({ store }: Desk, recordKey: number): ReviewPlace {
  return {
    open: () => store.finishedBy(recordKey),
    keep: (review) => void store.putReview(recordKey, review),
  };
}

interface OnwardProps {
  readonly recordKey: number;
  readonly debrief: DebriefView;
  /** The one the call was taken on. */
  readonly rung: Rung;
  readonly assistance: Assistance | undefined;
}

function Onward({ recordKey, debrief, rung, assistance }: OnwardProps) {
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
      <a class="pill" href={writeRoute({ screen: 'notebook', key: recordKey })}>
        <Icon name="sheet" /> {desk.t('debrief.notebook')}
      </a>
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
