import { useEffect, useState } from 'preact/hooks';
import { Bar } from '../bar.tsx';
import { useDesk } from '../desk.ts';
import { suggestedCall } from '../next-call.ts';
import type { CallCard } from '../protocol.ts';
import { writeRoute } from '../routes.ts';
import { ScreenTitle } from '../screen.tsx';
import { useLater } from '../use-later.ts';
import { Brought } from './brought.tsx';
import { CallCardView } from './call-card.tsx';
import { AlarmCard, LicenceCard } from './cautions.tsx';
import { DayCard } from './day-card.tsx';
import { Doors } from './doors.tsx';
import { FindField } from './find-field.tsx';
import { FirstRun } from './first-run.tsx';
import { LeftOff } from './left-off.tsx';
import { SettingsCard } from './settings-card.tsx';

/** The first screen: a door for each kind of person, where one left, the calls there are, and one's settings. */
export function StartScreen() {
  const desk = useDesk();
  const { t } = desk;
  useEffect(() => {
    void desk.session.leave().then(desk.refreshShelves);
  }, [desk]);
  const Offline = desk.offline.value;
  const { query, search, narrow, setNarrow, near, setNear } = useSearch();
  const finding = query.trim() !== '' || narrow;
  const found = useLater(near || finding, () => import('../find/results.tsx'), 'find');
  const [last] = [...desk.progress.value].sort((a, b) => b.savedAt - a.savedAt);
  const back = () => {
    search('');
    setNarrow(false);
    document.querySelector<HTMLElement>('h1')?.focus();
  };
  return (
    <div class="start">
      <Bar />
      <main>
        <section class={finding ? 'hero hero-low' : 'hero'}>
          <img class="hero-art" src={streetUrl} alt="" />
          <div class="hero-words">
            <ScreenTitle>{t('start.title')}</ScreenTitle>
            <p class="hero-lead">{t('start.lead')}</p>
            {Offline && <Offline.Note />}
            <FindField query={query} onNear={() => setNear(true)} onQuery={search} />
          </div>
          {!finding && (last === undefined ? <FirstRun /> : <LeftOff last={last} />)}
          {!finding && <Doors />}
        </section>
        {finding && found ? (
          <found.Results query={query} onBack={back} />
        ) : finding && found === undefined ? (
          <div class="waiting late" role="status">
            <p>{t('brought.opening')}</p>
            <progress />
          </div>
        ) : (
          <WholePage onNarrow={() => setNarrow(true)} />
        )}
      </main>
    </div>
  );
}

/** What is searched for, kept in the address so that one comes back to it, without a step of its own for each key. */
function useSearch() {
  const route = useDesk().route.value;
  const asked = route.screen === 'start' ? (route.find ?? '') : '';
  const [query, setQuery] = useState(asked);
  const [narrow, setNarrow] = useState(false);
  const [near, setNear] = useState(false);
  useEffect(() => {
    setQuery(asked);
    setNarrow(false);
  }, [route]);
  const search = (words: string) => {
    setQuery(words);
    history.replaceState(history.state, '', writeRoute({ screen: 'start', find: words.trim() }));
  };
  return { query, search, narrow, setNarrow, near, setNear };
}

function WholePage({ onNarrow }: { readonly onNarrow: () => void }) {
  const desk = useDesk();
  const { t } = desk;
  const suggested = suggestedCall(desk);
  const isVisit = ({ kind }: CallCard) => kind === 'visit';
  const visits = desk.calls.value.filter(isVisit);
  const calls = desk.calls.value.filter((card) => !isVisit(card));
  return (
    <>
      <div class="start-row">
        <DayCard />
        <AlarmCard />
        <LicenceCard />
        <SettingsCard />
      </div>
      <Brought />
      <section class="calls" aria-labelledby="calls-title">
        <div class="calls-head">
          <h2 id="calls-title" tabIndex={-1}>
            {t('start.calls')}
          </h2>
          <button type="button" class="secondary" data-narrow onClick={onNarrow}>
            {t('start.narrow')}
          </button>
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
          <h2 id="visits-title" tabIndex={-1}>
            {t('start.visits')}
          </h2>
          <p>{t('start.visits.lead')}</p>
        </div>
        <ul class="call-cards">
          {visits.map((card) => (
            <CallCardView key={card.id} card={card} next={null} />
          ))}
        </ul>
      </section>
    </>
  );
}

/** Cards with their places in the course, the one that comes next before all others: it is not looked for among so many. */
function nextFirst(cards: readonly CallCard[], next: string | undefined) {
  const numbered = cards.map((card, index) => ({ card, number: index + 1 }));
  const isNext = ({ card }: { readonly card: CallCard }) => card.id === next;
  return [...numbered.filter(isNext), ...numbered.filter((one) => !isNext(one))];
}

const streetUrl = new URL('../art/street.svg', import.meta.url).href;
