import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { Bar } from '../bar.tsx';
import { useDesk } from '../desk.ts';
import { CautionSign, Icon } from '../icons.tsx';
import { suggestedCall } from '../next-call.ts';
import type { CallCard } from '../protocol.ts';
import { ScreenTitle } from '../screen.tsx';
import { Brought } from './brought.tsx';
import { CallCardView } from './call-card.tsx';
import { LeftOff } from './left-off.tsx';
import { SettingsCard } from './settings-card.tsx';

/** The first screen: where one left, the calls there are, what practice is not, and one's settings. */
export function StartScreen() {
  const desk = useDesk();
  useEffect(() => {
    void desk.session.leave().then(desk.refreshShelves);
  }, [desk]);
  const suggested = suggestedCall(desk);
  const isVisit = ({ kind }: CallCard) => kind === 'visit';
  const visits = desk.calls.value.filter(isVisit);
  const calls = desk.calls.value.filter((card) => !isVisit(card));
  return (
    <div class="start">
      <Bar />
      <main>
        <section class="hero">
          <img class="hero-art" src={heroUrl} alt="" />
          <div class="hero-words">
            <ScreenTitle>{desk.t('start.title')}</ScreenTitle>
            <p>{desk.t('start.lead')}</p>
          </div>
          <Door id="drills">
            <a class="secondary" href="#/quiz">
              {desk.t('start.quiz.open')} <Icon name="arrow" />
            </a>
          </Door>
          <Door id="round" />
          <LeftOff />
        </section>
        <Brought />
        <section class="calls" aria-labelledby="calls-title">
          <div class="calls-head">
            <h2 id="calls-title">{desk.t('start.calls')}</h2>
            <a class="secondary" href="#/take">
              {desk.t('start.bring')}
            </a>
          </div>
          <ul class="call-cards">
            {nextFirst(calls, suggested?.callId).map(({ card, number }) => (
              <CallCardView
                key={card.id}
                card={card}
                number={number}
                next={card.id === suggested?.callId ? suggested.rung : null}
              />
            ))}
          </ul>
        </section>
        <section class="calls" aria-labelledby="visits-title">
          <div class="calls-head">
            <h2 id="visits-title">{desk.t('start.visits')}</h2>
            <p>{desk.t('start.visits.lead')}</p>
          </div>
          <ul class="call-cards">
            {visits.map((card) => (
              <CallCardView key={card.id} card={card} next={null} />
            ))}
          </ul>
        </section>
        <div class="start-foot">
          <section class="caution-card" aria-labelledby="not-a-licence">
            <h2 id="not-a-licence">
              <CautionSign /> {desk.t('start.licence.title')}
            </h2>
            <ul>
              <li>{desk.t('start.licence.1')}</li>
              <li>{desk.t('start.licence.2')}</li>
              <li>{desk.t('start.licence.3')}</li>
              <li>{desk.t('start.licence.4')}</li>
            </ul>
            <p class="strong">{desk.t('start.licence.gate')}</p>
          </section>
          <section class="card how-card" aria-labelledby="how-title">
            <h2 id="how-title">{desk.t('start.how.title')}</h2>
            <ol>
              <li>{desk.t('start.how.1')}</li>
              <li>{desk.t('start.how.2')}</li>
              <li>{desk.t('start.how.3')}</li>
              <li>{desk.t('start.how.4')}</li>
            </ol>
            <p class="small">{desk.t('start.how.keys')}</p>
          </section>
          <SettingsCard />
          <p class="class-door">
            <a href="#/build" data-build>
              {desk.t('start.build')} <Icon name="arrow" />
            </a>
            <a href="#/instructor">
              {desk.t('start.instructor')} <Icon name="arrow" />
            </a>
            <a href="#/class">
              {desk.t('start.class')} <Icon name="arrow" />
            </a>
            <a href="#/home">
              {desk.t('start.home')} <Icon name="arrow" />
            </a>
            <a href="#/access">
              {desk.t('title.access')} <Icon name="arrow" />
            </a>
          </p>
        </div>
      </main>
    </div>
  );
}

/** Cards with their places in the course, the one that comes next before all others: it is not looked for among so many. */
function nextFirst(cards: readonly CallCard[], next: string | undefined) {
  const numbered = cards.map((card, index) => ({ card, number: index + 1 }));
  const isNext = ({ card }: { readonly card: CallCard }) => card.id === next;
  return [...numbered.filter(isNext), ...numbered.filter((one) => !isNext(one))];
}

/** The way to another screen, and what it is for. */
function Door({ id, children }: { id: 'drills' | 'round'; children?: ComponentChildren }) {
  const { t } = useDesk();
  return (
    <section class="card door" aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{t(`start.${id}`)}</h2>
      <p>{t(`start.${id}.lead`)}</p>
      <a class="secondary" href={`#/${id}`}>
        {t(`start.${id}.open`)} <Icon name="arrow" />
      </a>
      {children}
    </section>
  );
}

const heroUrl = new URL('../art/lawn.svg', import.meta.url).href;
