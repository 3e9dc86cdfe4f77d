import '../css/find.css';
import { useEffect } from 'preact/hooks';
import { Bar } from '../bar.tsx';
import { useDesk } from '../desk.ts';
import { CautionSign, Icon } from '../icons.tsx';
import { writeRoute } from '../routes.ts';
import { Said, ScreenTitle } from '../screen.tsx';
import { FAULT_CARDS } from './cards.ts';
import type { FaultCard } from './fault-card.ts';

/** What each fault of the catalogue shows: the list of all, or one to read. */
export function FaultsScreen({ fault }: { readonly fault: string | undefined }) {
  const desk = useDesk();
  useEffect(() => {
    void desk.session.leave();
  }, [desk]);
  const card = FAULT_CARDS.find(({ id }) => id === fault);
  return (
    <div class="faults">
      <Bar subtitle={desk.t('title.faults')} />
      <main>{card === undefined ? <AllFaults unknown={fault !== undefined} /> : <OneFault card={card} />}</main>
    </div>
  );
}

function AllFaults({ unknown }: { readonly unknown: boolean }) {
  const { t } = useDesk();
  const families = [...new Set(FAULT_CARDS.map(({ family }) => family))];
  return (
    <>
      <header class="faults-head">
        <ScreenTitle>{t('title.faults')}</ScreenTitle>
        {unknown && <p class="strong">{t('faults.unknown')}</p>}
        <p>{t('faults.lead')}</p>
      </header>
      <div class="fault-families">
        {families.map((family) => (
          <section key={family} class="card" aria-labelledby={`family-${family}`}>
            <h2 id={`family-${family}`}>{t(`family.${family}`)}</h2>
            <ul class="fault-links">
              {FAULT_CARDS.filter((one) => one.family === family).map(({ id, name }) => (
                <li key={id}>
                  <a href={writeRoute({ screen: 'faults', fault: id })}>
                    <Said message={name} />
                  </a>
                </li>
              ))}
            </ul>
          </section>
        ))}
      </div>
    </>
  );
}

function OneFault({ card }: { readonly card: FaultCard }) {
  const { t, speak } = useDesk();
  const said = speak.value;
  const parts = card.parts.map(said).join(', ');
  return (
    <>
      <header class="faults-head">
        <a href="#/faults">
          <Icon name="list" /> {t('faults.all')}
        </a>
        <ScreenTitle key={card.id}>{said(card.name)}</ScreenTitle>
      </header>
      <article class="card fault-card">
        <section>
          <h2>{t('faults.what')}</h2>
          <p>
            {t('faults.family', { family: { id: `family.${card.family}` } })} <strong>{said(card.where)}.</strong>{' '}
            {said(card.about)}
          </p>
          {parts !== '' && <p>{t('faults.parts', { parts })}</p>}
          {card.comes.length > 0 && <p>{card.comes.map((how) => t(`faults.comes.${how}`)).join(' ')}</p>}
        </section>
        <section>
          <h2>{t('faults.shows')}</h2>
          <p>{said({ id: `shows.${card.id}` })}</p>
        </section>
        <Listed title={t('faults.checks')} lines={card.checks.map(said)} />
        <Listed title={t('faults.hides')} lines={card.hides.map(said)} none={t('faults.hides.none')} />
        <Listed title={t('faults.mends')} lines={card.mends.map(said)} />
        <Listed
          title={t('faults.proof')}
          lines={card.proof.map((one) => capital(said({ id: `proof.${one}` })))}
          none={t('faults.proof.none')}
        />
        <section>
          <h2>{t('faults.urgency')}</h2>
          <p>{said({ id: `urgency.${card.urgency}` })}</p>
        </section>
      </article>
      <section class="caution-card" aria-labelledby="fault-cautions">
        <h2 id="fault-cautions">
          <CautionSign /> {t('faults.cautions')}
        </h2>
        <ul>
          {card.cautions.map((one) => (
            <li key={one.id}>{said(one)}</li>
          ))}
        </ul>
        <p class="strong">{t('faults.local')}</p>
      </section>
      <p class="fault-ways">
        <a href="#/quiz">{t('faults.practise')}</a>
        <a href="#/faults">{t('faults.all')}</a>
      </p>
    </>
  );
}

interface ListedProps {
  readonly title: string;
  readonly lines: readonly string[];
  /** Said where there are none. */
  readonly none?: string;
}

function Listed({ title, lines, none }: ListedProps) {
  return (
    <section>
      <h2>{title}</h2>
      {lines.length === 0 ? (
        <p>{none}</p>
      ) : (
        <ul>
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
    </section>
  );
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
