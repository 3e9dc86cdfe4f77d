/** Regret of the records of a class: what their steps cost over the best from the same facts. */
import { loadRecord, type Prepared, prepareCall, type StepReviewView } from '../calls/index.ts';
import { type Counts, type Dear, dearest, regretIn, reviewed } from '../records/index.ts';

/** A record that counts, with the text of its file. */
export interface Counted {
  readonly marked: Counts;
  readonly text: string;
}

/** Minutes of each record's regret, and at which steps most was lost. */
export interface Regrets {
  readonly of: (best: Counts) => number;
  readonly dearest: readonly Dear[];
}

/** Works it out call by call, for setting one up takes longer than many of its records; `tell` hears how far it is. */
export function regretsOf(
  counted: readonly Counted[],
  calls: ReadonlyMap<string, Prepared>,
  tell: (done: number) => void,
): Regrets {
  const reviews = new Map<string, readonly StepReviewView[]>();
  let done = 0;
  for (const id of new Set(counted.map(({ marked }) => marked.call))) {
    const call = calls.get(id)?.call;
    // Anew for each call: what its diagnosis begins with is let go of with it.
    const prepared = call && prepareCall(call);
    for (const { marked, text } of counted.filter((one) => one.marked.call === id)) {
      const record = loadRecord(text);
      if (prepared && record.ok && !reviews.has(marked.deeds)) {
        reviews.set(marked.deeds, reviewed(prepared, record.value));
      }
      tell(++done);
    }
  }
  const stepsOf = ({ deeds }: Counts) => reviews.get(deeds) ?? [];
  return { of: (best) => regretIn(stepsOf(best)), dearest: dearest(counted.map(({ marked }) => stepsOf(marked))) };
}
