import { useEffect, useState } from 'preact/hooks';
import type { CallRecord } from '../../calls/schema.ts';
import type { Assistance, DebriefView } from '../../calls/view.ts';
import { Bar } from '../bar.tsx';
import { Costs, Flags, Score, Truth } from '../debrief/cards.tsx';
import { firstLook, Replay } from '../debrief/replay.tsx';
import { VerdictHead } from '../debrief/verdict-head.tsx';
import type { Desk } from '../desk.ts';
import { useDesk } from '../desk.ts';
import { toldOf } from '../engine.ts';
import { Icon } from '../icons.tsx';
import type { SavedCall } from '../protocol.ts';
import { ScreenTitle } from '../screen.tsx';
import { NO_HELP } from '../session.ts';
import type { Held } from './held.ts';

/**
 * The debrief of a record that somebody handed in, from the record alone. It goes on no shelf, and without what belongs to
 * whoever took the call: the next call, a line of their own.
 */
export function RecordDebrief({ held }: { readonly held: Held }) {
  const desk = useDesk();
  const { t } = desk;
  // It counted, so it has the shape of a record.
  const record = JSON.parse(held.text) as CallRecord;
  const debrief = useRecordDebrief(desk, record);
  const assistance = record.mode === 'coached' ? { ...NO_HELP, ...helpOf(record) } : undefined;
  return (
    <div class="debrief">
      <Bar subtitle={`${t('class.opened', { who: held.who })}${debrief ? ` · ${desk.local(debrief.title)}` : ''}`}>
        <div class="onward">
          <a class="pill" href="#/class">
            <Icon name="list" /> {t('class.back')}
          </a>
        </div>
      </Bar>
      {debrief === null ? (
        <main class="waiting">
          <ScreenTitle>{t('debrief.opening')}</ScreenTitle>
        </main>
      ) : (
        <Debrief debrief={debrief} assistance={assistance} />
      )}
    </div>
  );
}

function helpOf({ assistance }: CallRecord): Partial<Assistance> {
  if (assistance === undefined) return {};
  const { hints, likely, led } = assistance;
  return { hints, likely, ...(led === undefined ? {} : { led }) };
}

interface DebriefProps {
  readonly debrief: DebriefView;
  readonly assistance: Assistance | undefined;
}

function Debrief({ debrief, assistance }: DebriefProps) {
  const [at_ms, setAt] = useState(firstLook(debrief));
  return (
    <main>
      <VerdictHead debrief={debrief} assistance={assistance} />
      <Replay debrief={debrief} at_ms={at_ms} onSeek={setAt} />
      <div class="debrief-cards">
        <Truth debrief={debrief} />
        <Score debrief={debrief} assistance={assistance} />
        <Costs debrief={debrief} />
        <Flags debrief={debrief} />
      </div>
    </main>
  );
}

function useRecordDebrief(desk: Desk, record: CallRecord): DebriefView | null {
  const [debrief, setDebrief] = useState<DebriefView | null>(null);
  useEffect(() => {
    let gone = false;
    load().catch((error: unknown) => {
      desk.fail(toldOf(error));
      if (!gone) desk.go({ screen: 'class' });
    });
    async function load() {
      // The engine holds one call: one that was being taken is put away first.
      await desk.session.leave();
      const brought = await desk.store.broughtBy(record.call);
      await desk.engine.ask({ kind: 'resume', saved: asSaved(record, brought?.text) });
      const reply = await desk.engine.ask({ kind: 'debrief' });
      if (!gone) setDebrief(reply.debrief);
    }
    return () => {
      gone = true;
    };
    // The record of a place never changes while it is shown.
  }, [desk]);
  return debrief;
}

/** A record as a call in progress that has come to its end. */
function asSaved(record: CallRecord, brought: string | undefined): SavedCall {
  const { call, mode, engine, callHash, actions, end_ms } = record;
  return {
    version: 1,
    callId: call,
    mode,
    record: { engine, callHash, actions, now_ms: end_ms },
    now_ms: end_ms,
    title: { en: call, es: call },
    ...(brought === undefined ? {} : { brought }),
  };
}
