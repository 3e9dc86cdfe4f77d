/** A specification machine with its transitions remembered, and what its states want to be seen. */
import {
  type AnyActorScope,
  type AnyMachineSnapshot,
  type AnyStateMachine,
  createActor,
  initialTransition,
} from 'xstate';
import { type ControlEventName, DELAYS } from '../../../src/control/index.ts';
import { CALLED, type Promised, type Says, type Sight } from './vocabulary.ts';

export type Event = { readonly type: string };

/** What must be seen in a state, and who says so. */
export interface Wanted {
  readonly key: string;
  readonly sees: ReadonlyMap<Sight, { readonly want: boolean; readonly says: string }>;
  readonly runs: ReadonlySet<string>;
}

interface Taken {
  readonly state: AnyMachineSnapshot;
  readonly calls: number;
}

const keys = new WeakMap<AnyMachineSnapshot, string>();

export function keyOf(state: AnyMachineSnapshot): string {
  let key = keys.get(state);
  if (key === undefined) {
    key = JSON.stringify(state.value);
    keys.set(state, key);
  }
  return key;
}

/** Transitions are a machine's, whatever is promised of it. */
const taken = new WeakMap<AnyStateMachine, Map<string, Map<string, Taken>>>();
const known = new WeakMap<Promised, Remembered>();

const delaysEndedBy = (event: ControlEventName | undefined): readonly string[] =>
  Object.entries(DELAYS).flatMap(([id, due]) => (due === event ? [id] : []));

export class Remembered {
  readonly promised: Promised;
  private readonly taken: Map<string, Map<string, Taken>>;
  private readonly wants = new Map<string, Wanted>();
  private readonly happening = new Map<string, Map<string, boolean>>();
  private readonly ends: ReadonlyMap<string, readonly string[]>;
  private readonly first: AnyMachineSnapshot;
  private readonly scope: AnyActorScope;
  private calls = 0;

  static of(promised: Promised): Remembered {
    const logic = known.get(promised) ?? new Remembered(promised);
    known.set(promised, logic);
    return logic;
  }

  private constructor(promised: Promised) {
    this.promised = promised;
    const { machine, does } = promised;
    this.taken = taken.get(machine) ?? new Map();
    taken.set(machine, this.taken);
    this.ends = new Map(Object.entries(does).map(([event, [first]]) => [event, delaysEndedBy(first)]));
    this.scope = scopeOf(machine, (action) => {
      if (action === CALLED) this.calls++;
    });
    this.first = sound(initialTransition(machine)[0]);
  }

  readonly getInitialSnapshot = (): AnyMachineSnapshot => this.first;

  readonly transition = (state: AnyMachineSnapshot, event: Event): AnyMachineSnapshot => this.take(state, event).state;

  take(state: AnyMachineSnapshot, event: Event): Taken {
    const key = keyOf(state);
    const from = this.taken.get(key) ?? new Map<string, Taken>();
    this.taken.set(key, from);
    const before = from.get(event.type);
    if (before) return before;
    this.calls = 0;
    const next = sound(this.promised.machine.transition(state as never, event, this.scope));
    const edge = { state: next, calls: this.calls };
    from.set(event.type, edge);
    return edge;
  }

  /** Whether an event can come: a delay ends only while it runs, hands do what they like, the rest where it is written. */
  happens(state: AnyMachineSnapshot, event: Event): boolean {
    const key = keyOf(state);
    const here = this.happening.get(key) ?? new Map<string, boolean>();
    this.happening.set(key, here);
    let can = here.get(event.type);
    if (can === undefined) {
      const delays = this.ends.get(event.type) ?? [];
      if (delays.length > 0) can = delays.some((id) => this.wanted(state).runs.has(id));
      else {
        can = this.promised.anytime.includes(event.type) || (writtenIn(state, event.type) && state.can(event as never));
      }
      here.set(event.type, can);
    }
    return can;
  }

  wanted(state: AnyMachineSnapshot): Wanted {
    const key = keyOf(state);
    const wanted = this.wants.get(key) ?? wantedIn(this.promised, key, Object.values(state.getMeta()) as Says[]);
    this.wants.set(key, wanted);
    return wanted;
  }
}

const answers = new WeakMap<object, Set<string>>();

/** Whether an active state names the event at all: cheaper to ask than whether its guards let it through. */
function writtenIn(state: AnyMachineSnapshot, type: string): boolean {
  return state._nodes.some((node) => {
    const events = answers.get(node) ?? new Set<string>(node.ownEvents);
    answers.set(node, events);
    return events.has(type);
  });
}

/** Runs transitions of a machine without running the machine: one scope for all, where `transition()` makes each its own. */
function scopeOf(machine: AnyStateMachine, does: (action: string) => void): AnyActorScope {
  const self = createActor(machine);
  const nothing = () => {};
  return {
    self,
    system: self.system,
    id: '',
    sessionId: '',
    logger: nothing,
    defer: nothing,
    emit: nothing,
    stopChild: nothing,
    actionExecutor: (action) => does(action.type),
  };
}

/** XState keeps what a guard throws in the snapshot and goes on with no states at all. */
function sound(state: AnyMachineSnapshot): AnyMachineSnapshot {
  if (state.status === 'error') throw state.error;
  return state;
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
