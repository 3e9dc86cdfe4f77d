/**
 * Control at no cost: the states met are interned and every edge taken is remembered, next state and commands, also
 * where the state does not change. XState computes an edge once per process; after that it is one array look-up.
 */
import { type AnyMachineSnapshot, initialTransition, transition } from 'xstate';
import { type Command, type ControlEventName, type DelayId, EVENTS } from './events.ts';
import { holds, type RegionStates } from './logic.ts';
import { controlMachine } from './machine.ts';
import { type OutputId, type Outputs, WIRING } from './wiring.ts';

export interface ControlState {
  /** The state in canonical form: what a snapshot keeps. */
  readonly key: string;
  readonly regions: RegionStates;
  readonly outputs: Outputs;
  readonly edges: (Edge | undefined)[];
}

export interface Edge {
  readonly to: ControlState;
  readonly commands: readonly Command[];
}

const EVENT_NUMBER: ReadonlyMap<ControlEventName, number> = new Map(EVENTS.map((name, i) => [name, i]));

/** An event's number, for `step`. */
export function eventNumber(name: ControlEventName): number {
  const number = EVENT_NUMBER.get(name);
  if (number === undefined) throw new Error(`no control event "${name}"`);
  return number;
}

export class ControlTable {
  private readonly states = new Map<string, ControlState>();
  private readonly snapshots = new Map<ControlState, AnyMachineSnapshot>();
  private first: Edge | undefined;

  /** The state a unit starts in, and the delays that already run there. */
  initial(): Edge {
    if (!this.first) {
      const [snapshot, actions] = initialTransition(controlMachine);
      this.first = { to: this.intern(snapshot), commands: commandsOf(actions) };
    }
    return this.first;
  }

  /** What an event does in a state. */
  step(state: ControlState, event: number): Edge {
    return state.edges[event] ?? this.compute(state, event);
  }

  /** The state with a key that a snapshot kept. Throws when the key is not one of this machine. */
  restore(key: string): ControlState {
    const known = this.states.get(key);
    if (known) return known;
    const value = JSON.parse(key) as Record<string, string>;
    const state = this.intern(controlMachine.resolveState({ value, context: {} }));
    // XState fills in what a value leaves out: a key that is not whole would pass for another state.
    if (state.key !== key) throw new Error('the key of no control state');
    return state;
  }

  /** States and edges met so far. */
  size(): { states: number; edges: number } {
    let edges = 0;
    for (const state of this.states.values()) edges += state.edges.filter((e) => e !== undefined).length;
    return { states: this.states.size, edges };
  }

  private compute(state: ControlState, event: number): Edge {
    const snapshot = this.snapshots.get(state);
    const type = EVENTS[event];
    if (!snapshot || !type) throw new Error(`no edge for event ${event} from a foreign state`);
    const [next, actions] = transition(controlMachine, snapshot as Parameters<typeof transition>[1] & never, { type });
    const edge = { to: this.intern(next), commands: commandsOf(actions) };
    state.edges[event] = edge;
    return edge;
  }

  private intern(snapshot: AnyMachineSnapshot): ControlState {
    const regions = snapshot.value as RegionStates;
    const key = JSON.stringify(
      Object.fromEntries(
        Object.keys(regions)
          .sort()
          .map((r) => [r, regions[r]]),
      ),
    );
    const known = this.states.get(key);
    if (known) return known;
    const state: ControlState = {
      key,
      regions,
      outputs: outputsOf(regions),
      edges: new Array<Edge | undefined>(EVENTS.length).fill(undefined),
    };
    this.states.set(key, state);
    this.snapshots.set(state, snapshot);
    return state;
  }
}

/** What the wires carry in a state. */
export function outputsOf(regions: RegionStates): Outputs {
  const outputs = {} as Record<OutputId, boolean>;
  for (const id of Object.keys(WIRING) as OutputId[]) outputs[id] = holds(WIRING[id], regions);
  return outputs;
}

function commandsOf(actions: readonly { type: string; params?: unknown }[]): Command[] {
  return actions.flatMap((action): Command[] => {
    if (action.type === 'dial') return [{ kind: 'dial' }];
    if (action.type !== 'arm' && action.type !== 'disarm') return [];
    return [{ kind: action.type, delay: (action.params as { delay: DelayId }).delay }];
  });
}
