import type { GuideStep } from '../../../calls/guide.ts';
import { useDesk } from '../../desk.ts';
import { Icon } from '../../icons.tsx';
import { Said } from '../../screen.tsx';

interface Props {
  readonly step: GuideStep;
}

/** The step that a guide leads to: a question to oneself first, where it is a check, then what, where and why. */
export function Next({ step }: Props) {
  const { t } = useDesk();
  return (
    <div class="coach-led">
      {step.question !== undefined && (
        <p class="coach-question">
          <Said message={step.question} />
        </p>
      )}
      <p>
        <span class="label">{t('coach.led')}:</span>{' '}
        <strong class="coach-led-step">
          <Said message={step.label} />
        </strong>{' '}
        <span class="coach-led-part">
          (<Said message={step.where} />)
        </span>
      </p>
      {step.answers.length > 0 && (
        <dl>
          {step.answers.map(({ field, chosen }) => (
            <div key={field.id}>
              <dt>
                <Said message={field} />
              </dt>
              {chosen.map((one, index) => (
                <dd key={`${one.id}${index}`}>
                  <Said message={one} />
                </dd>
              ))}
            </div>
          ))}
        </dl>
      )}
      <p class="coach-led-why">
        <Said message={step.why} />
      </p>
    </div>
  );
}

/** The same in a line, for where the coach's card is out of sight. */
export function NextInBrief({ step }: Props) {
  const { t } = useDesk();
  return (
    <p class="led">
      <Icon name="say" />
      <span>
        <span class="label">{t('coach.led')}:</span> <Said message={step.label} /> (<Said message={step.where} />)
      </span>
    </p>
  );
}

/** The way to the step's part, where another one is at hand. */
export function Way({ step, onGo }: Props & { readonly onGo: () => void }) {
  const desk = useDesk();
  const { session } = desk;
  if (session.part.value === step.part) return null;
  const go = () => {
    session.select(step.part);
    onGo();
    document.getElementById(`part-${step.part}`)?.focus();
  };
  return (
    <button type="button" class="secondary coach-way" onClick={go}>
      {desk.t('coach.led.go', { part: step.where })}
    </button>
  );
}
