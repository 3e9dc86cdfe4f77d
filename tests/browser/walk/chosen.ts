/**
 * Which paths of a specification are walked on the page. Of the generator's own paths the one with most transitions that
 * nobody has taken, again and again; then the shortest way to every transition still left. A path goes as far as it can
 * be done before a delay ends by itself. Between two paths the hands put the panel back; where they cannot, the call is
 * taken anew.
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
  /** Transitions of the hands for which no way is quick enough. */
  readonly tooSlow: readonly string[];
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
  const running = (key: string): DelayId[] =>
    [...(wanted.get(key) ?? plan.start).runs].filter((id) => watched.has(id));
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
  const takes: Edge[][] = [];
  let spot = start;
  let paths = 0;
  const append = (path: readonly Edge[]): void => {
    takes.at(-1)?.push(...path);
    spot = endOf(back, spot, path);
    for (const edge of path) left.delete(edgeKey(edge));
  };
  /** Brings the hands to where paths begin. */
  const restart = (): void => {
    const way = spot.key === start.key && takes.length > 0 ? [] : wayTo(back, spot, (e) => e.to.key === start.key);
    if (takes.length > 0 && way) append(way);
    else takes.push([]);
    spot = start;
  };
  const news = (path: readonly Edge[]): number => new Set(path.map(edgeKey).filter((key) => left.has(key))).size;

  const candidates = plan.paths.map((path) => inTime(narrow, start, path));
  for (;;) {
    const best = candidates.reduce((a, b) => (news(b) > news(a) ? b : a), []);
    if (news(best) === 0) break;
    restart();
    append(best.slice(0, best.findLastIndex((edge) => left.has(edgeKey(edge))) + 1));
    paths++;
  }
  for (;;) {
    const onward = wayTo(back, spot, (edge) => left.has(edgeKey(edge)));
    if (onward) append(onward);
    else {
      const anew = wayTo(narrow, start, (edge) => left.has(edgeKey(edge)));
      if (!anew) break;
      restart();
      append(anew);
    }
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
    tooSlow: [...left],
    whole: {
      states: new Set(whole.edges.keys()),
      transitions: new Set([...whole.edges.values()].flat().map(edgeKey)),
    },
  };
}
