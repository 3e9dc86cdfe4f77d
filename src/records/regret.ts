/** What records' steps cost over the best from the same facts, in minutes: shown beside the scores, never counted in them. */
import type { StepReviewView } from '../calls/lesson.ts';
import type { Message } from '../service/message.ts';

/** What of a reviewed step is asked here. */
type Weighed = Pick<StepReviewView, 'label' | 'regret_min'>;

/** Of all steps of a call together. */
export function regretIn(steps: readonly Pick<Weighed, 'regret_min'>[]): number {
  return steps.reduce((sum, { regret_min = 0 }) => sum + regret_min, 0);
}

/** A step that people take, what it cost all of them together, and in how many records it cost anything. */
export interface Dear {
  readonly label: Message;
  readonly minutes: number;
  readonly records: number;
}

/** Less than this in all the records together is not worth a line (convention). */
const LEAST_min = 1;

/** At which steps most was lost, the dearest first. */
export function dearest(records: readonly (readonly Weighed[])[]): readonly Dear[] {
  const lost = new Map<string, Dear>();
  for (const steps of records) {
    for (const [key, { label, minutes }] of ofOne(steps)) {
      const before = lost.get(key);
      lost.set(key, { label, minutes: (before?.minutes ?? 0) + minutes, records: (before?.records ?? 0) + 1 });
    }
  }
  return [...lost]
    .filter(([, { minutes }]) => minutes >= LEAST_min)
    .sort(([a, one], [b, other]) => other.minutes - one.minutes || (a < b ? -1 : 1))
    .map(([, one]) => one);
}

/** Steps of one record by their words; the same step taken twice is one. */
function ofOne(steps: readonly Weighed[]): ReadonlyMap<string, { readonly label: Message; readonly minutes: number }> {
  const sums = new Map<string, { label: Message; minutes: number }>();
  for (const { label, regret_min = 0 } of steps) {
    if (regret_min <= 0) continue;
    const key = JSON.stringify(label);
    sums.set(key, { label, minutes: (sums.get(key)?.minutes ?? 0) + regret_min });
  }
  return sums;
}
