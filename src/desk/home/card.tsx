import '../css/printed.css';
import { Bar } from '../bar.tsx';
import { useDesk } from '../desk.ts';
import { CautionSign } from '../icons.tsx';
import { ScreenTitle } from '../screen.tsx';

const NUMBERS = ['service', 'night', 'power', 'county', 'danger'] as const;

/** One page to hang by the control box. */
export function AlarmCard() {
  const { t } = useDesk();
  return (
    <div class="printed home-printed">
      <Bar subtitle={t('home.go.card')} />
      <main>
        <div class="buttons not-on-paper">
          <button type="button" class="primary" onClick={() => print()}>
            {t('home.card.print')}
          </button>
          <a class="secondary" href="#/home">
            {t('home.card.back')}
          </a>
        </div>
        <p class="small not-on-paper">{t('home.card.lead')}</p>
        <article class="paper home-card">
          <ScreenTitle>{t('home.card')}</ScreenTitle>
          <section>
            <h2>{t('home.card.do')}</h2>
            <ol>
              {([1, 2, 3, 4, 5, 6] as const).map((n) => (
                <li key={n}>{t(`home.card.do.${n}`)}</li>
              ))}
            </ol>
          </section>
          <section class="home-card-never">
            <h2>
              <CautionSign /> {t('home.card.never')}
            </h2>
            <ul>
              {([1, 2, 3, 4, 5] as const).map((n) => (
                <li key={n}>{t(`home.card.never.${n}`)}</li>
              ))}
            </ul>
          </section>
          <section>
            <h2>{t('home.card.call')}</h2>
            <div class="home-numbers">
              {NUMBERS.map((id) => (
                <p key={id}>{t(`home.card.call.${id}`)}</p>
              ))}
            </div>
          </section>
          <section>
            <h2>{t('home.card.noticed')}</h2>
            <div class="home-lines" aria-hidden="true">
              <p />
              <p />
              <p />
            </div>
          </section>
          <p class="small">{t('home.card.foot')}</p>
        </article>
      </main>
    </div>
  );
}
