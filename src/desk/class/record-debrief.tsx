import { useEffect, useMemo, useState } from 'preact/hooks';
import type { CallRecord } from '../../calls/schema.ts';
import type { Assistance, DebriefView } from '../../calls/view.ts';
import { Bar } from '../bar.tsx';
import { LookBack } from '../debrief/look-back.tsx';
import type { ReviewPlace } from '../debrief/use-review.ts';
import { type Desk, useDesk } from '../desk.ts';
import { toldOf } from '../engine.ts';
import { Icon } from '../icons.tsx';
import { ScreenTitle } from '../screen.tsx';
import { NO_HELP } from '../session.ts';
import { keepReview, reviews } from './reviews.ts';
import { asSaved } from './saved-record.ts';

interface Props {
  readonly who: string;
  /** The record's file; it counted, so it has the shape of one. */
  readonly text: string;
  readonly deeds: string;
}

/**
 * The debrief of a record that somebody handed in, from the record alone. It goes on no shelf, and without what belongs to
 * whoever took the call: the next call, a line of their own.
 */
export function RecordDebrief({ who, text, deeds }: Props) {
  const desk = useDesk();
  const { t } = desk;
  const record = useMemo(() => JSON.parse(text) as CallRecord, [text]);
  const debrief = useRecordDebrief(desk, record);
  const place = useMemo(() => onSheet(desk, record, deeds), [desk, record, deeds]);
  const assistance = record.mode === 'coached' ? { ...NO_HELP, ...helpOf(record) } : undefined;
  return (
    <div class="debrief">
      <Bar subtitle={`${t('class.opened', { who })}${debrief ? ` · ${desk.local(debrief.title)}` : ''}`}>
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
        <LookBack debrief={debrief} assistance={assistance} place={place} />
      )}
    </div>
  );
}

function helpOf({ assistance }: CallRecord): Partial<Assistance> {
  if (assistance === undefined) return {};
  const { hints, likely, led } = assistance;
  return { hints, likely, ...(led === undefined ? {} : { led }) };
}

/** Its review is the sheet's, and what is worked out here the sheet has too. */
function onSheet({ store }: Desk, record: CallRecord, deeds: string): ReviewPlace {
  return {
    async open() {
      const brought = await store.broughtBy(record.call);
      return { saved: asSaved(record, brought?.text), review: reviews.peek().get(deeds) };
    },
    keep: (review) => keepReview(deeds, review),
  };
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
  }, [desk, record]);
  return debrief;
}
