import type { TrainerSheet } from '../../share/sheets.ts';
import { formatMoment } from '../../words/calendar.ts';
import { formatClock } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import { Heading, Said } from './heading.tsx';

/** What is wrong, what the household says, and the way through the call. */
export function TrainerPaper({ sheet }: { sheet: TrainerSheet }) {
  const desk = useDesk();
  const { t, local } = desk;
  const speak = desk.speak.value;
  const soon = sheet.urgency.map((id) => t(`urgency.${id}`)).join(' / ');
  const decided = sheet.decision === 'close' ? t('sheet.close') : t('sheet.visit', { when: soon });
  const expected = sheet.kind === 'visit' ? t('sheet.routine') : decided;
  return (
    <>
      <Heading sheet={sheet} who="trainer" />
      <section>
        <h2>{t('sheet.wrong')}</h2>
        <ul class="causes">
          {sheet.causes.map(({ fault, since }) => (
            <li key={speak(fault)}>{t('sheet.since', { fault, when: formatMoment(desk.words.value, since) })}</li>
          ))}
        </ul>
        <p>
          <strong>{t('sheet.story')}:</strong> {local(sheet.story)}
        </p>
      </section>
      <section>
        <h2>{t('sheet.household')}</h2>
        <Said said={sheet.said} />
        <p>
          <strong>{t('sheet.history')}</strong> {local(sheet.history)}
        </p>
        <p>
          <strong>{t('sheet.use')}</strong> {local(sheet.use)}
        </p>
      </section>
      <section>
        <h2>{t('sheet.expected')}</h2>
        <p>
          {expected} {t('sheet.pass', { n: sheet.pass })}
        </p>
      </section>
      <section>
        <h2>{t('sheet.path')}</h2>
        <ol class="path">
          {sheet.path.map(({ at, what, minutes }) => (
            <li key={`${at.day} ${at.secondOfDay} ${what.id}`}>
              <span class="time">{formatClock(at.secondOfDay)}</span>{' '}
              {t('sheet.step', { what, m: { measure: 'duration_min', value: minutes } })}
            </li>
          ))}
        </ol>
        {sheet.stopped !== undefined && <p class="bad">{t('sheet.stopped', { why: sheet.stopped })}</p>}
      </section>
      <section>
        <h2>{t('sheet.cautions')}</h2>
        <ul class="rules">
          {sheet.cautions.map((caution) => (
            <li key={caution.id}>{speak(caution)}</li>
          ))}
        </ul>
      </section>
    </>
  );
}
