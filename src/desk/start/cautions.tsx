import { useDesk } from '../desk.ts';
import { CautionSign } from '../icons.tsx';

/** For whoever came here because the lamp is lit: nothing to learn first, only where the card is. */
export function AlarmCard() {
  const { t } = useDesk();
  return (
    <section class="card alarm-card" aria-labelledby="alarm-title">
      <h2 id="alarm-title">
        <svg class="lit-lamp" viewBox="0 0 44 44" aria-hidden="true" focusable="false">
          <circle class="glow" cx="22" cy="22" r="19" />
          <circle cx="22" cy="22" r="11" />
        </svg>
        {t('start.alarm')}
      </h2>
      <p>{t('start.alarm.1')}</p>
      <p class="bad strong">{t('start.alarm.2')}</p>
      <a class="secondary" href="#/home/card">
        {t('start.alarm.open')}
      </a>
    </section>
  );
}

/** What practice here is not, and what comes before it. */
export function LicenceCard() {
  const { t } = useDesk();
  return (
    <section class="caution-card" aria-labelledby="not-a-licence">
      <h2 id="not-a-licence">
        <CautionSign /> {t('start.licence.title')}
      </h2>
      <ul>
        {([1, 2, 3, 4] as const).map((n) => (
          <li key={n}>{t(`start.licence.${n}`)}</li>
        ))}
      </ul>
      <p class="strong">{t('start.licence.gate')}</p>
    </section>
  );
}
