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
  const words = useRef<HTMLParagraphElement>(null);
  const press = async (action: ActionView) => {
    await desk.session.dispatch(action.action);
    // The button goes with the noise; whoever pressed it by key goes on from here.
    if (document.activeElement === document.body) words.current?.focus();
  };
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
          <p ref={words} tabIndex={-1}>
            <strong>{desk.t('alarm.title')}</strong> <span>{text}</span>
          </p>
          {silence !== undefined && sounding && (
            <button
              type="button"
              class="alarm-silence"
              aria-disabled={desk.session.busy.value !== null}
              onClick={() => void press(silence)}
            >
              <Icon name={silence.part === 'phone' ? 'phone' : 'bellOff'} /> {desk.t('alarm.silence')}
              {silence.part === 'phone' && <span class="vh"> ({desk.t('part.phone')})</span>}
            </button>
          )}
        </div>
      )}
    </>
  );
}

/** By hand on the site. By phone the household does it, once danger was asked about: before, it would be a breach. */
function silenceOf(view: CallView): ActionView | undefined {
  const open = view.parts.flatMap((part) => part.actions).filter((one) => one.available && one.form === undefined);
  const dangerAsked = view.stages.some(({ id, state }) => id === 'danger' && state === 'done');
  return (
    open.find((one) => one.control === 'silence') ??
    (dangerAsked ? open.find((one) => one.action.id === 'guide-silence') : undefined)
  );
}
