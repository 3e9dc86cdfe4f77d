/** Paths through a specification, by `xstate/graph`: shortest ones to every state, then on until every edge is taken. */
import type { AnyMachineSnapshot } from 'xstate';
import { getAdjacencyMap, getShortestPaths } from 'xstate/graph';
import { type Event, type Keyed, keyOf, type Remembered } from './remembered.ts';
import { type Promised, SOUND } from './vocabulary.ts';
import { logicOf, type Wanted } from './wanted.ts';

export interface Edge<W extends Keyed = Wanted> {
  readonly from: string;
  readonly event: string;
  readonly to: W;
  /** Calls that go out while the event is done. */
  readonly calls: number;
}

export interface Plan<W extends Keyed = Wanted> {
  readonly start: W;
  /** Out of every state, what can happen there. */
  readonly edges: ReadonlyMap<string, readonly Edge<W>[]>;
  readonly transitions: number;
  readonly paths: readonly (readonly Edge<W>[])[];
}

/** What paths are made through: a machine, or the part of one that some hands can reach. */
export type Walkable<W extends Keyed> = Pick<
  Remembered<W>,
  'getInitialSnapshot' | 'transition' | 'take' | 'happens' | 'wanted'
>;

export const edgeKey = ({ from, event }: { readonly from: string; readonly event: string }): string =>
  `${from} ${event}`;

/** More steps than this in one path read badly when it fails. */
const LONGEST = 60;
/** A walk that meets more than this has left the physical ladder: it throws instead of never ending. */
const LIMIT = 400_000;

interface Node {
  readonly state: AnyMachineSnapshot;
  readonly transitions: Readonly<Record<string, { readonly event: Event }>>;
}
interface Way {
  readonly state: AnyMachineSnapshot;
  readonly steps: readonly { readonly state: AnyMachineSnapshot; readonly event: Event }[];
}

/** All paths of a promise under a fault, or under several at once. The same promise and faults give the same plan. */
export function planOf(promised: Promised, ...faults: readonly string[]): Plan {
  return planFor(logicOf(promised), eventsUnder(promised, faults));
}

/** Paths through a machine that take every transition there is by these events. */
export function planFor<W extends Keyed>(logic: Walkable<W>, events: readonly string[]): Plan<W> {
  const options = {
    events: events.map((type) => ({ type })),
    filterEvents: (state: AnyMachineSnapshot, event: Event) => logic.happens(state, event),
    serializeState: keyOf,
    limit: LIMIT,
  };
  // The graph is asked of the remembered machine: it has what a traversal needs, not all of XState's actor logic.
  const map = getAdjacencyMap(logic as never, options as never) as unknown as Readonly<Record<string, Node>>;
  const shortest = getShortestPaths(logic as never, options as never) as unknown as readonly Way[];
  return cover(logic, map, shortest);
}

/** Ordinary events and those of the faults. */
function eventsUnder(promised: Promised, faults: readonly string[]): string[] {
  const foreign = new Set(Object.values(promised.faults).flat());
  for (const fault of faults) {
    if (fault === SOUND) continue;
    const own = promised.faults[fault];
    if (!own) throw new Error(`${promised.name} has no fault "${fault}"`);
    for (const event of own) foreign.delete(event);
  }
  return Object.keys(promised.does).filter((event) => !foreign.has(event));
}

function cover<W extends Keyed>(
  logic: Walkable<W>,
  map: Readonly<Record<string, Node>>,
  shortest: readonly Way[],
): Plan<W> {
  const edges = new Map<string, Edge<W>[]>();
  for (const [from, { state, transitions }] of Object.entries(map)) {
    edges.set(
      from,
      Object.values(transitions).map(({ event }) => {
        const taken = logic.take(state, event);
        return { from, event: event.type, to: logic.wanted(taken.state), calls: taken.calls };
      }),
    );
  }
  const start = logic.wanted(logic.getInitialSnapshot());
  const ways = new Map(shortest.map((way) => [keyOf(way.state), asEdges(way, edges)]));
  const all = [...edges.values()].flat();
  const left = new Set(all);
  const paths: Edge<W>[][] = [];

  /** Goes on along transitions nobody has taken yet. */
  const walkOn = (path: Edge<W>[]): void => {
    for (const edge of path) left.delete(edge);
    while (path.length < LONGEST) {
      const next = edges.get(path.at(-1)?.to.key ?? start.key)?.find((e) => left.has(e));
      if (!next) break;
      left.delete(next);
      path.push(next);
    }
    paths.push(path);
  };
  for (const way of leaves([...ways.values()])) walkOn([...way]);
  for (const edge of all) if (left.has(edge)) walkOn([...(ways.get(edge.from) ?? []), edge]);
  return { start, edges, transitions: all.length, paths };
}

/** A shortest path of the graph as edges. Its first step is the start itself. */
function asEdges<W extends Keyed>(way: Way, edges: ReadonlyMap<string, Edge<W>[]>): Edge<W>[] {
  return way.steps.slice(1).map(({ event }, i) => {
    const from = keyOf((way.steps[i] as Way['steps'][number]).state);
    return edges.get(from)?.find((e) => e.event === event.type) as Edge<W>;
  });
}

/** Ways that are not the beginning of another one. */
function leaves<W extends Keyed>(ways: readonly (readonly Edge<W>[])[]): (readonly Edge<W>[])[] {
  const inner = new Set(ways.flatMap((way) => way.slice(0, -1)));
  return ways.filter((way) => {
    const last = way.at(-1);
    return last !== undefined && !inner.has(last);
  });
}
