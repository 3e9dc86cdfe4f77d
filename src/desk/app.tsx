import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Key } from '../words/words.ts';
import { CallScreen } from './call/call.tsx';
import { type Desk, DeskContext, useDesk } from './desk.ts';
import { Troubles } from './screen.tsx';
import { StartScreen } from './start/start.tsx';

export function App({ desk }: { desk: Desk }) {
  return (
    <DeskContext.Provider value={desk}>
      <Troubles />
      <Screen />
    </DeskContext.Provider>
  );
}

function Screen() {
  const desk = useDesk();
  const route = desk.route.value;
  const language = desk.words.value.language;
  useEffect(() => {
    document.documentElement.lang = language;
    document.title = `${desk.t(`title.${route.screen}`)} · ${desk.t('app.name')}`;
  }, [desk, language, route]);
  switch (route.screen) {
    case 'call':
      return <CallScreen key={route.callId} callId={route.callId} />;
    case 'debrief':
      return (
        <Later key={route.key} waiting="debrief.opening" load={loadDebrief}>
          {({ DebriefScreen }) => <DebriefScreen recordKey={route.key} />}
        </Later>
      );
    case 'round':
      return (
        <Later key="round" waiting="round.opening" load={loadRound}>
          {({ RoundScreen }) => <RoundScreen />}
        </Later>
      );
    default:
      return <StartScreen />;
  }
}

const loadDebrief = () => import('./debrief/debrief.tsx');
const loadRound = () => import('./round/round.tsx');

interface LaterProps<T> {
  readonly waiting: Key;
  readonly load: () => Promise<T>;
  readonly children: (loaded: T) => ComponentChildren;
}

/** A screen that comes as a file of its own, with the words only it says: nobody needs it for a first call. */
function Later<T>({ waiting, load, children }: LaterProps<T>) {
  const desk = useDesk();
  const [screen, setScreen] = useState<{ readonly loaded: T } | null>(null);
  useEffect(() => {
    Promise.all([load(), desk.readyForDebrief()]).then(
      ([loaded]) => setScreen({ loaded }),
      () => desk.fail({ id: 'trouble.notLoaded' }),
    );
  }, [desk, load]);
  if (screen === null) return <main class="waiting">{desk.t(waiting)}</main>;
  return <>{children(screen.loaded)}</>;
}
