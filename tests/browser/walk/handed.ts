/** A specification as far as hands at the page reach into it: each hand is one or several of its events in a row. */
import type { AnyMachineSnapshot } from 'xstate';
import { type Edge, edgeKey, type Walkable } from '../../control/spec/paths.ts';
import { type Event, keyOf } from '../../control/spec/remembered.ts';
import type { Promised } from '../../control/spec/vocabulary.ts';
import { logicOf, type Wanted } from '../../control/spec/wanted.ts';

/** One thing that a person does at the page. */
export interface Hand {
  readonly name: string;
  /** The action that is pressed; without one, time is let pass by the clock's own buttons. */
  readonly action?: string;
  /** What it is to the specification, in order. What cannot happen in a state is passed over. */
  readonly is: readonly string[];
  /** After how many of these events its note was written, where that is not the end. */
  readonly notedAfter?: number;
}

export class Handed implements Walkable<Wanted> {
  private readonly logic: Walkable<Wanted>;
  private readonly hands: ReadonlyMap<string, Hand>;
  private readonly first: AnyMachineSnapshot;
  private readonly met = new Map<string, AnyMachineSnapshot>();

  /** `history`: what had happened in the call before the hands come to it. */
  constructor(promised: Promised, hands: readonly Hand[], history: readonly string[]) {
    this.logic = logicOf(promised);
    this.hands = new Map(hands.map((hand) => [hand.name, hand]));
    let first = this.logic.getInitialSnapshot();
    for (const type of history) {
      if (!this.logic.happens(first, { type })) throw new Error(`${promised.name}: "${type}" cannot have happened`);
      first = this.logic.transition(first, { type });
    }
    this.first = first;
    this.remember(first);
  }

  readonly getInitialSnapshot = (): AnyMachineSnapshot => this.first;

  readonly transition = (state: AnyMachineSnapshot, event: Event): AnyMachineSnapshot => this.take(state, event).state;

  take(state: AnyMachineSnapshot, { type }: Event) {
    let calls = 0;
    let to = state;
    for (const event of this.hand(type).is) {
      if (!this.logic.happens(to, { type: event })) continue;
      const taken = this.logic.take(to, { type: event });
      calls += taken.calls;
      to = taken.state;
    }
    this.remember(to);
    return { state: to, calls };
  }

  happens(state: AnyMachineSnapshot, { type }: Event): boolean {
    return this.logic.happens(state, { type: this.hand(type).is[0] ?? '' });
  }

  wanted(state: AnyMachineSnapshot): Wanted {
    return this.logic.wanted(state);
  }

  hand(name: string): Hand {
    const hand = this.hands.get(name);
    if (!hand) throw new Error(`no hand "${name}"`);
    return hand;
  }

  /** The transitions of the specification itself that a hand takes, none where an event cannot happen. */
  within({ from, event }: Edge): (Edge | undefined)[] {
    let state = this.met.get(from);
    if (!state) throw new Error(`nobody was ever in ${from}`);
    return this.hand(event).is.map((type) => {
      const before = state as AnyMachineSnapshot;
      if (!this.logic.happens(before, { type })) return undefined;
      const taken = this.logic.take(before, { type });
      state = taken.state;
      return { from: keyOf(before), event: type, to: this.logic.wanted(taken.state), calls: taken.calls };
    });
  }

  /** Keys of the states that are compared along these edges, and of all transitions of the specification within them. */
  reach(edges: Iterable<Edge>): { readonly states: Set<string>; readonly transitions: Set<string> } {
    const states = new Set([keyOf(this.first)]);
    const transitions = new Set<string>();
    for (const edge of edges) {
      const way = this.within(edge).filter((one) => one !== undefined);
      for (const one of way) transitions.add(edgeKey(one));
      const noted = way[(this.hand(edge.event).notedAfter ?? way.length) - 1];
      for (const key of [noted?.to.key, edge.to.key]) if (key !== undefined) states.add(key);
    }
    return { states, transitions };
  }

  private remember(state: AnyMachineSnapshot): void {
    this.met.set(keyOf(state), state);
  }
}
