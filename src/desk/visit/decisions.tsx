import type { VisitView } from '../../calls/view.ts';
import '../css/visit.css';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { writeRoute } from '../routes.ts';
import { Said } from '../screen.tsx';

interface Props {
  readonly visit: VisitView;
  /** Of a record on the shelf: its service record can be printed. */
  readonly recordKey: number | undefined;
}

/** What the record decided, each with what the simulation and the rules say of it. */
export function Decisions({ visit, recordKey }: Props) {
  const { t } = useDesk();
  return (
    <section class="card decisions" aria-labelledby="decisions-title">
      <h2 id="decisions-title">{t('visit.decisions')}</h2>
      <ul>
        {visit.decisions.map((one) => (
          <li key={one.id}>
            <Icon name={one.right ? 'check' : 'cross'} />
            <p>
              <strong>
                <Said message={one.label} />
              </strong>{' '}
              <span class={one.right ? 'good' : 'bad'}>{t(one.right ? 'visit.right' : 'visit.wrong')}</span>
              <span class="reason">
                <Said message={one.reason} />
              </span>
            </p>
          </li>
        ))}
      </ul>
      <p class="small">{t('visit.decisions.about')}</p>
      {recordKey !== undefined && (
        <a class="secondary" href={writeRoute({ screen: 'record', key: recordKey })}>
          <Icon name="sheet" /> {t('visit.print')}
        </a>
      )}
    </section>
  );
}
