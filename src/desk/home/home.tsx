import '../css/home.css';
import { useEffect, useState } from 'preact/hooks';
import { Bar } from '../bar.tsx';
import { useDesk } from '../desk.ts';
import { ScreenTitle } from '../screen.tsx';
import { useHome } from './ask.ts';
import { AlarmCard } from './card.tsx';
import { CostPart } from './cost.tsx';
import { DropPart } from './drop.tsx';
import type { Home, HomeRequest } from './protocol.ts';
import { WalkPart } from './walk.tsx';
import { WhatIfPart } from './what-if.tsx';
import { YearPart } from './year.tsx';

type Open = Extract<HomeRequest, { kind: 'open' }>;

const FIRST: Home = { unit: 'u1', household: 'family-3' };

/** For whoever lives with the unit: how it works, what could happen, what it costs, and a card for the wall. */
export function HomeScreen({ card }: { card: boolean }) {
  const desk = useDesk();
  useEffect(() => {
    void desk.session.leave();
  }, [desk]);
  return card ? <AlarmCard /> : <HomePage />;
}

function HomePage() {
  const desk = useDesk();
  const { t } = desk;
  const [home, setHome] = useState(FIRST);
  const opening = useHome<Open>(desk);
  const [opened, setOpened] = useState(opening.reply);
  useEffect(() => opening.ask({ kind: 'open', home }), [home]);
  // The unit before stays in sight until the next one is there.
  useEffect(() => {
    if (opening.reply !== undefined) setOpened(opening.reply);
  }, [opening.reply]);
  const { units = [], households = [], scene } = opened ?? {};
  const choices = { home, units, households, onChange: setHome };
  return (
    <div class="home">
      <Bar subtitle={t('title.home')} />
      <main>
        <header class="home-head">
          <ScreenTitle>{t('title.home')}</ScreenTitle>
          <p>{t('home.lead')}</p>
          <p class="home-advice">{t('home.advice')}</p>
          <a class="secondary" href="#/home/card">
            {t('home.go.card')}
          </a>
        </header>
        <WalkPart scene={scene} />
        <DropPart {...choices} />
        <WhatIfPart {...choices} />
        <YearPart {...choices} />
        <CostPart {...choices} />
      </main>
    </div>
  );
}
