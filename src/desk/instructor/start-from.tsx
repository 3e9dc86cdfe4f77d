import { useEffect, useState } from 'preact/hooks';
import { RUNGS, type Rung } from '../../calls/rungs.ts';
import { formatMoment } from '../../words/calendar.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import type { OpenCall } from '../protocol.ts';
import type { MomentEntry } from '../store.ts';
import type { Hands } from './hands.ts';

interface Props {
  /** The call that is open there. */
  readonly call: OpenCall | null;
  readonly hands: Hands;
  /** Goes up whenever a moment was kept. */
  readonly kept: number;
}

/** Begins a call in the trainee's window: one on the list, one that was brought, or a moment that was kept. */
export function StartFrom({ call, hands, kept }: Props) {
  const desk = useDesk();
  const { t, local } = desk;
  const brought = desk.brought.value.filter(({ card }) => !desk.calls.value.some(({ id }) => id === card.id));
  const [callId, setCallId] = useState(desk.calls.value[0]?.id ?? '');
  const [rung, setRung] = useState<Rung>('alone');
  const [moments, setMoments] = useState<readonly MomentEntry[]>([]);
  /** What was pressed once: a call, or the key of a moment. */
  const [sure, setSure] = useState<string | number | null>(null);
  const refresh = () => void desk.store.moments().then(setMoments);
  useEffect(refresh, [desk, kept]);
  const begin = async () => {
    setSure(null);
    const moment = moments.find(({ key }) => key === sure);
    await hands.ask(moment ? { kind: 'take-up', from: moment.from } : { kind: 'begin', callId, rung });
  };
  const drop = async (key: number) => {
    await desk.store.dropMoment(key);
    refresh();
  };
  /** Asks first, and looks anew at what was left half way: it may have come meanwhile. */
  const press = (what: string | number) => {
    setSure(sure === what ? null : what);
    void desk.refreshShelves();
  };
  const asked = (id: string) => (sure === null ? null : <Sure call={call} begins={id} onSure={() => void begin()} />);
  return (
    <section class="card start-from" aria-labelledby="start-from">
      <h2 id="start-from">{t('instructor.start')}</h2>
      <div class="start-call">
        <label>
          {t('instructor.start.call')}
          <select
            value={callId}
            onChange={(event) => {
              setCallId(event.currentTarget.value);
              setSure(null);
            }}
          >
            {desk.calls.value.map(({ id, title }) => (
              <option key={id} value={id}>
                {local(title)}
              </option>
            ))}
            {brought.map(({ card: { id, title } }) => (
              <option key={id} value={id}>
                {t('instructor.start.brought', { title: local(title) })}
              </option>
            ))}
          </select>
        </label>
        <label>
          {t('instructor.start.how')}
          <select value={rung} onChange={(event) => setRung(event.currentTarget.value as Rung)}>
            {[...RUNGS].reverse().map((one) => (
              <option key={one} value={one}>
                {t(one === 'alone' ? 'instructor.start.alone' : `start.way.${one}`)}
              </option>
            ))}
          </select>
        </label>
        <button
          type="button"
          class="secondary"
          data-hand="begin"
          aria-expanded={sure === callId}
          onClick={() => press(callId)}
        >
          <Icon name="play" /> {t('instructor.start.begin')}
        </button>
        {sure === callId && asked(callId)}
      </div>
      <h3>{t('instructor.start.moments')}</h3>
      {moments.length === 0 && <p class="small">{t('instructor.start.noMoments')}</p>}
      <ul class="moment-list">
        {[...moments].reverse().map(({ key, name, from }) => (
          <li key={key}>
            <span>
              <strong>{name}</strong>{' '}
              <span class="small">
                {local(from.saved.title)} · {formatMoment(desk.words.value, from.clock)}
              </span>
            </span>
            <span class="buttons">
              <button
                type="button"
                class="secondary small-button"
                data-take-up={key}
                aria-expanded={sure === key}
                onClick={() => press(key)}
              >
                {t('instructor.start.takeUp')}
                <span class="vh">: {name}</span>
              </button>
              <button type="button" class="quiet" data-drop-moment={key} onClick={() => void drop(key)}>
                <Icon name="cross" />
                <span class="vh">
                  {t('instructor.start.drop')}: {name}
                </span>
              </button>
            </span>
            {sure === key && asked(from.callId)}
          </li>
        ))}
      </ul>
    </section>
  );
}

interface SureProps {
  readonly call: OpenCall | null;
  /** The call that begins. */
  readonly begins: string;
  readonly onSure: () => void;
}

/** What becomes of what is there, before it does. */
function Sure({ call, begins, onSure }: SureProps) {
  const desk = useDesk();
  const open = call !== null && !call.ended ? call.callId : undefined;
  const left = open === begins || desk.progress.value.some(({ callId }) => callId === begins);
  const what = left ? 'lost' : open === undefined ? 'free' : 'kept';
  return (
    <div class="sure">
      <p class="small">{desk.t(`instructor.start.${what}`)}</p>
      <button type="button" class="primary" data-hand="sure" onClick={onSure}>
        {desk.t('instructor.start.sure')}
      </button>
    </div>
  );
}
