/**
 * Which paths of a specification are walked on the page: of the generator's own paths, and of the shortest way on to a
 * transition nobody has taken, again and again the one that has most such transitions for its steps. A path goes as far
 * as it can be done before a delay ends by itself, and paths end when the best one left has too few new transitions for
 * its steps. To come to the beginning of a path the hands put the panel back; where they cannot, the call is taken anew.
 */
import type { DelayId } from '../../../src/control/index.ts';
import { type Edge, edgeKey, planFor, planOf } from '../../control/spec/paths.ts';
import type { Wanted } from '../../control/spec/wanted.ts';
import { Handed } from './handed.ts';
import { endOf, inTime, type Spot, type Timing, wayTo } from './in-time.ts';
import { DELAYS_s, type PanelWalk } from './panel-walks.ts';

export interface Choice {
  readonly handed: Handed;
  /** What is wanted before the first step, and in every state. */
  readonly start: Wanted;
  readonly wanted: ReadonlyMap<string, Wanted>;
  /** Delays that run in a state, of those that the promise is about. */
  readonly running: (key: string) => readonly DelayId[];
  /** One list for each time the call is taken: paths and the ways back between them. */
  readonly takes: readonly (readonly Edge[])[];
  readonly paths: number;
  /** Keys of all transitions that hands have there, also of those for which they are too slow. */
  readonly byHand: ReadonlySet<string>;
  /** The specification with all its events, also those that no hand does. */
  readonly whole: { readonly states: ReadonlySet<string>; readonly transitions: ReadonlySet<string> };
}

export function choose(walk: PanelWalk): Choice {
  const handed = new Handed(walk.promised, [...walk.hands, ...walk.back], walk.history);
  const names = walk.hands.map((hand) => hand.name);
  const plan = planFor(handed, names);
  const wider = planFor(handed, [...names, ...walk.back.map((hand) => hand.name)]);
  const wanted = new Map([...wider.edges.values()].flat().map((edge) => [edge.to.key, edge.to]));
  const watched = new Set(walk.promised.delays);
  const running = (key: string): DelayId[] => [...(wanted.get(key) ?? plan.start).runs].filter((id) => watched.has(id));
  const timing = (edges: Timing['edges']): Timing => ({
    handed,
    edges,
    delays_s: DELAYS_s,
    runs: running,
  });
  const narrow = timing(plan.edges);
  const back = timing(wider.edges);

  const start: Spot = { key: plan.start.key, ran: new Map() };
  const left = new Set([...plan.edges.values()].flat().map(edgeKey));
  const byHand = new Set(left);
  const isLeft = (edge: Edge): boolean => left.has(edgeKey(edge));
  const takes: Edge[][] = [[]];
  let spot = start;
  let paths = 0;
  for (;;) {
    const home = spot.key === start.key ? [] : wayTo(back, spot, (edge) => edge.to.key === start.key);
    const onward = wayTo(back, spot, isLeft);
    const anew = onward ? undefined : wayTo(narrow, start, isLeft);
    const ways: Way[] = [
      ...plan.paths.map((path) => ({ home, path: upToLast(inTime(narrow, start, path), isLeft) })),
      ...(onward ? [{ home: [], path: onward }] : []),
      ...(anew ? [{ home, path: anew }] : []),
    ];
    const best = ways.reduce((a, b) => (worth(b, isLeft) > worth(a, isLeft) ? b : a), { home: [], path: [] });
    if (worth(best, isLeft) < LEAST) break;
    if (best.home) takes.at(-1)?.push(...best.home, ...best.path);
    else takes.push([...best.path]);
    spot = endOf(back, best.home ? spot : start, [...(best.home ?? []), ...best.path]);
    for (const edge of [...(best.home ?? []), ...best.path]) left.delete(edgeKey(edge));
    paths++;
  }
  const whole = planOf(walk.promised, walk.fault);
  return {
    handed,
    start: plan.start,
    wanted,
    running,
    takes,
    paths,
    byHand,
    whole: {
      states: new Set(whole.edges.keys()),
      transitions: new Set([...whole.edges.values()].flat().map(edgeKey)),
    },
  };
}

/** A path, and how the hands come to its beginning; undefined where the call must be taken anew for it. */
interface Way {
  readonly home: readonly Edge[] | undefined;
  readonly path: readonly Edge[];
}

/** Taking a call anew costs as much as so many steps. */
const ANEW = 20;
/** New transitions for each step that a path must have, else it is left out. */
const LEAST = 0.3;

/** Transitions nobody has taken, for each step. */
function worth({ home, path }: Way, isLeft: (edge: Edge) => boolean): number {
  const news = new Set([...(home ?? []), ...path].filter(isLeft).map(edgeKey)).size;
  return path.length === 0 ? 0 : news / ((home?.length ?? ANEW) + path.length);
}

function upToLast(path: readonly Edge[], isLeft: (edge: Edge) => boolean): Edge[] {
  return path.slice(0, path.findLastIndex(isLeft) + 1);
}
