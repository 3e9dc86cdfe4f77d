import type { DebriefView } from '../../calls/view.ts';
import { Bar } from '../bar.tsx';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { isRoundCall } from '../round-call.ts';
import { ScreenTitle } from '../screen.tsx';
import { Costs, Flags, Score, Truth } from './cards.tsx';
import { keepRecord } from './keep-record.ts';
import { useDebrief } from './load.ts';
import { Prompts } from './prompts.tsx';
import { Replay } from './replay.tsx';
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
  return (
    <div class="debrief">
      <Bar subtitle={`${desk.t('title.debrief')} · ${desk.local(debrief.title)}`}>
        <Onward debrief={debrief} />
      </Bar>
      <main>
        <VerdictHead debrief={debrief} />
        <Replay debrief={debrief} />
        <div class="debrief-cards">
          <Truth debrief={debrief} />
          <Score debrief={debrief} />
          <Costs debrief={debrief} />
          <Flags debrief={debrief} />
          <Prompts debrief={debrief} />
        </div>
      </main>
    </div>
  );
}

function Onward({ debrief }: { debrief: DebriefView }) {
  const desk = useDesk();
  const next = nextCall(desk.calls.value, desk.finished.value, debrief.callId);
  const take = async (callId: string) => {
    await desk.store.dropProgress(callId);
    desk.go({ screen: 'call', callId });
  };
  return (
    <div class="onward">
      <button type="button" class="pill" data-keep-record onClick={() => void keepRecord(desk)}>
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
        <button type="button" class="pill bright" onClick={() => desk.go({ screen: 'call', callId: next })}>
          {desk.t('debrief.next')} <Icon name="arrow" />
        </button>
      )}
    </div>
  );
}

/** The next call down the list that has not been passed yet, else simply the next one. */
function nextCall(
  calls: readonly { readonly id: string }[],
  finished: readonly { readonly callId: string; readonly passed: boolean }[],
  callId: string,
): string | undefined {
  const at = calls.findIndex((one) => one.id === callId);
  const others = [...calls.slice(at + 1), ...calls.slice(0, Math.max(0, at))].map((one) => one.id);
  const passed = (id: string) => finished.some((one) => one.callId === id && one.passed);
  return others.find((id) => !passed(id)) ?? others[0];
}
