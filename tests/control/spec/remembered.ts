/** A machine with its transitions remembered, and with what its states want to be seen: what `xstate/graph` walks. */
import { type AnyActorScope, type AnyMachineSnapshot, type AnyStateMachine, initialTransition } from 'xstate';
import { pureScope } from '../../../src/control/pure.ts';
import { CALLED } from './vocabulary.ts';

export type Event = { readonly type: string };

/** What is wanted in a state; its key tells states apart. */
export interface Keyed {
  readonly key: string;
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

export class Remembered<W extends Keyed> {
  private readonly machine: AnyStateMachine;
  private readonly tells: (key: string, meta: readonly unknown[]) => W;
  private readonly allows: (state: AnyMachineSnapshot, event: string, wanted: W) => boolean;
  private readonly taken: Map<string, Map<string, Taken>>;
  private readonly wants = new Map<string, W>();
  private readonly allowed = new Map<string, Map<string, boolean>>();
  private readonly first: AnyMachineSnapshot;
  private readonly scope: AnyActorScope;
  private calls = 0;

  constructor(
    machine: AnyStateMachine,
    tells: (key: string, meta: readonly unknown[]) => W,
    allows: (state: AnyMachineSnapshot, event: string, wanted: W) => boolean,
  ) {
    this.machine = machine;
    this.tells = tells;
    this.allows = allows;
    this.taken = taken.get(machine) ?? new Map();
    taken.set(machine, this.taken);
    this.scope = pureScope(machine, (action) => {
      if (action.type === CALLED) this.calls++;
    });
    this.first = sound(initialTransition(machine)[0]);
  }

  readonly getInitialSnapshot = (): AnyMachineSnapshot => this.first;

  readonly transition = (state: AnyMachineSnapshot, event: Event): AnyMachineSnapshot => this.take(state, event).state;

  take(state: AnyMachineSnapshot, event: Event): Taken {
    const from = within(this.taken, keyOf(state));
    const before = from.get(event.type);
    if (before) return before;
    this.calls = 0;
    const next = sound(this.machine.transition(state as never, event, this.scope));
    const edge = { state: next, calls: this.calls };
    from.set(event.type, edge);
    return edge;
  }

  happens(state: AnyMachineSnapshot, event: Event): boolean {
    const here = within(this.allowed, keyOf(state));
    const can = here.get(event.type) ?? this.allows(state, event.type, this.wanted(state));
    here.set(event.type, can);
    return can;
  }

  wanted(state: AnyMachineSnapshot): W {
    const key = keyOf(state);
    const wanted = this.wants.get(key) ?? this.tells(key, Object.values(state.getMeta()));
    this.wants.set(key, wanted);
    return wanted;
  }
}

function within<V>(map: Map<string, Map<string, V>>, key: string): Map<string, V> {
  const inner = map.get(key) ?? new Map<string, V>();
  map.set(key, inner);
  return inner;
}

const answers = new WeakMap<object, Set<string>>();

/** Whether the event is written for a state as it stands: cheaper to ask of its nodes before asking the guards. */
export function written(state: AnyMachineSnapshot, type: string): boolean {
  const named = state._nodes.some((node) => {
    const events = answers.get(node) ?? new Set<string>(node.ownEvents);
    answers.set(node, events);
    return events.has(type);
  });
  return named && state.can({ type } as never);
}

/** XState keeps what a guard throws in the snapshot and goes on with no states at all. */
function sound(state: AnyMachineSnapshot): AnyMachineSnapshot {
  if (state.status === 'error') throw state.error;
  return state;
}
