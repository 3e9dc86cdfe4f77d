import { useDesk } from '../desk.ts';
import { HowFar, told } from './how-far.tsx';
import type { Regret } from './use-regret.ts';

const SAYS = {
  running: 'class.regret.of',
  stopped: 'class.regret.stopped',
  failed: 'class.regret.failed',
  done: 'class.regret.done',
} as const;
const ACT = { running: 'class.cancel', stopped: 'class.regret.on', failed: 'steps.retry' } as const;

/** Of how many records the regret is known, and a button to stop that and to have it go on. */
export function RegretSoFar({ regret: { known, of, state, stop, goOn } }: { readonly regret: Regret }) {
  const { t } = useDesk();
  const counts = { done: known, of };
  const heard = state === 'running' ? told(counts) : known;
  return (
    <div class="class-regret">
      {state !== 'done' && (
        <HowFar
          {...counts}
          says={t(SAYS[state], { n: known, m: of })}
          act={t(ACT[state])}
          onAct={state === 'running' ? stop : goOn}
        />
      )}
      <p role="status" class={state === 'done' ? 'small' : 'vh'}>
        {t(SAYS[state], { n: heard, m: of })}
      </p>
      {state !== 'done' && <p class="small">{t('class.regret.about')}</p>}
    </div>
  );
}
