import type { Checked, Drill } from '../../quiz/drill.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';

interface Props {
  readonly drill: Drill;
  readonly checked: Checked | null;
  /** Nothing was answered: what is told then is why the right answer is right. */
  readonly blank?: boolean;
}

/** What an answer was worth and why; then the worked solution, and where rule and numbers come from. */
export function Verdict({ drill, checked, blank = false }: Props) {
  const { t } = useDesk();
  const mark = blank ? 'blank' : checked?.right ? 'right' : 'wrong';
  const worked = drill.ask.kind === 'number' ? drill.ask.worked : [];
  return (
    <>
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
      {checked !== null && (
        <div class="drill-ground">
          {worked.length > 0 && (
            <>
              <h3>{t('drills.worked')}</h3>
              <ol class="worked">
                {worked.map((line, i) => (
                  <li key={i}>
                    <Said message={line} />
                  </li>
                ))}
              </ol>
            </>
          )}
          <p class="small drill-source">
            {t('drills.source')}: <Said message={drill.source} />
          </p>
        </div>
      )}
    </>
  );
}

const ICONS = { right: 'check', wrong: 'cross', blank: 'minus' } as const;
