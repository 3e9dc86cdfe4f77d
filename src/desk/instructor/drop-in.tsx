import { useEffect, useState } from 'preact/hooks';
import type { Droppable } from '../../calls/hood.ts';
import { TEACH } from '../../calls/teach-ids.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import type { OpenCall } from '../protocol.ts';
import { Said } from '../screen.tsx';
import type { Hands } from './hands.ts';
import type { Link } from './link.ts';
import { hoursOf, type Ramp, RampField } from './ramp.tsx';

const LEAST = 5;
const STEP = 5;

interface Props {
  readonly call: OpenCall;
  readonly link: Link;
  readonly hands: Hands;
}

/** Faults that this unit can have, by family: one is chosen, with how bad it is and over what time it comes, and dropped in. */
export function DropIn({ call, link, hands }: Props) {
  const { t, speak } = useDesk();
  const faults = useDroppable(link, call.callId);
  const [sought, setSought] = useState('');
  const [chosen, setChosen] = useState<Droppable | null>(null);
  const [percent, setPercent] = useState(100);
  const [ramp, setRamp] = useState<Ramp>({ over: false, hours: '1' });
  const there = new Set(call.faults.map(({ key }) => key));
  const wanted = sought.trim().toLowerCase();
  const found = faults.filter(({ name }) => speak.value(name).toLowerCase().includes(wanted));
  const families = [...new Set(found.map(({ family }) => family))];
  const choose = (fault: Droppable) => {
    setChosen(fault);
    setPercent(Math.max(LEAST, STEP * Math.round((100 * fault.severity) / STEP)));
    setRamp(fault.ramp_h > 0 ? { over: true, hours: String(Math.min(72, fault.ramp_h)) } : { over: false, hours: '1' });
  };
  const drop = async () => {
    if (chosen === null || there.has(chosen.key)) return;
    const fill = { fault: chosen.key, severity: String(percent / 100), ramp_h: hoursOf(ramp) };
    if (await hands.teach(call.callId, TEACH.faultIn, fill)) setChosen(null);
  };
  return (
    <section class="card drop-in" aria-labelledby="drop-in">
      <h2 id="drop-in">{t('instructor.drop')}</h2>
      <label class="seek-fault">
        {t('instructor.drop.seek')}
        <input type="search" value={sought} onInput={(event) => setSought(event.currentTarget.value)} />
      </label>
      <fieldset class="droppable">
        <legend class="vh">{t('instructor.drop.which')}</legend>
        {families.map((family) => (
          <details key={family} open={wanted !== ''}>
            <summary>{t('instructor.family', { family: { id: `function.${family}` } })}</summary>
            {found
              .filter((one) => one.family === family)
              .map((one) => (
                <label key={one.key} class="option">
                  <input
                    type="radio"
                    name="drop-in"
                    value={one.key}
                    disabled={there.has(one.key)}
                    checked={chosen?.key === one.key}
                    onChange={() => choose(one)}
                  />
                  <span>
                    <Said message={one.name} />
                    {there.has(one.key) && <span class="small"> {t('instructor.drop.there')}</span>}
                  </span>
                </label>
              ))}
          </details>
        ))}
        {families.length === 0 && <p class="small">{t('instructor.drop.none')}</p>}
      </fieldset>
      {chosen !== null && (
        <div class="drop-how">
          <p>
            <strong>
              <Said message={chosen.name} />
            </strong>
          </p>
          <label class="severity">
            {t('instructor.drop.severity', { p: { measure: 'share', value: percent / 100 } })}
            <input
              type="range"
              min={LEAST}
              max={100}
              step={STEP}
              value={percent}
              aria-valuetext={`${percent} %`}
              onInput={(event) => setPercent(Number(event.currentTarget.value))}
            />
          </label>
          <RampField name="in" ramp={ramp} onRamp={setRamp} />
          <button
            type="button"
            class="primary"
            data-hand="drop-in"
            aria-disabled={there.has(chosen.key)}
            onClick={() => void drop()}
          >
            <Icon name="plus" /> {t('instructor.drop.do')}
          </button>
          <p class="small">{t('instructor.drop.quiet')}</p>
        </div>
      )}
    </section>
  );
}

/** What can be dropped into the unit of the call, asked once for each call. */
function useDroppable(link: Link, callId: string): readonly Droppable[] {
  const [faults, setFaults] = useState<readonly Droppable[]>([]);
  useEffect(() => {
    let gone = false;
    void link.ask({ kind: 'droppable', callId }).then((answer) => {
      if (!gone && answer.kind === 'droppable') setFaults(answer.faults);
    });
    return () => {
      gone = true;
    };
  }, [link, callId]);
  return faults;
}
