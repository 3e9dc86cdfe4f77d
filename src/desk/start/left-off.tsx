import { formatMoment } from '../../words/calendar.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import type { Progress } from '../stored.ts';
import { SkyBand } from './sky-band.tsx';

/** The call that was left last, to go on with. */
export function LeftOff({ last }: { readonly last: Progress }) {
  const desk = useDesk();
  return (
    <section class="card left-off" aria-labelledby="left-off">
      <SkyBand secondOfDay={last.clock.secondOfDay} month={last.clock.month} at="panel" />
      <p class="label">{desk.t('start.left')}</p>
      <h2 id="left-off">{desk.local(last.saved.title)}</h2>
      <p class="small">{formatMoment(desk.words.value, last.clock)}</p>
      <button type="button" class="primary" onClick={() => desk.go({ screen: 'call', callId: last.callId })}>
        <Icon name="play" /> {desk.t('start.goOn')}
      </button>
    </section>
  );
}
