import { useState } from 'preact/hooks';
import { TEACH } from '../../calls/teach-ids.ts';
import { formatClock } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import type { OpenCall } from '../protocol.ts';
import type { Hands } from './hands.ts';

const LONGEST_NAME = 40;

interface Props {
  readonly call: OpenCall;
  readonly hands: Hands;
  /** A moment was kept beyond the call. */
  readonly onKept: () => void;
}

/** Moments of the call: marked with a name, gone back to, and kept to begin other calls from. */
export function Moments({ call, hands, onKept }: Props) {
  const desk = useDesk();
  const { t } = desk;
  const [name, setName] = useState('');
  const { callId } = call;
  const time = (at_ms: number) => formatClock((at_ms - call.startOfDay_ms) / 1000);
  const mark = async (event: Event) => {
    event.preventDefault();
    const called = name.trim() === '' ? time(call.now_ms) : name.trim();
    if (await hands.teach(callId, TEACH.moment, { name: called })) setName('');
  };
  const keep = async (place: number, called: string) => {
    const answer = await hands.ask({ kind: 'moment', callId, place });
    if (answer.kind !== 'moment') return;
    await desk.store.addMoment({
      version: 1,
      name: called.slice(0, LONGEST_NAME),
      keptAt: desk.wallClock(),
      from: answer.kept,
    });
    onKept();
  };
  return (
    <section class="card moments" aria-labelledby="moments">
      <h2 id="moments">{t('instructor.moments')}</h2>
      <form class="mark-moment" onSubmit={(event) => void mark(event)}>
        <label>
          {t('instructor.moment.name')}
          <input
            type="text"
            maxLength={LONGEST_NAME}
            value={name}
            onInput={(event) => setName(event.currentTarget.value)}
          />
        </label>
        <button type="submit" class="secondary" data-hand="moment">
          <Icon name="flag" /> {t('instructor.moment.mark')}
        </button>
      </form>
      {call.moments.length === 0 ? (
        <p class="small">{t('instructor.moments.none')}</p>
      ) : (
        <ul class="moment-list">
          {[...call.moments].reverse().map((one) => (
            <li key={one.place}>
              <span>
                <span class="time">{time(one.at_ms)}</span> {one.name}
              </span>
              <span class="buttons">
                <button
                  type="button"
                  class="secondary small-button"
                  data-back={one.place}
                  onClick={() => void hands.teach(callId, TEACH.back, { moment: String(one.place) })}
                >
                  {t('instructor.moment.back')}
                  <span class="vh">: {one.name}</span>
                </button>
                <button
                  type="button"
                  class="secondary small-button"
                  data-keep={one.place}
                  onClick={() => void keep(one.place, one.name)}
                >
                  {t('instructor.moment.keep')}
                  <span class="vh">: {one.name}</span>
                </button>
              </span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
