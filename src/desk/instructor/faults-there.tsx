import { useState } from 'preact/hooks';
import type { FaultThere } from '../../calls/hood.ts';
import { TEACH } from '../../calls/teach-ids.ts';
import { useDesk } from '../desk.ts';
import type { OpenCall } from '../protocol.ts';
import { Said } from '../screen.tsx';
import type { Hands } from './hands.ts';
import { hoursOf, RampField } from './ramp.tsx';

interface Props {
  readonly call: OpenCall;
  readonly hands: Hands;
}

/** The faults that are there, how far they have come, and the way to take them out. */
export function FaultsThere({ call: { callId, faults }, hands }: Props) {
  const { t } = useDesk();
  const [ramp, setRamp] = useState({ over: false, hours: '1' });
  return (
    <section class="card faults-there" aria-labelledby="faults-there">
      <h2 id="faults-there">{t('instructor.faults')}</h2>
      {faults.length === 0 && <p class="small">{t('instructor.faults.none')}</p>}
      <ul>
        {faults.map((fault) => (
          <li key={fault.key}>
            <p>
              <Said message={fault.name} />
              <span class="small">
                <HowFar fault={fault} />
              </span>
            </p>
            {fault.removable && (
              <button
                type="button"
                class="secondary small-button"
                data-out={fault.key}
                onClick={() => void hands.teach(callId, TEACH.faultOut, { fault: fault.key, ramp_h: hoursOf(ramp) })}
              >
                {t('instructor.fault.out')}
                <span class="vh">
                  : <Said message={fault.name} />
                </span>
              </button>
            )}
          </li>
        ))}
      </ul>
      {faults.some(({ removable }) => removable) && <RampField name="out" ramp={ramp} onRamp={setRamp} />}
    </section>
  );
}

/** "60 % of 80 %, growing · dropped in". */
function HowFar({ fault: { severity, full, way, droppedIn } }: { fault: FaultThere }) {
  const { t } = useDesk();
  const share = (value: number) => ({ measure: 'share', value }) as const;
  return (
    <>
      {t(`instructor.way.${way}`, { now: share(severity), full: share(full) })} ·{' '}
      {t(droppedIn ? 'instructor.fault.dropped' : 'instructor.fault.own')}
    </>
  );
}
