import type { TraineeSheet } from '../../share/sheets.ts';
import { useDesk } from '../desk.ts';
import { Heading, Said } from './heading.tsx';

/** Lines to write on: as many as leave a page its foot. */
const BY_PHONE = 6;
const ON_SITE = 12;

/** What is known when the phone rings, and room for what is found. */
export function TraineePaper({ sheet }: { sheet: TraineeSheet }) {
  const { t } = useDesk();
  return (
    <>
      <Heading sheet={sheet} who="trainee" />
      <section>
        <h2>{t('sheet.said')}</h2>
        <Said said={sheet.said} />
      </section>
      <section>
        <Lines title={t('sheet.phone')} rows={BY_PHONE} />
        <Lines title={t('sheet.site')} rows={ON_SITE} />
      </section>
      <section class="answers">
        {(['suspects.title', 'sheet.decision', 'sheet.cause', 'sheet.mended', 'sheet.told'] as const).map((key) => (
          <p key={key}>
            <span>{t(key)}</span>
          </p>
        ))}
      </section>
      <ul class="rules">
        {(['start.licence.1', 'start.licence.2', 'start.licence.3', 'start.licence.4'] as const).map((key) => (
          <li key={key}>{t(key)}</li>
        ))}
      </ul>
    </>
  );
}

function Lines({ title, rows }: { title: string; rows: number }) {
  const { t } = useDesk();
  return (
    <table>
      <caption>{title}</caption>
      <thead>
        <tr>
          <th scope="col" class="when">
            {t('notes.time')}
          </th>
          <th scope="col">{t('notes.what')}</th>
          <th scope="col">{t('notes.reading')}</th>
        </tr>
      </thead>
      <tbody>
        {Array.from({ length: rows }, (_, row) => (
          <tr key={row}>
            <td />
            <td />
            <td />
          </tr>
        ))}
      </tbody>
    </table>
  );
}
