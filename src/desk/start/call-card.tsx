import { formatClock } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import type { CallCard } from '../protocol.ts';
import { SkyBand } from './sky-band.tsx';

interface Props {
  readonly card: CallCard;
  readonly number: number;
  /** Whether it is the one that the course has next. */
  readonly next: boolean;
}

/** One call on the list: what is known of it before the phone is picked up, and how it went so far. */
export function CallCardView({ card, number, next }: Props) {
  const desk = useDesk();
  const { local, t } = desk;
  const started = desk.progress.value.find((one) => one.callId === card.id);
  const results = desk.finished.value.filter((one) => one.callId === card.id);
  const best = results.reduce<(typeof results)[number] | undefined>(
    (top, one) => (top === undefined || one.score > top.score ? one : top),
    undefined,
  );
  const nextTime = desk.lines.value.find((one) => one.callId === card.id)?.nextTime ?? '';
  const titleId = `call-${card.id}`;
  const open = () => desk.go({ screen: 'call', callId: card.id });
  const startOver = async () => {
    await desk.store.dropProgress(card.id);
    open();
  };
  return (
    <li class={next ? 'call-card next' : 'call-card'} aria-labelledby={titleId}>
      {next && <p class="next-tag">{t('start.next')}</p>}
      <SkyBand secondOfDay={card.starts.secondOfDay} month={card.starts.month} />
      <div class="call-card-body">
        <p class="call-card-meta">
          <span class="call-number">{number}</span>
          <span>{local(card.lot)}</span>
          <span class="time">
            <Icon name="phone" /> {formatClock(card.starts.secondOfDay)}
          </span>
        </p>
        <h3 id={titleId}>{local(card.title)}</h3>
        <p class="call-card-summary">{local(card.summary)}</p>
        {nextTime !== '' && (
          <p class="next-time">
            <span class="label">{t('start.nextTime')}</span> {nextTime}
          </p>
        )}
        <p class="call-card-result">
          <span>{t('start.length', { m: { measure: 'duration_min', value: card.minutes } })}</span>
          {best === undefined ? (
            <span>{t('start.notTaken')}</span>
          ) : (
            <span class={best.passed ? 'good' : 'bad'}>
              <Icon name={best.passed ? 'check' : 'flag'} />
              {t(best.passed ? 'start.best.passed' : 'start.best.failed', { score: Math.round(best.score) })}
            </span>
          )}
        </p>
        <div class="buttons">
          <button
            type="button"
            class={started === undefined ? 'primary' : 'secondary'}
            data-call={card.id}
            onClick={open}
          >
            {started === undefined ? t('start.take') : t('start.goOn')}
            <span class="vh">: {local(card.title)}</span>
          </button>
          {started === undefined ? (
            <button
              type="button"
              class="secondary"
              data-coached={card.id}
              onClick={() => desk.go({ screen: 'call', callId: card.id, mode: 'coached' })}
            >
              {t('start.coached')}
              <span class="vh">: {local(card.title)}</span>
            </button>
          ) : (
            <button type="button" class="secondary" onClick={() => void startOver()}>
              {t('start.over')}
              <span class="vh">: {local(card.title)}</span>
            </button>
          )}
        </div>
      </div>
    </li>
  );
}
