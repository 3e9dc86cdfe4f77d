/**
 * Mending by trial: one cause is there, each mend ends some causes and is followed by a look whether it did. The expected
 * cost of an order is sum_i c_i P(not ended by those before i) (Heckerman, Breese and Rommelse 1995); for mends of one
 * cause each, which always succeed, the order of falling p/c is the cheapest.
 */

export interface Mend {
  readonly cost: number;
  /** Chance that it ends each cause. */
  readonly ends: readonly number[];
}

/** Expected cost of trying mends in their order until the trouble is gone. */
export function expectedRepairCost(belief: readonly number[], order: readonly Mend[]): number {
  let left = [...belief];
  let total = 0;
  for (const mend of order) {
    total += mend.cost * left.reduce((sum, p) => sum + p, 0);
    left = left.map((p, i) => p * (1 - (mend.ends[i] ?? 0)));
  }
  return total;
}

/** The same for mends of one cause each, `costs[i]` for cause i, in the best order. */
export function trialCost(belief: readonly number[], costs: readonly number[]): number {
  const order = belief
    .map((p, i) => ({ p, cost: costs[i] ?? 0 }))
    .filter(({ p }) => p > 0)
    .sort((a, b) => b.p * a.cost - a.p * b.cost);
  let left = order.reduce((sum, { p }) => sum + p, 0);
  let total = 0;
  for (const { p, cost } of order) {
    total += cost * left;
    left -= p;
  }
  return total;
}
