import type { CallView } from '../../calls/view.ts';
import { formatClock } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import { clockAt } from './time.ts';
import { usePaced } from './use-paced.ts';

/** What changed last: shown to all, and read out politely. */
export function NewsStrip({ view }: { view: CallView }) {
  const desk = useDesk();
  const news = usePaced(desk.session.news.value);
  return (
    <div class={news?.refused === true ? 'news refused' : 'news'}>
      <span class="news-time" aria-hidden="true">
        {news === null ? '' : formatClock(clockAt(view, news.at_s))}
      </span>
      <p role="status" key="news">
        {news === null ? desk.t('call.quiet') : news.messages.map(desk.speak.value).join(' · ')}
      </p>
      <p class="spent">
        <span class="vh">{desk.t('call.spent.label')} </span>
        {desk.t('call.spent', {
          m: { measure: 'duration_min', value: view.minutesSpent },
          c: { measure: 'money_usd', value: view.moneySpent_usd },
        })}
      </p>
    </div>
  );
}
