/** Paths through a specification, by `xstate/graph`: shortest ones to every state, then on until every edge is taken. */
import { type AnyMachineSnapshot, initialTransition, transition } from 'xstate';
import { getAdjacencyMap, getShortestPaths } from 'xstate/graph';
import { DELAYS } from '../../../src/control/index.ts';
import { CALLED, type Promised, type Says, type Sight, SOUND } from './vocabulary.ts';

/** What must be seen in a state, and who says so. */
export interface Wanted {
  readonly key: string;
  readonly sees: ReadonlyMap<Sight, { readonly want: boolean; readonly says: string }>;
  readonly runs: ReadonlySet<string>;
}

export interface Edge {
  readonly from: string;
  readonly event: string;
  readonly to: Wanted;
  /** Calls that go out while the event is done. */
  readonly calls: number;
}

export interface Plan {
  readonly start: Wanted;
  readonly states: ReadonlySet<string>;
  readonly transitions: ReadonlySet<string>;
  readonly paths: readonly (readonly Edge[])[];
}

type Event = { type: string };
const keyOf = (state: AnyMachineSnapshot): string => JSON.stringify(state.value);
export const edgeKey = (from: string, event: string): string => `${from} ${event}`;

/** More steps than this in one path read badly when it fails. */
const LONGEST = 60;
/** A walk that meets more than this has left the physical ladder: it throws instead of never ending. */
const LIMIT = 400_000;

/** A machine whose transitions are computed once, however many walks take them. */
class Remembered {
  readonly promised: Promised;
  private readonly taken = new Map<string, { state: AnyMachineSnapshot; calls: number }>();
  private readonly wants = new Map<string, Wanted>();

  constructor(promised: Promised) {
    this.promised = promised;
  }

  readonly getInitialSnapshot = (): AnyMachineSnapshot => {
    const [state] = initialTransition(this.promised.machine);
    if (state.status === 'error') throw state.error;
    return state;
  };

  readonly transition = (state: AnyMachineSnapshot, event: Event): AnyMachineSnapshot => this.take(state, event).state;

  take(state: AnyMachineSnapshot, event: Event): { state: AnyMachineSnapshot; calls: number } {
    const key = edgeKey(keyOf(state), event.type);
    const known = this.taken.get(key);
    if (known) return known;
    const [next, actions] = transition(this.promised.machine, state, event);
    if (next.status === 'error') throw next.error;
    const edge = { state: next, calls: actions.filter((a) => (a.type as string) === CALLED).length };
    this.taken.set(key, edge);
    return edge;
  }

  wanted(state: AnyMachineSnapshot): Wanted {
    const key = keyOf(state);
    const known = this.wants.get(key);
    if (known) return known;
    const wanted = wantedIn(this.promised, key, Object.values(state.getMeta()) as Says[]);
    this.wants.set(key, wanted);
    return wanted;
  }
}

/** Joins what the active states say. Throws where two of one rank disagree, or where a sight is left open. */
function wantedIn(promised: Promised, key: string, sayings: readonly Says[]): Wanted {
  const sees = new Map<Sight, { want: boolean; says: string; over: number }>();
  for (const { says, sees: claims, over = 0 } of sayings) {
    for (const [sight, want] of Object.entries(claims ?? {}) as [Sight, boolean][]) {
      const other = sees.get(sight);
      if (other && other.over === over && other.want !== want) {
        throw new Error(`${promised.name}: "${says}" and "${other.says}" disagree on ${sight} in ${key}`);
      }
      if (!other || over > other.over) sees.set(sight, { want, says, over });
    }
  }
  const open = promised.sights.filter((s) => !sees.has(s));
  if (open.length > 0) throw new Error(`${promised.name}: nothing is said of ${open} in ${key}`);
  return { key, sees, runs: new Set(sayings.flatMap((s) => s.runs ?? [])) };
}

const remembered = new WeakMap<Promised, Remembered>();

