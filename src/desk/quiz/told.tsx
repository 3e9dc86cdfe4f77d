import type { Checked, Drill } from '../../quiz/drill.ts';
import { useDesk } from '../desk.ts';
import { Verdict } from '../drills/verdict.tsx';
import { unitBy } from './units.ts';

interface Props {
  readonly drill: Drill;
  readonly unit: string;
  readonly checked: Checked | null;
  /** Nothing was answered. */
  readonly blank?: boolean;
}

/** What an answer was worth, why, and where that is from. */
export function Told({ drill, unit, checked, blank = false }: Props) {
  const { t, local } = useDesk();
  const spec = unitBy(unit);
  return (
    <>
      <Verdict checked={checked} blank={blank} />
      {checked !== null && (
        <p class="small">
          {t('quiz.source', { unit: spec === undefined ? unit : local(spec.name), id: `${drill.skill} ${drill.seed}` })}
        </p>
      )}
    </>
  );
}

/** An id for the heading of a question, where several stand on one page. */
export function promptId({ skill, seed }: Drill): string {
  return `prompt-${skill}-${seed}`;
}
