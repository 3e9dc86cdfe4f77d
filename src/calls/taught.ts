/** What a log tells of a trainer's hand in a call: told apart from `teaching.ts`, for no call needs it while it is taken. */
import { type Message, say } from '../service/index.ts';
import type { Logged } from './session.ts';
import { faultName } from './session-actions.ts';
import { isTeaching, TEACH } from './teach-ids.ts';
import { wayOf } from './teaching.ts';

/** A moment that was marked: its place in the log, its name, and its instant. */
export interface Moment {
  readonly place: number;
  readonly name: string;
  readonly at_ms: number;
}

export function momentsOf(log: readonly Logged[]): readonly Moment[] {
  return log.flatMap(({ do: id, fill, at_ms }, place) =>
    id === TEACH.moment ? [{ place, name: String(fill?.name ?? ''), at_ms }] : [],
  );
}

/** Faults that the trainer took out and did not put in again, by key: nobody need mend them. */
export function takenOut(log: readonly Logged[]): ReadonlySet<string> {
  const out = new Set<string>();
  for (const { do: id, fill } of wayOf(log)) {
    const key = String(fill?.fault ?? '');
    if (id === TEACH.faultOut) out.add(key);
    else if (id === TEACH.faultIn) out.delete(key);
  }
  return out;
}

/** When the trainer first changed the works: from then on nobody who reckons by the report can reckon right. */
export function changedAt_ms(log: readonly Logged[]): number {
  const change = wayOf(log).find(({ do: id }) => id === TEACH.faultIn || id === TEACH.faultOut);
  return change?.at_ms ?? Number.POSITIVE_INFINITY;
}

/** Whether a trainer had a hand in it at all. */
export function isTaught(log: readonly { readonly do: string }[]): boolean {
  return log.some(({ do: id }) => isTeaching(id));
}

/** What a trainer did, in words. */
export function teachingWords({ do: id, fill = {} }: Logged): Message {
  const rate = Number(fill.rate);
  if (id === TEACH.speed) return Number.isFinite(rate) ? say(`event.${id}`, { rate }) : say('event.teach-next');
  if (id === TEACH.moment) return say(`event.${id}`, { name: String(fill.name ?? '') });
  return fill.fault === undefined ? say(`event.${id}`) : say(`event.${id}`, { fault: faultName(String(fill.fault)) });
}