/** All paths of a promise under one fault. The same promise and fault give the same plan. */
export function planOf(promised: Promised, fault: string): Plan {
  const logic = remembered.get(promised) ?? new Remembered(promised);
  remembered.set(promised, logic);
  const options = {
    events: eventsUnder(promised, fault).map((type) => ({ type })),
    filterEvents: (state: AnyMachineSnapshot, event: Event) => happens(logic, state, event),
    serializeState: keyOf,
    limit: LIMIT,
  };
  const map = getAdjacencyMap(logic as never, options as never) as unknown as Adjacency;
  const shortest = getShortestPaths(logic as never, options as never) as unknown as ShortPath[];
  return cover(logic, map, shortest);
}

type Adjacency = Record<string, { state: AnyMachineSnapshot; transitions: Record<string, { event: Event }> }>;
interface ShortPath {
  readonly state: AnyMachineSnapshot;
  readonly steps: readonly { readonly state: AnyMachineSnapshot; readonly event: Event }[];
}

function eventsUnder(promised: Promised, fault: string): string[] {
  const foreign = new Set(Object.entries(promised.faults).flatMap(([name, events]) => (name === fault ? [] : events)));
  if (fault !== SOUND && !promised.faults[fault]) throw new Error(`${promised.name} has no fault "${fault}"`);
  for (const own of promised.faults[fault] ?? []) foreign.delete(own);
  return Object.keys(promised.does).filter((event) => !foreign.has(event));
}

/** A delay ends only while it runs; hands do what they like; the rest happens where the specification has it. */
function happens(logic: Remembered, state: AnyMachineSnapshot, event: Event): boolean {
  const { does, anytime } = logic.promised;
  const delay = Object.entries(DELAYS).find(([, due]) => does[event.type]?.[0] === due);
  if (delay) {
    const runs = logic.wanted(state).runs;
    return Object.entries(DELAYS).some(([id, due]) => due === delay[1] && runs.has(id));
  }
  return anytime.includes(event.type) || state.can(event as never);
}

function cover(logic: Remembered, map: Adjacency, shortest: readonly ShortPath[]): Plan {
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
  const ways = new Map(shortest.map((path) => [keyOf(path.state), wayOf(path, edges)]));
  const transitions = new Set([...edges.values()].flat().map((e) => edgeKey(e.from, e.event)));
  const left = new Set(transitions);
  const paths: Edge[][] = [];
  const keep = (path: Edge[]) => {
    for (const e of path) left.delete(edgeKey(e.from, e.event));
    paths.push(path);
  };
  const extend = (path: Edge[], at: string): Edge[] => {
    const ahead = new Set<string>();
    let here = at;
    while (path.length < LONGEST) {
      const next = edges
        .get(here)
        ?.find((e) => left.has(edgeKey(e.from, e.event)) && !ahead.has(edgeKey(e.from, e.event)));
      if (!next) break;
      ahead.add(edgeKey(next.from, next.event));
      path.push(next);
      here = next.to.key;
    }
    return path;
  };
  for (const way of leaves([...ways.values()])) keep(extend([...way], way.at(-1)?.to.key ?? start.key));
  for (const [from, out] of edges) {
    for (const e of out) {
      if (left.has(edgeKey(e.from, e.event))) keep(extend([...(ways.get(from) ?? []), e], e.to.key));
    }
  }
  return { start, states: new Set(edges.keys()), transitions, paths };
}

/** A shortest path of the graph as edges. Its first step is the start itself. */
function wayOf(path: ShortPath, edges: ReadonlyMap<string, Edge[]>): Edge[] {
  const way: Edge[] = [];
  let from = '';
  for (const { state, event } of path.steps) {
    const edge = from === '' ? undefined : edges.get(from)?.find((e) => e.event === event.type);
    if (edge) way.push(edge);
    from = keyOf(state);
  }
  return way;
}

/** Paths that are not the beginning of another one. */
function leaves(ways: readonly (readonly Edge[])[]): (readonly Edge[])[] {
  const inner = new Set(ways.flatMap((way) => way.slice(0, -1).map((e) => edgeKey(e.from, e.event))));
  return ways.filter((way) => {
    const last = way.at(-1);
    return last !== undefined && !inner.has(edgeKey(last.from, last.event));
  });
}
