import type { Json } from '../../build/draft.ts';
import { lengthAt } from '../../build/draft.ts';
import { stepOf } from '../../build/steps.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';
import { ProblemLine, Problems, StepTitle } from './fields.tsx';
import { useBuild } from './state.ts';

/** The reference: what every score is measured by. The expert can write it. */
export function SolutionStep() {
  const { t } = useDesk();
  const build = useBuild();
  const { proving, looked } = build;
  const steps = looked?.steps ?? [];
  const n = lengthAt(build.draft, 'solution');
  const elsewhere = (looked?.problems ?? []).filter(
    ({ path }) => stepOf(path) === 'proof' && !path.startsWith('solution'),
  );
  const solve = () =>
    proving.begin('solve', build.draft, (ended) => {
      if (ended.kind === 'solved') build.set('solution', ended.steps as unknown as Json);
    });
  return (
    <section class="card step" aria-labelledby="step-title">
      <StepTitle id="build.step.proof" />
      <p>{t('build.solution.help')}</p>
      {elsewhere.length > 0 && (
        <>
          <h3>{t('build.elsewhere')}</h3>
          <ul class="mends">
            {elsewhere.map((one) => (
              <li key={`${one.path} ${one.message}`}>
                <ProblemLine problem={one} where />
                {one.message === 'unknown key' && (
                  <button type="button" class="secondary" onClick={() => build.set(one.path, undefined)}>
                    <Icon name="cross" /> {t('build.key.out')}
                  </button>
                )}
              </li>
            ))}
          </ul>
        </>
      )}
      <button
        type="button"
        class="secondary"
        data-solve
        aria-disabled={proving.running !== null}
        onClick={() => proving.running === null && solve()}
      >
        <Icon name="again" /> {t(n === 0 ? 'build.solve' : 'build.solve.again')}
      </button>
      <Problems path="solution" />
      <ol class="solution">
        {steps.map((step, i) => (
          <li key={i}>
            <span>
              <Said message={step} />
            </span>
            <button type="button" class="quiet" onClick={() => build.set(`solution[${i}]`, undefined)}>
              <Icon name="cross" />
              <span class="vh">{t('build.solution.out', { n: i + 1 })}</span>
            </button>
            <Problems path={`solution[${i}]`} own={false} />
          </li>
        ))}
      </ol>
    </section>
  );
}
