import '../css/progress.css';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Advice } from '../../calls/coach.ts';
import type { Message } from '../../service/message.ts';
import { useDesk } from '../desk.ts';
import { coach, type Headway, startExpert } from '../expert.ts';
import { Icon } from '../icons.tsx';
import type { OpenCall } from '../protocol.ts';
import { Said } from '../screen.tsx';
import type { Link } from './link.ts';

interface Props {
  readonly call: OpenCall;
  readonly link: Link;
}

/** What the trainee ticked and stated, and beside it, when asked, what their readings leave likely. */
export function Believe({ call, link }: Props) {
  const { t } = useDesk();
  const [wanted, setWanted] = useState(false);
  const belief = useBelief(link, call, wanted);
  return (
    <section class="card believe" aria-labelledby="believe">
      <h2 id="believe">{t('instructor.believe')}</h2>
      <ul class="ticked" aria-label={t('suspects.ticked')}>
        {call.ticked.map((one) => (
          <li key={one.id}>
            <Icon name="check" /> <Said message={one} />
          </li>
        ))}
        {call.ticked.length === 0 && <li class="none">{t('suspects.none')}</li>}
      </ul>
      {call.stated.length > 0 && (
        <p>
          <span class="label">{t('instructor.stated')}</span>{' '}
          {call.stated.map((one) => (
            <span key={JSON.stringify(one)} class="stated">
              <Said message={one} />
            </span>
          ))}
        </p>
      )}
      <h3>{t('instructor.belief')}</h3>
      {!wanted && (
        <>
          <p class="small">{t('instructor.belief.about')}</p>
          <button type="button" class="secondary" data-hand="belief" onClick={() => setWanted(true)}>
            {t('instructor.belief.ask')}
          </button>
        </>
      )}
      {wanted && <Belief {...belief} />}
    </section>
  );
}

interface BeliefState {
  readonly advice: Advice | null;
  readonly headway: Headway | null;
  readonly failed: Message | null;
}

function Belief({ advice, headway, failed }: BeliefState) {
  const { t } = useDesk();
  if (failed !== null) {
    return (
      <p>
        <Said message={failed} />
      </p>
    );
  }
  if (headway !== null || advice === null) {
    return (
      <p class="coach-ready small">
        <label for="belief-headway">{t('coach.ready')}</label>
        <progress id="belief-headway" max={headway?.of ?? 1} value={headway?.done ?? 0} />
      </p>
    );
  }
  const [hint] = advice.hints;
  if (advice.likely.length === 0 && hint?.id === 'hint.works-changed')
    return <p class="small">{t('instructor.belief.changed')}</p>;
  return (
    <ol class="belief">
      {advice.likely.map(({ name, chance }) => (
        <li key={JSON.stringify(name)}>
          <span>
            <Said message={name} />
          </span>
          <span class="time">{t('debrief.value', { v: { measure: 'share', value: chance } })}</span>
        </li>
      ))}
    </ol>
  );
}

/** An expert in a worker of its own, told of the call whenever the trainee did something in it; started once it is wanted. */
function useBelief(link: Link, call: OpenCall, wanted: boolean): BeliefState {
  const [advice, setAdvice] = useState<Advice | null>(null);
  const [headway, setHeadway] = useState<Headway | null>(null);
  const [failed, setFailed] = useState<Message | null>(null);
  const line = useRef<ReturnType<typeof coach>>(null);
  const { callId } = call;
  const deeds = call.deeds.length;
  useEffect(() => {
    if (!wanted) return;
    setAdvice(null);
    setFailed(null);
    line.current = coach(startExpert(), {
      headway: setHeadway,
      advice(next) {
        setAdvice(next);
        setHeadway(null);
      },
      failed: setFailed,
    });
    return () => {
      line.current?.close();
      line.current = null;
    };
  }, [wanted, callId]);
  useEffect(() => {
    if (!wanted) return;
    let gone = false;
    void link.ask({ kind: 'saved', callId }).then((answer) => {
      if (!gone && answer.kind === 'saved') line.current?.tell(answer.saved);
    });
    return () => {
      gone = true;
    };
  }, [link, callId, wanted, deeds]);
  return { advice, headway, failed };
}
