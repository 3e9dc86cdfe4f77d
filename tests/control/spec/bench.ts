/** A panel on the bench, with water and air in their places: what it asks for is kept as an engine would keep it. */
import {
  type Command,
  type ControlEventName,
  type ControlState,
  type ControlTable,
  DELAYS,
  eventNumber,
} from '../../../src/control/index.ts';
import type { Sight } from './vocabulary.ts';

const ENDS: ReadonlyMap<ControlEventName, readonly string[]> = new Map(
  Object.values(DELAYS).map((due) => [
    due,
    Object.entries(DELAYS).flatMap(([id, event]) => (event === due ? [id] : [])),
  ]),
);

/** What a freed or released switch follows, where it is not called like itself. */
const FOLLOWS: Readonly<Partial<Record<ControlEventName, string>>> = { 'airContact.freed': 'air' };

const HANDLES = {
  alarmHandle: 'alarmBreaker',
  compressorHandle: 'compressorBreaker',
  pumpHandle: 'pumpBreaker',
} as const;

export class Bench {
  private readonly table: ControlTable;
  private state: ControlState;
  private readonly running: Set<string>;
  /** Where water and air have each switch, whether or not it follows. */
  private readonly stands: Map<string, ControlEventName>;
  private clock = true;
  /** Calls that went out during the last event. */
  calls = 0;
  /** Delays that were started while they ran. */
  readonly twice: string[] = [];

  constructor(table: ControlTable, from?: Bench) {
    this.table = table;
    const { to, commands } = table.initial();
    this.state = from?.state ?? to;
    this.running = new Set(from?.running);
    this.stands = new Map(from?.stands);
    if (from) this.clock = from.clock;
    else this.obey(commands);
  }

  /** Another bench in the same state. */
  fork(): Bench {
    return new Bench(this.table, this);
  }

  /** Tells apart benches that may behave differently from here on. */
  get key(): string {
    return `${this.state.key}${[...this.running].sort()}${this.clock}`;
  }

  do(events: readonly ControlEventName[]): void {
    this.calls = 0;
    for (const event of events) {
      this.send(event);
      const [part = '', what] = event.split('.');
      if (what === 'rises' || what === 'falls') this.stands.set(part, event);
      const again = what === 'freed' || what === 'released' ? this.stands.get(FOLLOWS[event] ?? part) : undefined;
      if (again) this.send(again);
    }
  }

  runs(delay: string): boolean {
    return this.running.has(delay);
  }

  sees(sight: Sight): boolean {
    const { outputs, regions } = this.state;
    switch (sight) {
      case 'pump':
        return outputs.pumpRuns;
      case 'stalledPump':
        return outputs.pumpStalls;
      case 'compressor':
        return outputs.compressorRuns;
      case 'clock':
        return this.clock;
      case 'alarmHandle':
      case 'compressorHandle':
      case 'pumpHandle':
        return regions[HANDLES[sight]] === 'on';
      default:
        return outputs[sight];
    }
  }

  private send(event: ControlEventName): void {
    for (const id of ENDS.get(event) ?? []) this.running.delete(id);
    const { to, commands } = this.table.step(this.state, eventNumber(event));
    this.state = to;
    this.obey(commands);
  }

  private obey(commands: readonly Command[]): void {
    for (const command of commands) {
      if (command.kind === 'dial') this.calls++;
      else if (command.kind === 'stopClock') this.clock = false;
      else if (command.kind === 'startClock') this.clock = true;
      else if (command.kind === 'disarm') this.running.delete(command.delay);
      else if (this.running.has(command.delay)) this.twice.push(command.delay);
      else this.running.add(command.delay);
    }
  }
}
