import { Later } from './later.tsx';
import type { Route } from './routes.ts';

/** The screens that neither the list of calls nor a call is, each a file of its own with its own words. */
export function LaterScreen({ route }: { readonly route: Exclude<Route, { readonly screen: 'start' | 'call' }> }) {
  switch (route.screen) {
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
    case 'record':
      return (
        <Later
          key={`record/${route.key}`}
          part={() => import('./visit/record.tsx')}
          words="visit"
          waiting="debrief.opening"
        >
          {({ RecordScreen }) => <RecordScreen recordKey={route.key} />}
        </Later>
      );
    case 'notebook':
      return (
        <Later
          key={`notebook/${route.key}`}
          part={() => import('./notebook/notebook.tsx')}
          words="debrief"
          waiting="debrief.opening"
        >
          {({ NotebookScreen }) => <NotebookScreen recordKey={route.key} />}
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
    case 'quiz':
      return (
        <Later key={`quiz/${route.form}`} part={() => import('./quiz/quiz.tsx')} words="quiz" waiting="brought.opening">
          {({ QuizScreen }) => <QuizScreen form={route.form} />}
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
          waiting="brought.opening"
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
    case 'home':
      return (
        <Later
          key={route.card ? 'home/card' : 'home'}
          part={() => import('./home/home.tsx')}
          words="home"
          waiting="brought.opening"
        >
          {({ HomeScreen }) => <HomeScreen card={route.card === true} />}
        </Later>
      );
    case 'access':
      return (
        <Later key="access" part={() => import('./access/access.tsx')} words="access" waiting="brought.opening">
          {({ AccessScreen }) => <AccessScreen />}
        </Later>
      );
    case 'faults':
      return (
        <Later key="faults" part={() => import('./faults/faults.tsx')} words="find" waiting="brought.opening">
          {({ FaultsScreen }) => <FaultsScreen key={route.fault} fault={route.fault} />}
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
  }
}
