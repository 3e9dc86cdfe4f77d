/** Steps through the control for tests: by name, at random, and as they are written. */
import { type ControlEventName, type ControlState, type ControlTable, eventNumber } from '../../src/control/index.ts';
import type { PartState } from '../../src/control/parts.ts';
import { tableOf } from './panels.ts';

/** A hand on the panel: sends events and keeps the commands they led to. */
export class Bench {
  private readonly table: ControlTable;
  state: ControlState;
  /** Commands since the start, as "arm lowAir", "disarm lowAir" or "dial". */
  readonly asked: string[] = [];

  constructor(...events: ControlEventName[]) {
    this.table = tableOf('u1');
    this.state = this.table.initial().to;
    this.send(...events);
  }

  send(...events: ControlEventName[]): this {
    for (const event of events) {
      const edge = this.table.step(this.state, eventNumber(event));
      this.state = edge.to;
      for (const c of edge.commands) this.asked.push('delay' in c ? `${c.kind} ${c.delay}` : c.kind);
    }
    return this;
  }

  /** How often a command was asked for. */
  times(command: string): number {
    return this.asked.filter((c) => c === command).length;
  }

  /** The last thing asked of a delay: whether it runs now. */
  runs(delay: string): boolean {
    return this.asked.findLast((c) => c.endsWith(` ${delay}`)) === `arm ${delay}`;
  }

  get out() {
    return this.state.outputs;
  }

  in(region: string): string | undefined {
    return this.state.regions[region];
  }
}

/** A transition as it is written in a part. */
export interface Written {
  readonly from: string;
  /** The event, or undefined for one taken by itself. */
  readonly event: string | undefined;
  readonly target: string;
  readonly dials: boolean;
  readonly guard: unknown;
}

/** Every transition written in a region. */
export function written(states: Readonly<Record<string, PartState>>): Written[] {
  return Object.entries(states).flatMap(([from, state]) => [
    ...Object.entries(state.on ?? {}).flatMap(([event, to]) => list(to).map((t) => asWritten(from, event, t))),
    ...list(state.always ?? []).map((t) => asWritten(from, undefined, t)),
  ]);
}

type OneOf<T> = T extends readonly (infer U)[] ? U : T;
type Transition = OneOf<NonNullable<PartState['always']>>;

function list(to: NonNullable<PartState['always']>): readonly Transition[] {
  return Array.isArray(to) ? to : [to];
}

function asWritten(from: string, event: string | undefined, to: Transition): Written {
  const t = typeof to === 'string' ? { target: to } : to;
  const dials = (t.actions as { type?: string } | undefined)?.type === 'dial';
  return { from, event, target: t.target ?? from, dials, guard: t.guard };
}

/** Regions and states that a guard reads. XState's guards are functions that carry what they were made of. */
export function statesRead(guard: unknown): readonly (readonly [region: string, state: string])[] {
  if (guard === undefined) return [];
  const made = guard as { stateValue?: Record<string, string>; guards?: readonly unknown[] };
  if (made.stateValue) return Object.entries(made.stateValue);
  if (!made.guards) throw new Error('a guard that does not read states');
  return made.guards.flatMap(statesRead);
}
