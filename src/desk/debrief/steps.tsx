import { useState } from 'preact/hooks';
import type { StepReviewView } from '../../calls/lesson.ts';
import type { TogetherView } from '../../calls/together.ts';
import { regretIn } from '../../records/regret.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';
import '../css/progress.css';
import '../css/steps.css';
import { inMinutes, Step } from './step.tsx';
import type { ReviewState } from './use-review.ts';

interface Props {
  readonly review: ReviewState;
  readonly startOfDay_ms: number;
  readonly onShow: (at_ms: number) => void;
}

/** Every step at which something was to be chosen, and what it was worth by what could be known then. */
export function Steps({ review, startOfDay_ms, onShow }: Props) {
  const { t } = useDesk();
  const { steps, state } = review;
  const weighed = steps.filter((one) => one.weighed);
  const total = regretIn(steps);
  const [flipped, setFlipped] = useState<ReadonlySet<number>>(new Set());
  const first = state === 'done' ? dearest(weighed)?.step : undefined;
  const flip = (step: number) => {
    const next = new Set(flipped);
    if (!next.delete(step)) next.add(step);
    setFlipped(next);
  };
  return (
    <section class="card steps" aria-labelledby="steps-title">
      <header>
        <h2 id="steps-title">{t('steps.title')}</h2>
        <ul class="steps-key" aria-hidden="true">
          <li class="before">{t('steps.before')}</li>
          <li class="after">{t('steps.after')}</li>
          <li>
            <Icon name="check" /> {t('steps.ticked')}
          </li>
        </ul>
        {state === 'done' && (
          <p class="steps-total">
            {t('steps.total')} <strong>{t('call.minutes', { m: inMinutes(total) })}</strong>
          </p>
        )}
      </header>
      <p class="small steps-about">{t('steps.about')}</p>
      <ol>
        {weighed.map((one) => (
          <Step
            key={one.step}
            step={one}
            startOfDay_ms={startOfDay_ms}
            open={flipped.has(one.step) !== (one.step === first)}
            onFlip={() => flip(one.step)}
            onShow={() => onShow(one.at_ms)}
          />
        ))}
      </ol>
      {review.together !== null && <Together together={review.together} />}
      <State review={review} weighed={weighed.length} />
    </section>
  );
}

/** The readings that between them leave fewest causes, and what is left. */
function Together({ together: { of, readings, end } }: { together: TogetherView }) {
  const { t } = useDesk();
  return (
    <div class="together">
      <h3>{t('together.title')}</h3>
      {readings.length > 0 && (
        <>
          <p class="small">{t('together.about', { n: of })}</p>
          <ol>
            {readings.map(({ seen, left }, i) => (
              <li key={i}>
                <Said message={seen} />
                <span class="left">{t('together.left', { n: left })}</span>
              </li>
            ))}
          </ol>
        </>
      )}
      <p>
        <Said message={end} />
      </p>
    </div>
  );
}

/** How far the working out has come, in words that a screen reader says once, or what became of it. */
function State({ review, weighed }: { review: ReviewState; weighed: number }) {
  const { t } = useDesk();
  const { state, headway } = review;
  if (state === 'failed') {
    return (
      <div class="steps-failed" role="alert">
        <p>{t('steps.failed')}</p>
        <button type="button" class="secondary" onClick={review.retry}>
          <Icon name="again" /> {t('steps.retry')}
        </button>
      </div>
    );
  }
  const working = headway?.at === 'steps' ? 'steps.working' : 'steps.causes';
  const done = weighed === 0 ? t('steps.none') : t('steps.done', { n: weighed });
  return (
    <div class="steps-state">
      <p role="status" id="steps-state" class="small">
        {state === 'working' ? t(working) : done}
      </p>
      {state === 'working' && (
        <progress
          aria-labelledby="steps-state"
          {...(headway === null ? {} : { max: headway.of, value: headway.done })}
        />
      )}
    </div>
  );
}

/** The step that cost most over the best: the first to look at. */
function dearest(steps: readonly StepReviewView[]): StepReviewView | undefined {
  const regret = (one: StepReviewView) => one.regret_min ?? 0;
  return steps.reduce<StepReviewView | undefined>(
    (most, one) => (most === undefined || regret(one) > regret(most) ? one : most),
    undefined,
  );
}
