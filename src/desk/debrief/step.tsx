import type { CauseShift, StepReviewView } from '../../calls/lesson.ts';
import { formatClock } from '../../words/measure.ts';
import { type Desk, useDesk } from '../desk.ts';
import { Icon, type IconName } from '../icons.tsx';
import { Said } from '../screen.tsx';

const FINDINGS = {
  best: 'check',
  'told-nothing': 'minus',
  'too-early': 'flag',
  'against-evidence': 'flag',
} as const satisfies Record<NonNullable<StepReviewView['finding']>, IconName>;

/** Regret, minutes, that is shown as none; and bits that are worth a line where none were expected. */
const NONE = 0.5;
const LEAST_bits = 0.05;

interface Props {
  readonly step: StepReviewView;
  readonly startOfDay_ms: number;
  readonly open: boolean;
  readonly onFlip: () => void;
  readonly onShow: () => void;
}

/** One step: a line that says what it was worth, and under it what was seen, what that meant, and the causes' chances. */
export function Step({ step, startOfDay_ms, open, onFlip, onShow }: Props) {
  const { t } = useDesk();
  const { finding, regret_min } = step;
  return (
    <li>
      <details class={`step ${finding ?? ''}`} open={open}>
        {/* biome-ignore lint/a11y/noStaticElementInteractions: a summary is a button by itself */}
        <summary
          onClick={(event) => {
            event.preventDefault();
            onFlip();
          }}
        >
          <span class="time">{formatClock((step.at_ms - startOfDay_ms) / 1000)}</span>
          <span class="step-label">
            <Said message={step.label} />
          </span>
          <span class="step-finding">
            {finding !== undefined && (
              <>
                <Icon name={FINDINGS[finding]} /> {t(`finding.${finding}`)}
              </>
            )}
          </span>
          <span class="step-regret">
            {regret_min !== undefined && regret_min >= NONE && t('steps.regret.of', { m: inMinutes(regret_min) })}
          </span>
        </summary>
        <div class="step-body">
          <div>
            {step.seen.map((one, index) => (
              <p key={`${one.id}${index}`} class="step-seen">
                <Said message={one} />
              </p>
            ))}
            {step.lesson.map((one) => (
              <p key={one.id}>
                <Said message={one} />
              </p>
            ))}
            <Worth step={step} />
            <button type="button" class="secondary small-button" onClick={onShow}>
              <Icon name="play" /> {t('steps.show')}
            </button>
          </div>
          <Causes causes={step.causes} />
        </div>
      </details>
    </li>
  );
}

/** Bits and minutes, and the best there was. */
function Worth({ step }: { step: StepReviewView }) {
  const desk = useDesk();
  const { t } = desk;
  const { expected_bits, brought_bits, regret_min, best, finding } = step;
  const b = bits(brought_bits);
  const told = expected_bits !== undefined || Math.abs(brought_bits) >= LEAST_bits;
  return (
    <dl class="step-worth">
      {told && (
        <div>
          <dt>{t('steps.bits')}</dt>
          <dd>
            {expected_bits === undefined
              ? t('steps.bits.brought', { b })
              : t('steps.bits.both', { a: bits(expected_bits), b })}
          </dd>
        </div>
      )}
      {regret_min !== undefined && (
        <div>
          <dt>{t('steps.regret')}</dt>
          <dd>{regret_min < NONE ? t('steps.regret.none') : t('call.minutes', { m: inMinutes(regret_min) })}</dd>
        </div>
      )}
      {best !== undefined && (
        <div>
          <dt>{t('steps.best')}</dt>
          <dd>{finding === 'best' ? t('steps.best.itself') : <Said message={best} />}</dd>
        </div>
      )}
    </dl>
  );
}

/** The likeliest causes with their chance before, hatched, and after, solid; the numbers say the same. */
function Causes({ causes }: { causes: readonly CauseShift[] }) {
  const desk = useDesk();
  const { t } = desk;
  return (
    <table class="step-causes">
      <thead class="vh">
        <tr>
          <th scope="col">{t('steps.cause')}</th>
          <th scope="col">{t('steps.chance')}</th>
        </tr>
      </thead>
      <tbody>
        {causes.map((one, index) => (
          <tr key={`${one.name.id}${index}`}>
            <th scope="row">
              <span class="step-cause">
                <Said message={one.name} />
                {one.ticked && (
                  <span class="step-ticked">
                    <Icon name="check" />
                    <span class="vh">({t('steps.ticked')})</span>
                  </span>
                )}
              </span>
              <span class="belief" aria-hidden="true">
                <span class="belief-bar before" style={{ width: width(one.before) }} />
                <span class="belief-bar after" style={{ width: width(one.after) }} />
              </span>
            </th>
            <td>{t('steps.shift', { a: percent(desk, one.before), b: percent(desk, one.after) })}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function width(chance: number): string {
  return `${Math.round(1000 * chance) / 10}%`;
}

const LEAST_SHOWN = 0.01;

function percent({ t, speak }: Desk, value: number): string {
  if (value < LEAST_SHOWN) return t('steps.under');
  return speak.value({ id: 'word.quantity', values: { q: { measure: 'share', value } } });
}

function bits(value: number) {
  return { measure: 'count', value, resolution: 0.1 } as const;
}

export function inMinutes(value: number) {
  return { measure: 'duration_min', value, resolution: 1 } as const;
}
