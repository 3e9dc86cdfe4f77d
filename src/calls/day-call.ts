import { draw } from '../plant/random.ts';

/** What is asked of a call to tell whether a day can be its own. */
export interface DayCandidate {
  readonly id: string;
  readonly kind: 'alarm' | 'complaint' | 'visit';
}

/**
 * The call of a day, the same for everybody who has the same calls: all that ship in an order drawn anew for each run through
 * them, one a day, so that none comes again before all have been. A routine visit is nobody's call. The call keeps its own
 * seed: it was proved with that, and its record names the file that holds it.
 *
 * `day`: days since some first day, whole and not negative; the order of the candidates does not matter.
 */
export function callOfDay(day: number, candidates: readonly DayCandidate[]): string {
  const ids = candidates.flatMap(({ id, kind }) => (kind === 'visit' ? [] : [id])).sort();
  const run = Math.floor(day / ids.length);
  const order = orderOf(run, ids);
  // Two runs meet without the same call on two days in a row.
  if (run > 0 && order.length > 2 && order[0] === orderOf(run - 1, ids).at(-1))
    order.splice(1, 0, ...order.splice(0, 1));
  return order[day % ids.length] ?? '';
}

/** The calls as a run takes them: Fisher and Yates' shuffle, its chances counted and not rolled. */
function orderOf(run: number, ids: readonly string[]): string[] {
  const left = [...ids];
  return ids.map((_, i) => left.splice(Math.floor(draw(run, 'call-of-day', i) * left.length), 1)[0] ?? '');
}
