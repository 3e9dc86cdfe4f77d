/**
 * Control at no cost: the states met are interned and every edge taken is remembered, next state and commands, also
 * where the state does not change. XState computes an edge once per process; after that it is one array look-up.
 */
import { type AnyActorScope, type AnyMachineSnapshot, initialTransition } from 'xstate';
import { type Command, type ControlEventName, type DelayId, EVENTS } from './events.ts';
import { holds, type RegionStates } from './logic.ts';
import { type Panel, panelOf } from './machine.ts';
import { type AskedAction, pureScope } from './pure.ts';
import type { OutputId, Outputs, PanelKind, Wiring } from './wiring.ts';

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

  readonly panel: Panel;
  private asked: AskedAction[] = [];
  private readonly scope: AnyActorScope;

  constructor(panel: Panel) {
    this.panel = panel;
    this.scope = pureScope(panel.machine, (action) => this.asked.push(action));
  }

  /** The state a unit starts in, and the delays that already run there. */
  initial(): Edge {
    if (!this.first) {
      const [snapshot, actions] = initialTransition(this.panel.machine);
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
    const state = this.intern(this.panel.machine.resolveState({ value, context: {} }));
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
    this.asked = [];
    const next = this.panel.machine.transition(snapshot as never, { type }, this.scope);
    const edge = { to: this.intern(next), commands: commandsOf(this.asked) };
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
      outputs: outputsOf(this.panel.wiring, regions),
      edges: new Array<Edge | undefined>(EVENTS.length).fill(undefined),
    };
    this.states.set(key, state);
    this.snapshots.set(state, snapshot);
    return state;
  }
}

/** What the wires carry in a state. */
export function outputsOf(wiring: Wiring, regions: RegionStates): Outputs {
  const outputs = {} as Record<OutputId, boolean>;
  for (const id of Object.keys(wiring) as OutputId[]) outputs[id] = holds(wiring[id], regions);
  return outputs;
}

const tables = new Map<string, ControlTable>();

/** The table of a kind of panel: one for the whole process, so that an edge is computed once. */
export function controlTable(kind: PanelKind): ControlTable {
  const key = JSON.stringify([
    kind.floats,
    kind.alarm,
    kind.lamps,
    kind.dosing,
    kind.clock,
    kind.gfci,
    kind.ultraviolet,
  ]);
  const table = tables.get(key) ?? new ControlTable(panelOf(kind));
  tables.set(key, table);
  return table;
}

function commandsOf(actions: readonly AskedAction[]): Command[] {
  return actions.flatMap((action): Command[] => {
    if (action.type === 'dial' || action.type === 'stopClock' || action.type === 'startClock') {
      return [{ kind: action.type }];
    }
    if (action.type !== 'arm' && action.type !== 'disarm') return [];
    return [{ kind: action.type, delay: (action.params as { delay: DelayId }).delay }];
  });
}
