import { RUNGS, type Rung } from '../calls/rungs.ts';
import type { SheetOf } from './protocol.ts';

/** Where one is, kept in the address after the hash so that a reload comes back to it. */
export type Route =
  /** `find`: what is searched for there. */
  | { readonly screen: 'start'; readonly find?: string }
  /** `rung`: with which help the call is taken when it begins; alone when left out. */
  | { readonly screen: 'call'; readonly callId: string; readonly rung?: Rung }
  | { readonly screen: 'debrief'; readonly key: number }
  /** The service record of a finished routine visit. */
  | { readonly screen: 'record'; readonly key: number }
  /** The notebook of a finished call, on paper. */
  | { readonly screen: 'notebook'; readonly key: number }
  /** With a seed everybody gets the same questions. */
  | { readonly screen: 'drills'; readonly seed?: number }
  /** `form`: of the mock exam, the same for everybody with the number. */
  | { readonly screen: 'quiz'; readonly form?: number }
  | { readonly screen: 'round' }
  /** A trainer's window, beside the one in which a trainee works. */
  | { readonly screen: 'instructor' }
  /** The sheet of a class; `record`: the debrief of one of its records, which live as long as the page does. */
  | { readonly screen: 'class'; readonly record?: number }
  /** Calls from elsewhere; `link`: one that was just opened. */
  | { readonly screen: 'take'; readonly link?: string }
  /** Calls that are being made; `draft`: one of them. */
  | { readonly screen: 'build'; readonly draft?: number }
  /** For whoever lives with a unit; `card`: what hangs by the control box. */
  | { readonly screen: 'home'; readonly card?: true }
  /** What works how for whom, and what does not. */
  | { readonly screen: 'access' }
  /** What faults show; `fault`: one of them. */
  | { readonly screen: 'faults'; readonly fault?: string }
  | { readonly screen: 'sheet'; readonly callId: string; readonly who: SheetOf };

/**
 * Reads `#/find/WORDS`, `#/call/ID`, `#/call/ID/RUNG`, `#/debrief/NUMBER`, `#/record/NUMBER`, `#/notebook/NUMBER`, `#/drills`, `#/drills/SEED`, `#/quiz`, `#/quiz/FORM`, `#/round`,
 * `#/take`, `#/take/LINK`,
 * `#/sheet/ID/trainee`, `#/sheet/ID/trainer`, `#/class`, `#/class/NUMBER`, `#/build`, `#/build/NUMBER`, `#/instructor`,
 * `#/home`, `#/home/card`, `#/access`, `#/faults`, `#/faults/ID`;
 * anything else is the start.
 */
export function readRoute(hash: string): Route {
  const [screen, rest, how] = hash.replace(/^#\/?/, '').split('/');
  if (screen === 'call' && rest !== undefined && /^[\w-]+$/.test(rest)) {
    const rung = RUNGS.find((one) => one === how);
    return { screen, callId: rest, ...(rung === undefined ? {} : { rung }) };
  }
  if (
    (screen === 'debrief' || screen === 'record' || screen === 'notebook') &&
    rest !== undefined &&
    /^\d+$/.test(rest)
  )
    return { screen, key: Number(rest) };
  if (screen === 'drills') return /^\d{1,9}$/.test(rest ?? '') ? { screen, seed: Number(rest) } : { screen };
  if (screen === 'quiz') return /^\d{1,9}$/.test(rest ?? '') ? { screen, form: Number(rest) } : { screen };
  if (screen === 'class') return /^\d{1,6}$/.test(rest ?? '') ? { screen, record: Number(rest) } : { screen };
  if (screen === 'build') return /^\d{1,9}$/.test(rest ?? '') ? { screen, draft: Number(rest) } : { screen };
  if (screen === 'home') return rest === 'card' ? { screen, card: true } : { screen };
  if (screen === 'faults') return rest && /^[\w-]+$/.test(rest) ? { screen, fault: rest } : { screen };
  if (screen === 'take') return rest ? { screen, link: rest } : { screen };
  if (screen === 'sheet' && rest !== undefined && (how === 'trainer' || how === 'trainee')) {
    return { screen, callId: rest, who: how };
  }
  if (screen === 'find' && rest) return { screen: 'start', find: decoded(rest) };
  return { screen: screen === 'round' || screen === 'instructor' || screen === 'access' ? screen : 'start' };
}

/** The hash of a route. */
export function writeRoute(route: Route): string {
  if (route.screen === 'call')
    return `#/call/${route.callId}${(route.rung ?? 'alone') === 'alone' ? '' : `/${route.rung}`}`;
  if (route.screen === 'drills') return route.seed === undefined ? '#/drills' : `#/drills/${route.seed}`;
  if (route.screen === 'debrief' || route.screen === 'record' || route.screen === 'notebook')
    return `#/${route.screen}/${route.key}`;
  if (route.screen === 'quiz') return route.form === undefined ? '#/quiz' : `#/quiz/${route.form}`;
  if (route.screen === 'class') return route.record === undefined ? '#/class' : `#/class/${route.record}`;
  if (route.screen === 'build') return route.draft === undefined ? '#/build' : `#/build/${route.draft}`;
  if (route.screen === 'home') return route.card ? '#/home/card' : '#/home';
  if (route.screen === 'faults') return route.fault === undefined ? '#/faults' : `#/faults/${route.fault}`;
  if (route.screen === 'take') return route.link === undefined ? '#/take' : `#/take/${route.link}`;
  if (route.screen === 'sheet') return `#/sheet/${route.callId}/${route.who}`;
  if (route.screen === 'start') return route.find ? `#/find/${encodeURIComponent(route.find)}` : '#/';
  return `#/${route.screen}`;
}

/** What was written into an address; as it stands there where somebody damaged it. */
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
