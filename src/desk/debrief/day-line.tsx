import { useRef, useState } from 'preact/hooks';
import { callOfDay } from '../../calls/day-call.ts';
import type { DebriefView } from '../../calls/view.ts';
import type { Message } from '../../service/message.ts';
import { dayOf } from '../day.ts';
import { type Desk, useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { rungTaken } from '../next-call.ts';
import type { FinishedEntry } from '../store.ts';
import { minutesOf } from './minutes.ts';

/** One line to pass on, after the call of the day: what it came to, and nothing of its cause. */
export function DayLine({ debrief, recordKey }: { readonly debrief: DebriefView; readonly recordKey: number }) {
  const desk = useDesk();
  const { t } = desk;
  const field = useRef<HTMLTextAreaElement>(null);
  const [told, setTold] = useState('');
  const entry = desk.finished.value.find(({ key }) => key === recordKey);
  if (entry === undefined || !wasOfDay(desk, entry)) return null;
  // Spaces that do not break are for the page.
  const line = desk.speak.value(dayLine(desk, entry, minutesOf(debrief))).replaceAll('\u00a0', ' ');
  const copy = async () => {
    // Where a page may not write to the clipboard, who is at it can.
    const copied = await navigator.clipboard?.writeText(line).then(
      () => true,
      () => false,
    );
    if (!copied) field.current?.select();
    setTold(t(copied ? 'day.copied' : 'day.selected'));
  };
  return (
    <section class="card day-line" aria-labelledby="day-line-title">
      <h2 id="day-line-title">{t('start.day')}</h2>
      <p class="small">{t('day.lead')}</p>
      <textarea ref={field} rows={3} readOnly value={line} aria-label={t('day.label')} />
      <button type="button" class="secondary" data-copy-line onClick={() => void copy()}>
        <Icon name="sheet" /> {t('day.copy')}
      </button>
      <p role="status" class="small">
        {told}
      </p>
    </section>
  );
}

/** Whether a finished call was that of the day on which it was finished. */
function wasOfDay(desk: Desk, { callId, finishedAt, saved }: FinishedEntry): boolean {
  return saved.brought === undefined && callOfDay(dayOf(finishedAt).number, desk.calls.value) === callId;
}

function dayLine(desk: Desk, entry: FinishedEntry, minutes: number): Message {
  const { callId, finishedAt, passed, score, saved } = entry;
  const { number, year, month, day } = dayOf(finishedAt);
  const tries = desk.finished.value.filter(
    (one) => one.callId === callId && dayOf(one.finishedAt).number === number && one.finishedAt <= finishedAt,
  );
  const rung = rungTaken(saved);
  return {
    id: tries.length > 1 ? 'day.line.again' : 'day.line',
    values: {
      date: { id: 'date.full', values: { day, month: { id: `month.${month}` }, year: String(year) } },
      title: saved.title,
      result: { id: passed ? 'day.passed' : 'day.failed' },
      score: Math.round(score),
      time: { measure: 'duration_min', value: minutes },
      help: { id: rung === 'alone' || rung === 'coached' ? `day.help.${rung}` : 'day.help.led' },
      n: tries.length,
    },
  };
}
