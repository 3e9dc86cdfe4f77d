import { useEffect } from 'preact/hooks';
import { CallScreen } from './call/call.tsx';
import { type Desk, DeskContext, useDesk } from './desk.ts';
import { Later } from './later.tsx';
import { CourseNote, Troubles } from './screen.tsx';
import { StartScreen } from './start/start.tsx';

export function App({ desk }: { desk: Desk }) {
  return (
    <DeskContext.Provider value={desk}>
      <Troubles />
      <CourseNote />
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
  if (route.screen === 'start') return <StartScreen />;
  if (route.screen === 'call') {
    return <CallScreen key={route.callId} callId={route.callId} rung={route.rung ?? 'alone'} />;
  }
  return (
    <Later part={() => import('./screens.tsx')} waiting="brought.opening">
      {({ LaterScreen }) => <LaterScreen route={route} />}
    </Later>
  );
}
