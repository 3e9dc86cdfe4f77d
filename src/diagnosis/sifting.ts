/**
 * Readings put together, beside the belief and without its weights: which causes are left when only those stay that show
 * every reading, and, where no single fault does, which two together hit every conflict.
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
  /** The single faults left; where none is, the pairs that hit every conflict. Faults of one set stand together. */
  readonly explanations: readonly (readonly string[])[];
}

/** By step: whether a form of a cause showed what was read. */
type Account = readonly boolean[];

export function siftingOf(diagnosis: Diagnosis): Sifting {
  const accounts = diagnosis.accounts();
  const singles = [...accounts].filter(([cause]) => keysOf(cause).length === 1);
  const all = Array.from({ length: diagnosis.steps }, (_, step) => step);
  const left = (by: readonly number[]) =>
    singles.filter(([, forms]) => forms.some((shows) => by.every((step) => shows[step])));
  const readings = fewest(all, (by) => left(by).length);
  const suffice = readings.map((step, i) => ({ step, left: left(readings.slice(0, i + 1)).length }));
  const causes = left(all).map(([cause]) => [cause]);
  const explanations = causes.length > 0 ? causes : pairsHitting(conflictsOf(accounts, singles, all));
  const sound = accounts.get(SOUND_CAUSE)?.some((shows) => all.every((step) => shows[step])) ?? false;
  return { of: singles.length, readings: suffice, sound, explanations };
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

/** For each reading that a sound property would not have given: the single faults that give it. */
function conflictsOf(
  accounts: ReadonlyMap<string, readonly Account[]>,
  singles: readonly (readonly [string, readonly Account[]])[],
  steps: readonly number[],
): ReadonlySet<string>[] {
  const shows = (forms: readonly Account[] | undefined, step: number) => forms?.some((one) => one[step]) ?? false;
  return steps
    .filter((step) => !shows(accounts.get(SOUND_CAUSE), step))
    .map((step) => new Set(singles.filter(([, forms]) => shows(forms, step)).map(([cause]) => cause)));
}

function pairsHitting(conflicts: readonly ReadonlySet<string>[]): readonly (readonly string[])[] {
  return minimalHittingSets(conflicts, 2).filter((set) => set.length === 2);
}
