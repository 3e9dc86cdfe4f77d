/** Paths through a specification, by `xstate/graph`: shortest ones to every state, then on until every edge is taken. */
import type { AnyMachineSnapshot } from 'xstate';
import { getAdjacencyMap, getShortestPaths } from 'xstate/graph';
import { type Event, keyOf, Remembered, type Wanted } from './remembered.ts';
import { type Promised, SOUND } from './vocabulary.ts';

export interface Edge {
  readonly from: string;
  readonly event: string;
  readonly to: Wanted;
  /** Calls that go out while the event is done. */
  readonly calls: number;
}

export interface Plan {
  readonly start: Wanted;
  /** Out of every state, what can happen there. */
  readonly edges: ReadonlyMap<string, readonly Edge[]>;
  readonly transitions: number;
  readonly paths: readonly (readonly Edge[])[];
}

export const edgeKey = ({ from, event }: Pick<Edge, 'from' | 'event'>): string => `${from} ${event}`;

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

/** All paths of a promise under one fault. The same promise and fault give the same plan. */
export function planOf(promised: Promised, fault: string): Plan {
  const logic = Remembered.of(promised);
  const options = {
    events: eventsUnder(promised, fault).map((type) => ({ type })),
    filterEvents: (state: AnyMachineSnapshot, event: Event) => logic.happens(state, event),
    serializeState: keyOf,
    limit: LIMIT,
  };
  // The graph is asked of the remembered machine: it has what a traversal needs, not all of XState's actor logic.
  const map = getAdjacencyMap(logic as never, options as never) as unknown as Readonly<Record<string, Node>>;
  const shortest = getShortestPaths(logic as never, options as never) as unknown as readonly Way[];
  return cover(logic, map, shortest);
}

/** Ordinary events and those of one fault. */
function eventsUnder(promised: Promised, fault: string): string[] {
  if (fault !== SOUND && !promised.faults[fault]) throw new Error(`${promised.name} has no fault "${fault}"`);
  const foreign = new Set(Object.values(promised.faults).flat());
  for (const own of promised.faults[fault] ?? []) foreign.delete(own);
  return Object.keys(promised.does).filter((event) => !foreign.has(event));
}

function cover(logic: Remembered, map: Readonly<Record<string, Node>>, shortest: readonly Way[]): Plan {
  const edges = new Map<string, Edge[]>();
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
  const paths: Edge[][] = [];

  /** Goes on along transitions nobody has taken yet. */
  const walkOn = (path: Edge[]): void => {
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
function asEdges(way: Way, edges: ReadonlyMap<string, Edge[]>): Edge[] {
  return way.steps.slice(1).map(({ event }, i) => {
    const from = keyOf((way.steps[i] as Way['steps'][number]).state);
    return edges.get(from)?.find((e) => e.event === event.type) as Edge;
  });
}

/** Ways that are not the beginning of another one. */
function leaves(ways: readonly (readonly Edge[])[]): (readonly Edge[])[] {
  const inner = new Set(ways.flatMap((way) => way.slice(0, -1)));
  return ways.filter((way) => {
    const last = way.at(-1);
    return last !== undefined && !inner.has(last);
  });
}
