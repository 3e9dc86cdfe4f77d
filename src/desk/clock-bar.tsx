import { formatDate } from '../words/calendar.ts';
import { formatClock } from '../words/measure.ts';
import type { Rate } from './clockwork.ts';
import { useDesk } from './desk.ts';
import { Icon } from './icons.tsx';

const RATES = [
  { rate: 1, key: 'bar.rate.second' },
  { rate: 10, key: 'bar.rate.ten' },
  { rate: 60, key: 'bar.rate.minute' },
  { rate: 3600, key: 'bar.rate.hour' },
] as const satisfies readonly { rate: Rate; key: string }[];

/** The call's clock and how fast it runs. */
export function ClockBar() {
  const desk = useDesk();
  const { session } = desk;
  const view = session.view.value;
  if (view === null) return null;
  const rate = session.rate.value;
  const seeking = session.busy.value === 'seek';
  const paused = rate === 0 && !seeking;
  return (
    <div class="clock-bar">
      <p class="clock">
        <span class="date">{formatDate(desk.words.value, view.clock)}</span>
        <time>{formatClock(view.clock.secondOfDay, rate <= 1)}</time>
      </p>
      <fieldset class="rates" disabled={view.ended || view.frozen}>
        <legend class="vh">{desk.t('bar.clock')}</legend>
        <button
          type="button"
          class="pill icon-pill"
          aria-pressed={paused}
          title={desk.t('bar.pause.key')}
          onClick={() => session.setRate(paused ? 1 : 0)}
        >
          <Icon name={paused ? 'play' : 'pause'} />
          <span class="vh">{desk.t('bar.pause')}</span>
        </button>
        {RATES.filter((one) => one.rate !== 10 || rate === 10).map((one) => (
          <button
            key={one.rate}
            type="button"
            class="pill"
            aria-pressed={rate === one.rate}
            onClick={() => session.setRate(one.rate)}
          >
            {desk.t(one.key)}
          </button>
        ))}
        <button
          type="button"
          class="pill seek"
          aria-pressed={seeking}
          aria-busy={seeking}
          onClick={() => void session.runToNextChange()}
        >
          {desk.t('bar.seek')}
        </button>
      </fieldset>
    </div>
  );
}
