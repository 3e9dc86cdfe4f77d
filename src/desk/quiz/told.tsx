import type { Drill } from '../../quiz/drill.ts';
import { useDesk } from '../desk.ts';
import type { Given } from '../drills/use-round.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';
import { unitBy } from './units.ts';

interface Props {
  readonly drill: Drill;
  readonly unit: string;
  readonly given: Given;
  /** Nothing was answered. */
  readonly blank?: boolean;
}

/** What an answer was worth, why, and where that is from. */
export function Told({ drill, unit, given, blank = false }: Props) {
  const { t, local } = useDesk();
  const spec = unitBy(unit);
  return (
    <>
      <div class={given.right ? 'told right' : 'told wrong'}>
        <p class="strong">
          <Icon name={given.right ? 'check' : blank ? 'minus' : 'cross'} />{' '}
          {t(given.right ? 'drills.right' : blank ? 'quiz.told.blank' : 'drills.wrong')}
        </p>
        <p>
          <Said message={given.why} />
        </p>
      </div>
      <p class="small">
        {t('quiz.source', { unit: spec === undefined ? unit : local(spec.name), id: `${drill.skill} ${drill.seed}` })}
      </p>
    </>
  );
}
