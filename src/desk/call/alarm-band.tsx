import { useEffect, useRef, useState } from 'preact/hooks';
import type { ActionView, CallView } from '../../calls/view.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';

/** The alarm as the person knows it, with Silence at hand. A new one is said at once, an old one only shown. */
export function AlarmBand({ view }: { view: CallView }) {
  const desk = useDesk();
  const lit = view.lamp === 'lit';
  const sounding = view.buzzer === true;
  const on = lit || sounding;
  const before = useRef(on);
  const [alert, setAlert] = useState('');
  const text = on ? desk.t(lit ? (sounding ? 'alarm.both' : 'alarm.lamp') : 'alarm.buzzer') : '';
  useEffect(() => {
    if (on && !before.current) setAlert(text);
    if (!on) setAlert('');
    before.current = on;
  }, [on, text]);
  const silence = silenceOf(view);
  return (
    <>
      <p class="vh" role="alert">
        {alert}
      </p>
      {on && (
        <div class="alarm-band">
          <span class="alarm-lamp">
            <Icon name="lamp" />
          </span>
          <p>
            <strong>{desk.t('alarm.title')}</strong> <span>{text}</span>
          </p>
          {silence !== undefined && sounding && (
            <button
              type="button"
              class="alarm-silence"
              aria-disabled={desk.session.busy.value !== null}
              onClick={() => void desk.session.dispatch(silence.action)}
            >
              <Icon name="bellOff" /> {desk.t('alarm.silence')}
            </button>
          )}
        </div>
      )}
    </>
  );
}

function silenceOf(view: CallView): ActionView | undefined {
  for (const part of view.parts) {
    const found = part.actions.find((one) => one.control === 'silence' && one.available && one.form === undefined);
    if (found !== undefined) return found;
  }
  return undefined;
}
