/** One random life of a unit, held against every invariant, against its own replays, and healed at its end. */
import { restore, type Snapshot, snapshot, Unit } from '../../src/unit/index.ts';
import type { Life } from './any-history.ts';
import { heal, unhealthy } from './healing.ts';
import { play, setupOfHistory, wordOf } from './histories.ts';
import { Invariants } from './invariants.ts';

/** What a number of lives came to. */
export interface Tally {
  lives: number;
  events: number;
  hours: number;
  worst: number;
}

export const noLives = (): Tally => ({ lives: 0, events: 0, hours: 0, worst: 0 });

/** Lives it, and says everything that was broken; adds to the tally. */
export function live({ history, slices, cut_s }: Life, tally: Tally): string[] {
  const setup = setupOfHistory(history);
  const unit = new Unit(setup);
  const seen = new Invariants(unit);
  play(unit, history);
  const word = wordOf(unit);

  const found = seen.breaches;
  const twin = new Unit(setup);
  const before = slices.filter((s) => s < cut_s);
  play(twin, { ...history, hands: history.hands.filter((h) => h.at_s <= cut_s), end_s: cut_s }, before);
  const kept = JSON.parse(JSON.stringify(snapshot(twin))) as Snapshot;
  const written = twin.log.length;
  // What was done at the very instant of the snapshot is done: only later hands are left.
  const rest = { ...history, hands: history.hands.filter((h) => h.at_s > cut_s) };
  play(twin, rest, slices);
  if (wordOf(twin) !== word) found.push('replayed in slices it is another history');
  const later = play(restore(setup, kept), rest);
  if (wordOf(later) !== wordOf(twin, written)) found.push(`restored at ${cut_s} s it goes on otherwise`);

  heal(unit, history.end_s);
  found.push(...unhealthy(unit));

  tally.lives += 1;
  tally.events += seen.events;
  tally.hours += unit.t / 3600;
  tally.worst = Math.max(tally.worst, seen.worst);
  return found;
}

export function told({ lives, events, hours, worst }: Tally): string {
  return `${lives} lives, ${Math.round(hours / 24)} days, ${events} control events, worst closure ${worst}`;
}
