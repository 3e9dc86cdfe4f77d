import { TEACH } from '../../calls/teach-ids.ts';
import { formatDate } from '../../words/calendar.ts';
import { formatClock } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import type { OpenCall } from '../protocol.ts';
import type { Hands } from './hands.ts';
import type { Told } from './line.ts';

const RATES = [
  { rate: 1, key: 'bar.rate.second' },
  { rate: 10, key: 'bar.rate.ten' },
  { rate: 60, key: 'bar.rate.minute' },
] as const;

interface Props {
  readonly call: OpenCall;
  readonly told: Told;
  readonly hands: Hands;
}

/** The call's clock: stopped and let go, and how fast it runs. */
export function ClockHand({ call, told, hands }: Props) {
  const { t, words } = useDesk();
  const { callId, frozen } = call;
  const stands = frozen ? 'frozen' : told.rate === 0 ? 'paused' : 'runs';
  return (
    <section class="card clock-hand" aria-labelledby="clock-hand">
      <h2 id="clock-hand">{t('instructor.clock')}</h2>
      <p class="clock-now">
        <strong>{formatClock(call.clock.secondOfDay, told.rate <= 1)}</strong> {formatDate(words.value, call.clock)}
        <span class="small">{t(`instructor.clock.${stands}`)}</span>
      </p>
      {!told.shown && <p class="small">{t('instructor.hidden')}</p>}
      <div class="buttons">
        <button
          type="button"
          class="primary"
          data-hand={frozen ? 'go' : 'freeze'}
          onClick={() => void hands.teach(callId, frozen ? TEACH.go : TEACH.freeze)}
        >
          <Icon name={frozen ? 'play' : 'pause'} /> {t(frozen ? 'instructor.go' : 'instructor.freeze')}
        </button>
      </div>
      <fieldset class="speeds">
        <legend>{t('instructor.speed')}</legend>
        {RATES.map(({ rate, key }) => (
          <button
            key={rate}
            type="button"
            class="secondary small-button"
            data-hand={`rate-${rate}`}
            aria-pressed={!frozen && told.rate === rate}
            onClick={() => void hands.teach(callId, TEACH.speed, { rate: String(rate) })}
          >
            {t(key)}
          </button>
        ))}
        <button
          type="button"
          class="secondary small-button"
          data-hand="next-change"
          aria-disabled={frozen}
          onClick={() => !frozen && void hands.ask({ kind: 'next-change', callId })}
        >
          {t('bar.seek')}
        </button>
      </fieldset>
    </section>
  );
}
