/** Who chose which answer: of those with the highest totals, of those with the lowest, of all. */

/** Share of persons at either end who are compared (Kelley 1939, from memory). */
const END_SHARE = 0.27;

export interface Chosen {
  readonly answer: string;
  readonly right: boolean;
  readonly times: number;
  /** Shares of the persons at either end who gave it. */
  readonly high: number;
  readonly low: number;
}

/**
 * What was given to one item, what came most often first. `given` and `totals` go by person; nothing given is no answer. More than one
 * answer can be right where a number is asked for.
 * Persons with the same total as the last of an end belong to it: who they are does not depend on their order.
 */
export function chosen(
  given: readonly (string | undefined)[],
  totals: readonly number[],
  right: ReadonlySet<string>,
): Chosen[] {
  const sorted = [...totals].sort((a, b) => a - b);
  const size = Math.max(1, Math.round(END_SHARE * totals.length));
  const [top, bottom] = [sorted.at(-size) ?? 0, sorted[size - 1] ?? 0];
  const high = given.filter((_, i) => (totals[i] ?? 0) >= top);
  const low = given.filter((_, i) => (totals[i] ?? 0) <= bottom);
  const answers = [...new Set(given)].filter((one): one is string => one !== undefined);
  const share = (of: readonly (string | undefined)[], answer: string) =>
    of.filter((one) => one === answer).length / of.length;
  return answers
    .map((answer) => ({
      answer,
      right: right.has(answer),
      times: given.filter((one) => one === answer).length,
      high: share(high, answer),
      low: share(low, answer),
    }))
    .sort((a, b) => b.times - a.times || (a.answer < b.answer ? -1 : 1));
}
