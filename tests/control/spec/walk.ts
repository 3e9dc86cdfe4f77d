/** Executes the paths of a specification against a panel and compares after every step. */
import {
  type ControlEventName,
  type ControlState,
  type ControlTable,
  DELAYS,
  eventNumber,
} from '../../../src/control/index.ts';
import { type Edge, edgeKey, planOf } from './paths.ts';
import type { Wanted } from './remembered.ts';
import type { Promised, Sight } from './vocabulary.ts';

/** One row of the table a run prints. */
export interface Row {
  readonly promise: string;
  readonly unit: string;
  readonly fault: string;
  readonly states: number;
  readonly transitions: number;
  readonly paths: number;
  readonly steps: number;
  /** Parts of the states and of the transitions that were executed, 0 to 1. */
  readonly statesDone: number;
  readonly transitionsDone: number;
  readonly ms: number;
}

export interface Failure {
  readonly path: readonly string[];
  readonly problems: readonly string[];
}

const DUE: ReadonlyMap<ControlEventName, string[]> = new Map(
  Object.values(DELAYS).map((due) => [
    due,
    Object.entries(DELAYS).flatMap(([id, event]) => (event === due ? [id] : [])),
  ]),
);

const FOLLOWS: Readonly<Partial<Record<ControlEventName, string>>> = { 'airContact.freed': 'air' };

/** A panel on the bench, with water and air in their places: what it asks for is kept as an engine would keep it. */
class Bench {
  private readonly table: ControlTable;
  private state: ControlState;
  readonly running = new Set<string>();
  private clock = true;
  /** Where water and air have each switch, whether or not it follows. */
  private readonly stands = new Map<string, ControlEventName>();
  calls = 0;
  readonly problems: string[] = [];

  constructor(table: ControlTable) {
    this.table = table;
    const { to, commands } = table.initial();
    this.state = to;
    this.obey(commands);
  }

  do(events: readonly ControlEventName[]): void {
    this.calls = 0;
    for (const event of events) {
      this.send(event);
      const [part, what] = event.split('.');
      if (what === 'rises' || what === 'falls') this.stands.set(part ?? '', event);
      // A freed or released part follows the water or the air again.
      const again = what === 'freed' || what === 'released' ? this.stands.get(FOLLOWS[event] ?? part ?? '') : undefined;
      if (again) this.send(again);
    }
  }

  private send(event: ControlEventName): void {
    for (const id of DUE.get(event) ?? []) this.running.delete(id);
    const { to, commands } = this.table.step(this.state, eventNumber(event));
    this.state = to;
    this.obey(commands);
  }

  sees(sight: Sight): boolean {
    const { outputs } = this.state;
    if (sight === 'pump') return outputs.pumpRuns;
    if (sight === 'stalledPump') return outputs.pumpStalls;
    if (sight === 'compressor') return outputs.compressorRuns;
    if (sight === 'ultraviolet') return outputs.ultravioletLit;
    if (sight === 'clock') return this.clock;
    return outputs[sight];
  }

  private obey(commands: ReturnType<ControlTable['step']>['commands']): void {
    for (const command of commands) {
      if (command.kind === 'dial') this.calls++;
      else if (command.kind === 'stopClock') this.clock = false;
      else if (command.kind === 'startClock') this.clock = true;
      else if (command.kind === 'disarm') this.running.delete(command.delay);
      else if (this.running.has(command.delay))
        this.problems.push(`the delay ${command.delay} is started while it runs`);
      else this.running.add(command.delay);
    }
  }
}

/** Walks a promise under a fault. Every path is executed, also after one has failed. */
export function walk(promised: Promised, fault: string, table: ControlTable): { row: Row; failures: Failure[] } {
  const began = performance.now();
  const plan = planOf(promised, fault);
  const met = new Set<string>();
  const taken = new Set<string>();
  const failures: Failure[] = [];
  let steps = 0;
  for (const path of plan.paths) {
    const bench = new Bench(table);
    bench.do(promised.before ?? []);
    let problems = differences(promised, bench, plan.start, 0);
    let done = 0;
    met.add(plan.start.key);
    while (problems.length === 0 && done < path.length) {
      const edge = path[done++] as Edge;
      bench.do(promised.does[edge.event] ?? []);
      problems = differences(promised, bench, edge.to, edge.calls);
      taken.add(edgeKey(edge));
      met.add(edge.to.key);
    }
    steps += done;
    if (problems.length > 0) failures.push({ path: path.slice(0, done).map((e) => e.event), problems });
  }
  const row: Row = {
    promise: promised.name,
    unit: promised.unit,
    fault,
    states: plan.states.size,
    transitions: plan.transitions.size,
    paths: plan.paths.length,
    steps,
    statesDone: met.size / plan.states.size,
    transitionsDone: taken.size / plan.transitions.size,
    ms: performance.now() - began,
  };
  return { row, failures: failures.sort((a, b) => a.path.length - b.path.length) };
}

function differences(promised: Promised, bench: Bench, wanted: Wanted, calls: number): string[] {
  const found = [...bench.problems];
  for (const sight of promised.sights) {
    const claim = wanted.sees.get(sight);
    if (claim && bench.sees(sight) !== claim.want) {
      found.push(`${sight} is ${onOff(!claim.want)}, want ${onOff(claim.want)}: ${claim.says}`);
    }
  }
  for (const delay of promised.delays) {
    if (bench.running.has(delay) === wanted.runs.has(delay)) continue;
    found.push(`the delay ${delay} ${wanted.runs.has(delay) ? 'does not run, it must' : 'runs, it must not'}`);
  }
  if (bench.calls !== calls) found.push(`${bench.calls} calls went out, want ${calls}`);
  return found;
}

const onOff = (on: boolean): string => (on ? 'on' : 'off');

/** A failure in lines, for a person. */
export function told({ path, problems }: Failure): string {
  return `after ${path.length === 0 ? 'the start' : path.join(' > ')}:\n    ${problems.join('\n    ')}`;
}
