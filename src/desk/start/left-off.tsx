import { formatMoment } from '../../words/calendar.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';

/** The call that was left last, to go on with. */
export function LeftOff() {
  const desk = useDesk();
  const [last] = [...desk.progress.value].sort((a, b) => b.savedAt - a.savedAt);
  if (last === undefined) return null;
  return (
    <section class="card left-off" aria-labelledby="left-off">
      <p class="label">{desk.t('start.left')}</p>
      <h2 id="left-off">{desk.local(last.saved.title)}</h2>
      <p>{formatMoment(desk.words.value, last.clock)}</p>
      <button type="button" class="primary" onClick={() => desk.go({ screen: 'call', callId: last.callId })}>
        <Icon name="play" /> {desk.t('start.goOn')}
      </button>
    </section>
  );
}
