import type { RowView, VisitView } from '../../calls/view.ts';
import '../css/printed.css';
import '../css/visit.css';
import { serviceRecordCsv, serviceRecordJson } from '../../records/service-record.ts';
import { formatClock } from '../../words/measure.ts';
import { Bar } from '../bar.tsx';
import { useDebrief } from '../debrief/load.ts';
import { useDesk } from '../desk.ts';
import { handOver, handOverText } from '../hand-over.ts';
import { writeRoute } from '../routes.ts';
import { Said, ScreenTitle } from '../screen.tsx';

/** The service record of a finished visit on one sheet of paper, and as files. */
export function RecordScreen({ recordKey }: { recordKey: number }) {
  const desk = useDesk();
  const { t } = desk;
  const debrief = useDebrief(desk, recordKey);
  const visit = debrief?.visit;
  return (
    <div class="printed">
      <Bar subtitle={t('visit.print')} />
      <main>
        <div class="buttons not-on-paper">
          <button type="button" class="primary" disabled={!visit} onClick={() => print()}>
            {t('visit.print.do')}
          </button>
          {debrief && visit && (
            <>
              <button
                type="button"
                class="secondary"
                data-save="json"
                onClick={() =>
                  handOver(`${debrief.callId}.service-record.json`, serviceRecordJson(debrief.callId, visit))
                }
              >
                {t('visit.save.json')}
              </button>
              <button
                type="button"
                class="secondary"
                data-save="csv"
                onClick={() =>
                  handOverText(
                    `${debrief.callId}.service-record.csv`,
                    serviceRecordCsv(debrief.callId, visit),
                    'text/csv',
                  )
                }
              >
                {t('visit.save.csv')}
              </button>
            </>
          )}
          <a class="secondary" href={writeRoute({ screen: 'debrief', key: recordKey })}>
            {t('visit.back')}
          </a>
        </div>
        {visit && <Paper visit={visit} />}
        {debrief && !visit && <p>{t('visit.none')}</p>}
      </main>
    </div>
  );
}

function Paper({ visit }: { visit: VisitView }) {
  const { t, local } = useDesk();
  return (
    <article class="paper service-record">
      <header>
        <p class="label">
          {local(visit.lot)} · {local(visit.unit)}
        </p>
        <ScreenTitle>{t('visit.print')}</ScreenTitle>
        <p>
          <strong>
            <Said message={visit.day} /> · {formatClock(visit.visited.secondOfDay)}
          </strong>{' '}
          · {t('visit.last')} <Said message={visit.last} />
        </p>
      </header>
      <table>
        <caption>{t('visit.checklist')}</caption>
        <tbody>
          {visit.rows.map((row) => (
            <Line key={row.id} row={row} />
          ))}
        </tbody>
      </table>
      <section class="record-foot">
        <div>
          <h2>{t('visit.mends')}</h2>
          {visit.mends.length === 0 ? (
            <p>{t('visit.mends.none')}</p>
          ) : (
            <ul>
              {visit.mends.map((one, index) => (
                <li key={`${one.id}${index}`}>
                  <Said message={one} />
                </li>
              ))}
            </ul>
          )}
        </div>
        <div>
          <h2>{t('visit.written')}</h2>
          {visit.written.length === 0 ? (
            <p>{t('visit.unwritten')}</p>
          ) : (
            <dl>
              {visit.written.map(({ id, label, answers }) => (
                <div key={id}>
                  <dt>
                    <Said message={label} />
                  </dt>
                  <dd>
                    {answers.length === 0
                      ? t('visit.nothing')
                      : answers.map((one, index) => (
                          <span key={one.id}>
                            {index > 0 && '; '}
                            <Said message={one} />
                          </span>
                        ))}
                  </dd>
                </div>
              ))}
            </dl>
          )}
        </div>
      </section>
      <p class="signature">
        <span>{t('visit.signature')}</span>
        <span>{t(visit.signed ? 'visit.signed' : 'visit.unsigned')}</span>
      </p>
      <p class="small">{t('visit.practice')}</p>
    </article>
  );
}

/** One line of the checklist with its readings. */
function Line({ row }: { row: RowView }) {
  const { t } = useDesk();
  return (
    <tr>
      <th scope="row">
        <Said message={row.label} />
      </th>
      <td>
        {row.readings.map(({ what, reading, tone }, index) => (
          <span key={`${what.id}${index}`}>
            {index > 0 && '; '}
            <Said message={what} />:{' '}
            <span class={tone === 'off' ? 'off' : undefined}>
              <Said message={reading} />
            </span>
          </span>
        ))}
        {row.taken < row.wanted && (
          <span class="not-taken">
            {row.readings.length > 0 && '; '}
            {t('visit.not-taken', { n: row.wanted - row.taken })}
          </span>
        )}
      </td>
    </tr>
  );
}
