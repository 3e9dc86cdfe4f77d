/**
 * Which check next: the expected cost still to come, exact for few causes, by a greedy rollout for more.
 *
 * A check sorts the causes (or the forms they can take) into groups by what it would show; its outcome leaves one group.
 * What is left is a set, and J(S) = min( stop(S), min_a c(a) + sum_o P(o|S) J(S_o) ) (Pattipati and Alexandridis 1990).
 */
import { entropy_bits, normalised } from './belief.ts';

export interface Check {
  readonly cost: number;
  /** Group of each cause: causes of one group cannot be told apart by it. */
  readonly groups: readonly number[];
}

export interface Problem {
  readonly belief: readonly number[];
  /** Which of them are forms of the same cause, where they are: only causes need telling apart. Each its own if left out. */
  readonly causeOf?: readonly number[];
  readonly checks: readonly Check[];
  /** Cost of stopping with these causes left (by index): of mending what it may be. */
  readonly stop: (left: readonly number[]) => number;
}

/** Causes and checks up to which every plan is weighed; beyond, checks are valued by a greedy rollout. */
const EXACT = { causes: 10, checks: 10 };

export interface Advice {
  /** Least expected cost still to come. */
  readonly best: number;
  /** What stopping now is expected to cost, and each check followed by the best that comes after. */
  readonly stop: number;
  readonly after: readonly number[];
  readonly exact: boolean;
}

/** Values every check, and stopping, at a belief. */
export function advise(problem: Problem): Advice {
  const exact = problem.belief.length <= EXACT.causes && problem.checks.length <= EXACT.checks;
  const all = problem.belief.map((_, i) => i).filter((i) => (problem.belief[i] ?? 0) > 0);
  const value = exact ? optimal(problem) : greedy(problem);
  const after = problem.checks.map((check) => {
    const parts = split(all, check);
    return parts.length < 2 ? check.cost + value(all) : check.cost + expected(problem, all, parts, value);
  });
  const stop = problem.stop(all);
  return { best: Math.min(stop, ...after), stop, after, exact };
}

type Value = (left: readonly number[]) => number;

/** Least expected cost by trying every plan; sets are met again, so their values are kept. */
export function optimal(problem: Problem): Value {
  const known = new Map<string, number>();
  const value: Value = (left) => {
    const key = left.join();
    const before = known.get(key);
    if (before !== undefined) return before;
    let best = problem.stop(left);
    for (const check of problem.checks) {
      if (check.cost >= best) continue;
      const parts = split(left, check);
      if (parts.length > 1) best = Math.min(best, check.cost + expected(problem, left, parts, value));
    }
    known.set(key, best);
    return best;
  };
  return value;
}

/** Expected cost of always taking the check with most bits per cost, as long as that is cheaper than stopping. */
export function greedy(problem: Problem): Value {
  const known = new Map<string, number>();
  const value: Value = (left) => {
    const key = left.join();
    const before = known.get(key);
    if (before !== undefined) return before;
    const stop = problem.stop(left);
    const check = mostBitsPerCost(problem, left);
    const on = check && check.cost < stop ? check.cost + expected(problem, left, split(left, check), value) : stop;
    known.set(key, Math.min(stop, on));
    return Math.min(stop, on);
  };
  return value;
}

/** The check with most expected bits per cost; undefined when none tells the causes left apart. */
export function mostBitsPerCost(problem: Problem, left: readonly number[]): Check | undefined {
  let best: Check | undefined;
  let most = 0;
  for (const check of problem.checks) {
    const rate = gain_bits(problem, left, check) / Math.max(check.cost, 1e-9);
    if (rate > most) [best, most] = [check, rate];
  }
  return best;
}

/** Bits a check is expected to bring about which cause of a set it is. */
export function gain_bits(problem: Problem, left: readonly number[], check: Check): number {
  const parts = split(left, check);
  if (parts.length < 2) return 0;
  const total = mass(problem, left);
  const after = parts.reduce((sum, part) => sum + (mass(problem, part) / total) * causeEntropy_bits(problem, part), 0);
  return causeEntropy_bits(problem, left) - after;
}

/** Uncertainty about the cause within a set, bits. */
export function causeEntropy_bits(problem: Problem, left: readonly number[]): number {
  return entropy_bits(normalised([...causeChances(problem, left).values()]));
}

/** Weight of each cause within a set. */
export function causeChances({ belief, causeOf }: Problem, left: readonly number[]): ReadonlyMap<number, number> {
  const chances = new Map<number, number>();
  for (const i of left) {
    const cause = causeOf?.[i] ?? i;
    chances.set(cause, (chances.get(cause) ?? 0) + (belief[i] ?? 0));
  }
  return chances;
}

/** A set of causes by what a check would show of them. */
export function split(left: readonly number[], check: Check): readonly (readonly number[])[] {
  const parts = new Map<number, number[]>();
  for (const cause of left) {
    const group = check.groups[cause] ?? 0;
    const part = parts.get(group);
    if (part) part.push(cause);
    else parts.set(group, [cause]);
  }
  return [...parts.values()];
}

function expected(
  problem: Problem,
  left: readonly number[],
  parts: readonly (readonly number[])[],
  value: Value,
): number {
  const total = mass(problem, left);
  return parts.reduce((sum, part) => sum + (mass(problem, part) / total) * value(part), 0);
}

function mass(problem: Problem, causes: readonly number[]): number {
  return causes.reduce((sum, i) => sum + (problem.belief[i] ?? 0), 0);
}
