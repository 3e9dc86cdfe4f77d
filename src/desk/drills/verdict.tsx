import type { Checked } from '../../quiz/drill.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';

interface Props {
  readonly checked: Checked | null;
  /** Nothing was answered: what is told then is why the right answer is right. */
  readonly blank?: boolean;
}

/** What an answer was worth, and why. */
export function Verdict({ checked, blank = false }: Props) {
  const { t } = useDesk();
  const mark = blank ? 'blank' : checked?.right ? 'right' : 'wrong';
  return (
    <div class="drill-why" role="status">
      {checked !== null && (
        <div class={mark === 'right' ? 'told right' : 'told wrong'}>
          <p class="strong">
            <Icon name={ICONS[mark]} /> {t(`drills.${mark}`)}
          </p>
          <p>
            <Said message={checked.why} />
          </p>
        </div>
      )}
    </div>
  );
}

const ICONS = { right: 'check', wrong: 'cross', blank: 'minus' } as const;
