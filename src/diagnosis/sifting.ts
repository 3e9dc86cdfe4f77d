/**
 * Readings put together, beside the belief and without its weights: which causes are left when only those stay that show
 * every reading. Where no single fault does, a listed pair may; else two that hit every conflict between them.
 */
import { minimalHittingSets } from './conflicts.ts';
import type { Diagnosis } from './diagnosis.ts';
import { keysOf, SOUND_CAUSE } from './hypotheses.ts';

export interface Sifting {
  /** How many single faults there are to begin with. */
  readonly of: number;
  /** The fewest readings that leave no more than all of them do (by the greedy rule), and how many faults each leaves. */
  readonly readings: readonly { readonly step: number; readonly left: number }[];
  /** Whether a sound property would have shown it all. */
  readonly sound: boolean;
  /** The single faults left; where none is, pairs of faults, the keys of each together. */
  readonly explanations: readonly (readonly string[])[];
}

/** A cause, and by form and step whether it showed what was read. */
type Account = readonly [cause: string, forms: readonly (readonly boolean[])[]];

/** Sifts by the first so many of the things seen: what a works shows after its mend tells of the mend. */
export function siftingOf(diagnosis: Diagnosis, steps: number): Sifting {
  const accounts: readonly Account[] = [...diagnosis.accounts()];
  const ofSize = (n: number) => accounts.filter(([cause]) => keysOf(cause).length === n);
  const singles = ofSize(1);
  const all = Array.from({ length: steps }, (_, step) => step);
  const readings = fewest(all, (by) => leftOf(singles, by).length);
  const sound = accounts.filter(([cause]) => cause === SOUND_CAUSE);
  const causes = [...leftOf(singles, all), ...leftOf(ofSize(2), all)].map(([cause]) => keysOf(cause));
  const fewestFaults = Math.min(...causes.map((keys) => keys.length));
  return {
    of: singles.length,
    readings: readings.map((step, i) => ({ step, left: leftOf(singles, readings.slice(0, i + 1)).length })),
    sound: leftOf(sound, all).length > 0,
    explanations:
      causes.length > 0
        ? causes.filter((keys) => keys.length === fewestFaults)
        : pairsHitting(conflictsOf(sound, singles, all)),
  };
}

/** The causes that show each of these readings in one form or another: when it came, and how bad it is, nobody knows. */
function leftOf(accounts: readonly Account[], by: readonly number[]): readonly Account[] {
  return accounts.filter(([, forms]) => by.every((step) => forms.some((shows) => shows[step])));
}

/** Of all readings the fewest that leave no more than all: each next one is that which leaves least. In their order. */
function fewest(all: readonly number[], left: (by: readonly number[]) => number): readonly number[] {
  const kept: number[] = [];
  for (let least = left([]); ; ) {
    const rest = all.map((step) => ({ step, leaves: left([...kept, step]) }));
    const best = rest.reduce<(typeof rest)[number] | undefined>(
      (a, b) => (a && a.leaves <= b.leaves ? a : b),
      undefined,
    );
    if (!best || best.leaves >= least) return kept.sort((a, b) => a - b);
    kept.push(best.step);
    least = best.leaves;
  }
}

/**
 * For each reading that a sound property would not have given: the single faults that give it. One that no single fault
 * gives shows two at once, and says nothing of either.
 */
function conflictsOf(
  sound: readonly Account[],
  singles: readonly Account[],
  steps: readonly number[],
): ReadonlySet<string>[] {
  return steps
    .filter((step) => leftOf(sound, [step]).length === 0)
    .map((step) => new Set(leftOf(singles, [step]).map(([cause]) => cause)))
    .filter((causes) => causes.size > 0);
}

function pairsHitting(conflicts: readonly ReadonlySet<string>[]): readonly (readonly string[])[] {
  return minimalHittingSets(conflicts, 2).filter((set) => set.length === 2);
}
