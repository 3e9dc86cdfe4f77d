/** A panel on the bench, with water and air in their places: what it asks for is kept as an engine would keep it. */
import {
  type Command,
  type ControlEventName,
  type ControlState,
  type ControlTable,
  DELAYS,
  type DelayId,
  eventNumber,
} from '../../../src/control/index.ts';
import { sees } from './sights.ts';
import type { Sight } from './vocabulary.ts';

/** A delay as one bit of a mask. */
const BIT = Object.fromEntries(Object.keys(DELAYS).map((id, i) => [id, 1 << i])) as Readonly<Record<DelayId, number>>;

/** Delays that an event ends, as a mask. */
const ENDS: ReadonlyMap<ControlEventName, number> = new Map(
  Object.values(DELAYS).map((due) => [
    due,
    Object.entries(DELAYS).reduce((mask, [id, event]) => (event === due ? mask | BIT[id as DelayId] : mask), 0),
  ]),
);

/** What a freed or released switch follows, where it is not called like itself. */
const FOLLOWS: Readonly<Partial<Record<ControlEventName, string>>> = { 'airContact.freed': 'air' };

const numbers = new WeakMap<ControlState, number>();
let met = 0;

function numberOf(state: ControlState): number {
  const number = numbers.get(state) ?? met++;
  numbers.set(state, number);
  return number;
}

export class Bench {
  private readonly table: ControlTable;
  private state: ControlState;
  private running = 0;
  /** Where water and air have each switch, whether or not it follows. */
  private stands: ReadonlyMap<string, ControlEventName> = new Map();
  private clock = true;
  /** Calls that went out during the last event. */
  calls = 0;
  /** Delays that were started while they ran. */
  readonly twice: string[] = [];

  constructor(table: ControlTable) {
    this.table = table;
    const { to, commands } = table.initial();
    this.state = to;
    this.obey(commands);
  }

  /** Another bench in the same state. */
  fork(): Bench {
    const other = Object.create(Bench.prototype) as Bench;
    return Object.assign(other, this, { twice: [] });
  }

  /** Tells apart benches that may behave differently from here on. */
  get key(): string {
    return `${numberOf(this.state)} ${this.running} ${this.clock}`;
  }

  do(events: readonly ControlEventName[]): void {
    this.calls = 0;
    for (const event of events) {
      this.send(event);
      const [part = '', what] = event.split('.');
      if (what === 'rises' || what === 'falls') this.stands = new Map(this.stands).set(part, event);
      const again = what === 'freed' || what === 'released' ? this.stands.get(FOLLOWS[event] ?? part) : undefined;
      if (again) this.send(again);
    }
  }

  runs(delay: DelayId): boolean {
    return (this.running & BIT[delay]) !== 0;
  }

  sees(sight: Sight): boolean {
    return sees(this.state, this.clock, sight);
  }

  private send(event: ControlEventName): void {
    this.running &= ~(ENDS.get(event) ?? 0);
    const { to, commands } = this.table.step(this.state, eventNumber(event));
    this.state = to;
    this.obey(commands);
  }

  private obey(commands: readonly Command[]): void {
    for (const command of commands) {
      if (command.kind === 'dial') this.calls++;
      else if (command.kind === 'stopClock') this.clock = false;
      else if (command.kind === 'startClock') this.clock = true;
      else if (command.kind === 'disarm') this.running &= ~BIT[command.delay];
      else if (this.runs(command.delay)) this.twice.push(command.delay);
      else this.running |= BIT[command.delay];
    }
  }
}
