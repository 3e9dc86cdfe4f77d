import { useEffect, useState } from 'preact/hooks';
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
      return <LaterDebrief key={route.key} recordKey={route.key} />;
    default:
      return <StartScreen />;
  }
}

/** The debrief comes as a file of its own: nobody needs it before the first call is over. */
function LaterDebrief({ recordKey }: { recordKey: number }) {
  const desk = useDesk();
  const [screen, setScreen] = useState<typeof import('./debrief/debrief.tsx') | null>(null);
  useEffect(() => {
    Promise.all([import('./debrief/debrief.tsx'), desk.readyFor('debrief')]).then(
      ([loaded]) => setScreen(loaded),
      () => desk.fail({ id: 'trouble.notLoaded' }),
    );
  }, [desk]);
  if (screen === null) return <main class="waiting">{desk.t('debrief.opening')}</main>;
  return <screen.DebriefScreen recordKey={recordKey} />;
}
