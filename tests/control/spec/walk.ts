/**
 * Executes a specification against a panel and compares after every step, twice over: along the paths that
 * `xstate/graph` made, and jointly, through every pair of a specification's state and a panel's state that any
 * sequence of events leads to. The paths cover; the pairs leave no sequence out.
 */
import type { ControlTable } from '../../../src/control/index.ts';
import { Bench } from './bench.ts';
import { type Edge, edgeKey, type Plan, planOf } from './paths.ts';
import type { Promised } from './vocabulary.ts';
import type { Wanted } from './wanted.ts';

/** One row of the table a run prints. */
export interface Row {
  readonly promise: string;
  readonly unit: string;
  readonly fault: string;
  readonly states: number;
  readonly transitions: number;
  readonly paths: number;
  readonly steps: number;
  /** Pairs of a state of the specification with a state of the panel, all that there are. */
  readonly pairs: number;
  /** Parts of the states and of the transitions that the paths executed, 0 to 1. */
  readonly statesDone: number;
  readonly transitionsDone: number;
  readonly ms: number;
}

export interface Failure {
  readonly path: readonly string[];
  readonly problems: readonly string[];
}

export interface Walked {
  readonly row: Row;
  /** Paths that failed, the shortest first. */
  readonly failures: readonly Failure[];
  /** The shortest of all sequences that fail, if any does. */
  readonly shortest: Failure | undefined;
}

/** Walks a promise under a fault, or under several at once. Every path is executed, also after one has failed. */
export function walk(promised: Promised, fault: string | readonly string[], table: ControlTable): Walked {
  const began = performance.now();
  const faults = typeof fault === 'string' ? [fault] : fault;
  const plan = planOf(promised, ...faults);
  const { met, taken, steps, failures } = alongPaths(promised, plan, table);
  const { pairs, shortest } = jointly(promised, plan, table);
  const row: Row = {
    promise: promised.name,
    unit: promised.unit,
    fault: faults.join(' and '),
    states: plan.edges.size,
    transitions: plan.transitions,
    paths: plan.paths.length,
    steps,
    pairs,
    statesDone: met.size / plan.edges.size,
    transitionsDone: taken.size / plan.transitions,
    ms: performance.now() - began,
  };
  return { row, failures, shortest };
}

/** The shortest of all sequences that fail: what the joint walk alone finds, at a fraction of the time. */
export function shortestFailure(promised: Promised, fault: string, table: ControlTable): Failure | undefined {
  return jointly(promised, planOf(promised, fault), table).shortest;
}

function started(promised: Promised, table: ControlTable): Bench {
  const bench = new Bench(table);
  bench.do(promised.before ?? []);
  return bench;
}

function alongPaths(promised: Promised, plan: Plan, table: ControlTable) {
  const met = new Set([plan.start.key]);
  const taken = new Set<string>();
  const failures: Failure[] = [];
  let steps = 0;
  for (const path of plan.paths) {
    const bench = started(promised, table);
    let problems = differences(promised, bench, plan.start, 0);
    let done = 0;
    for (const edge of path) {
      if (problems.length > 0) break;
      done++;
      bench.do(promised.does[edge.event] ?? []);
      problems = differences(promised, bench, edge.to, edge.calls);
      taken.add(edgeKey(edge));
      met.add(edge.to.key);
    }
    steps += done;
    if (problems.length > 0) failures.push({ path: path.slice(0, done).map((e) => e.event), problems });
  }
  return { met, taken, steps, failures: failures.sort((a, b) => a.path.length - b.path.length) };
}

interface Pair {
  readonly key: string;
  readonly bench: Bench;
  readonly from: Pair | undefined;
  readonly by: Edge | undefined;
}

/** Breadth first through the pairs, so that the first failure is a shortest one. */
function jointly(promised: Promised, plan: Plan, table: ControlTable): { pairs: number; shortest?: Failure } {
  const first: Pair = { key: plan.start.key, bench: started(promised, table), from: undefined, by: undefined };
  const atStart = differences(promised, first.bench, plan.start, 0);
  if (atStart.length > 0) return { pairs: 1, shortest: { path: [], problems: atStart } };
  const numbers = new Map([...plan.edges.keys()].map((key, i) => [key, i]));
  const name = ({ key, bench }: Pair): string => `${numbers.get(key)} ${bench.key}`;
  const seen = new Set([name(first)]);
  const queue = [first];
  for (const pair of queue) {
    for (const edge of plan.edges.get(pair.key) ?? []) {
      const bench = pair.bench.fork();
      bench.do(promised.does[edge.event] ?? []);
      const next: Pair = { key: edge.to.key, bench, from: pair, by: edge };
      const problems = differences(promised, bench, edge.to, edge.calls);
      if (problems.length > 0) return { pairs: seen.size, shortest: { path: history(next), problems } };
      if (seen.has(name(next))) continue;
      seen.add(name(next));
      queue.push(next);
    }
  }
  return { pairs: seen.size };
}

function history(pair: Pair): string[] {
  return pair.from && pair.by ? [...history(pair.from), pair.by.event] : [];
}

function differences(promised: Promised, bench: Bench, wanted: Wanted, calls: number): string[] {
  const found = bench.twice.map((delay) => `the delay ${delay} is started while it runs`);
  for (const sight of promised.sights) {
    const claim = wanted.sees.get(sight);
    if (claim && bench.sees(sight) !== claim.want) {
      found.push(`${sight} is ${onOff(!claim.want)}, want ${onOff(claim.want)}: ${claim.says}`);
    }
  }
  for (const delay of promised.delays) {
    if (bench.runs(delay) === wanted.runs.has(delay)) continue;
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
