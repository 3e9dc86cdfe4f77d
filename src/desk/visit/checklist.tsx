import type { RowView } from '../../calls/view.ts';
import '../css/visit.css';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';

/** The lines of a routine visit: what was read of each, and what is still open. */
export function Checklist({ rows }: { rows: readonly RowView[] }) {
  const { t } = useDesk();
  const taken = rows.reduce((sum, row) => sum + row.taken, 0);
  const wanted = rows.reduce((sum, row) => sum + row.wanted, 0);
  return (
    <section class="checklist" aria-labelledby="checklist-title">
      <h3 id="checklist-title">
        {t('visit.checklist')} <span class="small">{t('visit.taken', { n: taken, of: wanted })}</span>
      </h3>
      <p class="small">{t('visit.checklist.about')}</p>
      <ol>
        {rows.map((row) => (
          <li key={row.id} class={row.taken === row.wanted ? 'done' : row.taken > 0 ? 'begun' : ''}>
            <span class="row-mark" aria-hidden="true">
              {row.taken === row.wanted && <Icon name="check" />}
            </span>
            <span>
              <Said message={row.label} />
              <span class="vh"> ({t('visit.taken', { n: row.taken, of: row.wanted })})</span>
              {row.open.length > 0 && (
                <span class="row-open">
                  {row.open.map((one, index) => (
                    <span key={`${one.id}${index}`}>
                      {index > 0 && ' · '}
                      <Said message={one} />
                    </span>
                  ))}
                </span>
              )}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}
