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
  switch (route.screen) {
    case 'call':
      return <CallScreen key={route.callId} callId={route.callId} rung={route.rung ?? 'alone'} />;
    case 'debrief':
      return (
        <Later
          key={`debrief/${route.key}`}
          part={() => import('./debrief/debrief.tsx')}
          words="debrief"
          waiting="debrief.opening"
        >
          {({ DebriefScreen }) => <DebriefScreen recordKey={route.key} />}
        </Later>
      );
    case 'drills':
      return (
        <Later
          key={`drills/${route.seed}`}
          part={() => import('./drills/drills.tsx')}
          words="drills"
          waiting="drills.opening"
        >
          {({ DrillsScreen }) => <DrillsScreen seed={route.seed} />}
        </Later>
      );
    case 'round':
      return (
        <Later key="round" part={() => import('./round/round.tsx')} words="debrief" waiting="round.opening">
          {({ RoundScreen }) => <RoundScreen />}
        </Later>
      );
    case 'instructor':
      return (
        <Later
          key="instructor"
          part={() => import('./instructor/instructor.tsx')}
          words="instructor"
          waiting="instructor.opening"
        >
          {({ InstructorScreen }) => <InstructorScreen />}
        </Later>
      );
    case 'class':
      return (
        <Later key="class" part={() => import('./class/class.tsx')} words="class" waiting="class.opening">
          {({ ClassScreen }) => <ClassScreen record={route.record} />}
        </Later>
      );
    case 'build':
      return (
        <Later key="build" part={() => import('./build/build.tsx')} words="build" waiting="build.opening">
          {({ BuildScreen }) => <BuildScreen draft={route.draft} />}
        </Later>
      );
    case 'take':
      return (
        <Later
          key={`take/${route.link}`}
          part={() => import('./brought/take.tsx')}
          words="share"
          waiting="brought.opening"
        >
          {({ TakeScreen }) => <TakeScreen link={route.link} />}
        </Later>
      );
    case 'sheet':
      return (
        <Later
          key={`sheet/${route.callId}/${route.who}`}
          part={() => import('./printed/printed.tsx')}
          words="share"
          waiting="brought.opening"
        >
          {({ SheetScreen }) => <SheetScreen callId={route.callId} who={route.who} />}
        </Later>
      );
    default:
      return <StartScreen />;
  }
}
