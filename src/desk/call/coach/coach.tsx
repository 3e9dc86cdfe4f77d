import { useEffect, useRef, useState } from 'preact/hooks';
import type { Advice } from '../../../calls/coach.ts';
import { formatClock } from '../../../words/measure.ts';
import { useDesk } from '../../desk.ts';
import { Icon } from '../../icons.tsx';
import { Said } from '../../screen.tsx';
import '../../css/coach.css';
import '../../css/progress.css';
import { Next, NextInBrief, Way } from './next.tsx';
import { type CoachState, useCoach } from './use-coach.ts';

export { CoachDialogs } from './dialogs.tsx';

interface CardProps {
  /** Brings what is at hand on top where the cards share one place. */
  readonly onGo: () => void;
}

/**
 * A coach beside the call: hints when asked, the likely causes when asked, a word unasked where one goes round in circles. As
 * long as a guide leads, its next step stands there instead, and no expert is started.
 */
export function CoachCard({ onGo }: CardProps) {
  const desk = useDesk();
  const guide = desk.session.guide.value;
  const step = guide?.step;
  const coach = useCoach(desk, step === undefined);
  const word = desk.session.coachWord.value;
  const thinking = step === undefined && coach.thinking && coach.failed === null && coach.headway === null;
  const card = useRef<HTMLElement>(null);
  // What is new stands on top.
  useEffect(() => card.current?.scrollTo(0, 0), [word, coach.given, guide]);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region that the keyboard must reach
    <section ref={card} class="card coach" aria-labelledby="coach-title" tabIndex={0}>
      <header>
        <h2 id="coach-title">
          <Icon name="say" /> {desk.t('coach.title')}
        </h2>
        {step === undefined ? (
          <p class="small">{thinking && desk.t('coach.thinking')}</p>
        ) : (
          <Way step={step} onGo={onGo} />
        )}
      </header>
      <div role="status">
        {word !== null && (
          <p class="coach-unasked">
            <Said message={word} />
          </p>
        )}
        {step !== undefined && <Next step={step} />}
        {guide !== null && step === undefined && <p class="coach-hint">{desk.t('coach.led.yours')}</p>}
        {coach.given.slice(0, 1).map((one) => (
          <Hint key={one.key} given={one} />
        ))}
      </div>
      {step === undefined && (coach.failed === null ? <Asking coach={coach} /> : <Failed coach={coach} />)}
      {coach.advice !== null && <Likely advice={coach.advice} />}
      {coach.given.length > 1 && (
        <ul class="coach-before" aria-label={desk.t('coach.earlier')}>
          {coach.given.slice(1).map((one) => (
            <li key={one.key}>
              <Hint given={one} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

interface TabProps {
  readonly current: boolean;
  readonly onPick: () => void;
}

/** Brings the coach's card on top where the cards share one place, and shows that there is a word unasked. */
export function CoachTab({ current, onPick }: TabProps) {
  const desk = useDesk();
  return (
    <button type="button" aria-current={current} onClick={onPick}>
      <Icon name="say" />
      <span>{desk.t('coach.title')}</span>
      {desk.session.coachWord.value !== null && (
        <span class="badge">
          ! <span class="vh">{desk.t('coach.calls')}</span>
        </span>
      )}
    </button>
  );
}

/** The word unasked, and the step that a guide leads to, for where the coach's card is out of sight. */
export function CoachWord({ wanted }: { wanted: boolean }) {
  const desk = useDesk();
  const word = wanted ? desk.session.coachWord.value : null;
  const step = wanted ? desk.session.guide.value?.step : undefined;
  return (
    <div class="coach-word" role="status">
      {step !== undefined && <NextInBrief step={step} />}
      {word !== null && (
        <p>
          <Icon name="say" />
          <span>
            <span class="label">{desk.t('coach.title')}:</span> <Said message={word} />
          </span>
        </p>
      )}
    </div>
  );
}

function Hint({ given }: { given: CoachState['given'][number] }) {
  return (
    <p class="coach-hint">
      <span class="time">{formatClock(given.secondOfDay)}</span>
      <Said message={given.hint} />
    </p>
  );
}

/** The next hint, and what it waits for. How many there are is not told. */
function Asking({ coach }: { coach: CoachState }) {
  const { t } = useDesk();
  const { headway, may, given } = coach;
  if (headway !== null) {
    return (
      <p class="coach-ready small">
        <label for="coach-headway">{t('coach.ready')}</label>
        <progress id="coach-headway" max={headway.of} value={headway.done} />
      </p>
    );
  }
  const ready = coach.advice !== null && !coach.thinking && may === 'now';
  return (
    <div class="coach-ask">
      <button
        type="button"
        class="secondary"
        data-coach="hint"
        aria-disabled={!ready}
        aria-describedby="coach-why"
        onClick={coach.ask}
      >
        {t(given.length === 0 ? 'coach.hint' : 'coach.plainer')}
      </button>
      <p id="coach-why" class="small">
        {may === 'act-first' && t('coach.actFirst')}
        {may === 'wait' && t('coach.wait')}
      </p>
    </div>
  );
}

function Failed({ coach }: { coach: CoachState }) {
  const { t } = useDesk();
  return (
    <div class="coach-failed" role="alert">
      <p>
        {t('coach.failed')} {coach.failed !== null && <Said message={coach.failed} />}
      </p>
      <button type="button" class="secondary" onClick={coach.retry}>
        <Icon name="again" /> {t('coach.retry')}
      </button>
    </div>
  );
}

/** The causes still likely, shown on request. */
function Likely({ advice }: { advice: Advice }) {
  const desk = useDesk();
  const [open, setOpen] = useState(false);
  const show = () => {
    setOpen(!open);
    if (!open && !desk.session.assistance.value.likely) void desk.session.help({ likely: true });
  };
  return (
    <div class="coach-likely">
      <button type="button" class="quiet" aria-expanded={open} data-coach="likely" onClick={show}>
        <span class="twist" aria-hidden="true" /> {desk.t('coach.likely')}
      </button>
      {open && (
        <>
          <table>
            <caption class="vh">{desk.t('coach.likely')}</caption>
            <tbody>
              {advice.likely.map(({ name, chance }, index) => (
                <tr key={`${name.id}${index}`}>
                  <th scope="row">
                    <Said message={name} />
                    <meter class="chance" max={1} value={chance} aria-hidden="true" />
                  </th>
                  <td>
                    {desk.speak.value({ id: 'word.quantity', values: { q: { measure: 'share', value: chance } } })}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
          <p class="small">{desk.t('coach.likely.note')}</p>
        </>
      )}
    </div>
  );
}
