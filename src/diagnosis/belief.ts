/** Beliefs over causes: what Bayes' rule and information theory make of a reading. A belief sums to 1. */
import { log } from '../plant/index.ts';

export type Belief = readonly number[];

/** P(outcome | cause): one row per cause, one column per outcome, each row summing to 1. */
export type OutcomeTable = readonly (readonly number[])[];

const LN2 = log(2);

/** Uncertainty of a belief, bits: H = -sum p log2 p (Shannon). */
export function entropy_bits(belief: Belief): number {
  let sum = 0;
  for (const p of belief) if (p > 0) sum -= p * log(p);
  return sum / LN2;
}

/** Weights brought to a sum of 1. Throws when all are 0: no cause explains what was seen, not even "something else". */
export function normalised(weights: readonly number[]): Belief {
  const total = weights.reduce((sum, w) => sum + w, 0);
  if (!(total > 0)) throw new Error('no cause is left');
  return weights.map((w) => w / total);
}

/** Bayes' rule: the belief after an observation that each cause gives with `likelihood`. */
export function updated(belief: Belief, likelihood: readonly number[]): Belief {
  return normalised(belief.map((p, i) => p * (likelihood[i] ?? 0)));
}

/** Chance of each outcome of a check under a belief. */
export function chances(belief: Belief, table: OutcomeTable): readonly number[] {
  const outcomes = table[0]?.length ?? 0;
  return Array.from({ length: outcomes }, (_, o) => belief.reduce((sum, p, i) => sum + p * (table[i]?.[o] ?? 0), 0));
}

/** Bits that a check is expected to bring: H(belief) less the expected entropy after it. */
export function expectedGain_bits(belief: Belief, table: OutcomeTable): number {
  let after = 0;
  chances(belief, table).forEach((chance, o) => {
    if (chance <= 0) return;
    const posterior = updated(
      belief,
      table.map((row) => row[o] ?? 0),
    );
    after += chance * entropy_bits(posterior);
  });
  return entropy_bits(belief) - after;
}
