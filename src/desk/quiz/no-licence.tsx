import { useDesk } from '../desk.ts';
import { CautionSign } from '../icons.tsx';

/** What passing here does not say. */
export function NoLicence() {
  const { t } = useDesk();
  return (
    <section class="caution-card" aria-labelledby="quiz-licence">
      <h2 id="quiz-licence">
        <CautionSign /> {t('quiz.licence')}
      </h2>
      <p>{t('quiz.licence.text')}</p>
    </section>
  );
}
