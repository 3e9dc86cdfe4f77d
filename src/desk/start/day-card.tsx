import { useEffect, useState } from 'preact/hooks';
import { dayOf } from '../day.ts';
import { useDesk } from '../desk.ts';
import { toldOf } from '../engine.ts';
import { Icon } from '../icons.tsx';
import { SkyBand } from './sky-band.tsx';

/** The call of the day: the same one for everybody, and what it came to once it was taken today. */
export function DayCard() {
  const desk = useDesk();
  const { t, local } = desk;
  const [today] = useState(dayOf(desk.wallClock()));
  const [callId, setCallId] = useState('');
  useEffect(() => {
    desk.engine.ask({ kind: 'ofDay', day: today.number }).then(
      (reply) => setCallId(reply.callId),
      (error: unknown) => desk.fail(toldOf(error)),
    );
  }, [desk, today]);
  const card = desk.calls.value.find(({ id }) => id === callId);
  const [done] = desk.finished.value.filter(
    (one) => one.callId === callId && one.saved.brought === undefined && dayOf(one.finishedAt).number === today.number,
  );
  const begun = desk.progress.value.some((one) => one.callId === callId);
  const { year, month, day } = today;
  const date = { id: 'date.full', values: { day, month: { id: `month.${month}` }, year: String(year) } };
  return (
    <section class="card day-card" aria-labelledby="day-title">
      {card && <SkyBand {...card.starts} />}
      <h2 id="day-title">{t('start.day')}</h2>
      <p class="small">{t('start.day.lead', { date })}</p>
      <p class="day-call">
        {card && (
          <>
            <strong>{local(card.title)}</strong>{' '}
            {t('start.length', { m: { measure: 'duration_min', value: card.minutes } })}
          </>
        )}
      </p>
      {done === undefined ? (
        <button
          type="button"
          class="secondary"
          data-day
          disabled={card === undefined}
          onClick={() => desk.go({ screen: 'call', callId })}
        >
          {t(begun ? 'start.goOn' : 'start.take')}
          <span class="vh">: {t('start.day')}</span>
        </button>
      ) : (
        <>
          <p class={done.passed ? 'good strong' : 'bad strong'}>
            <Icon name={done.passed ? 'check' : 'flag'} />{' '}
            {t(done.passed ? 'start.best.passed' : 'start.best.failed', { score: Math.round(done.score) })}
          </p>
          <button
            type="button"
            class="secondary"
            data-day-line
            onClick={() => desk.go({ screen: 'debrief', key: done.key })}
          >
            {t('start.day.see')}
          </button>
        </>
      )}
    </section>
  );
}
