/**
 * What a trainer does to a call while somebody takes it: stops the clock, drops a fault in or takes one out, marks a moment
 * and goes back to it. All of it stands in the log beside what the trainee did, so a record replays with it and shows it.
 */
import { faultsOf, type PlacedFault, placedFault } from '../faults/index.ts';
import { type Fill, type Message, say } from '../service/index.ts';
import type { UnitSpec } from '../unit/index.ts';
import type { CallSession, Logged } from './session.ts';
import { isTeaching, TEACH } from './teach-ids.ts';

/** A fault grows or fades over three days at most: no call lasts longer. */
const LONGEST_h = 72;

/** Whether a fault can be dropped in: what a household draws is settled when a call begins, and not changed in it. */
export function canDropIn({ effect, family }: PlacedFault): boolean {
  return family !== 'use' && effect.uses === undefined && effect.away_d === undefined;
}

/** The faults that can be dropped into a unit. */
export function droppable(spec: UnitSpec): readonly PlacedFault[] {
  return faultsOf(spec).filter(canDropIn);
}

/** Does to the property what a trainer asks for, at the present instant. Returns why not, where it cannot be done. */
export function teach({ service, prepared }: CallSession, id: string, fill: Fill): Message | undefined {
  const { unit } = service;
  if (id !== TEACH.faultIn && id !== TEACH.faultOut) return undefined;
  const key = String(fill.fault ?? '');
  const fault = droppable(prepared.spec).find((one) => one.key === key);
  const ramp_h = Number(fill.ramp_h ?? 0);
  if (!(ramp_h >= 0 && ramp_h <= LONGEST_h)) return say('why.no-such-ramp', { most: LONGEST_h });
  if (id === TEACH.faultOut) {
    if (!unit.stands(key)) return say('why.fault-not-there');
    unit.fade(key, ramp_h * 3600);
    for (const event of placedFault(key).rightedBy) {
      if (event === 'timer.set') unit.setClock(0);
      else unit.send(event);
    }
    return undefined;
  }
  const severity = Number(fill.severity ?? fault?.severity ?? 1);
  if (!fault || !(severity > 0 && severity <= 1)) return say('why.no-such-fault');
  if (unit.stands(key)) return say('why.fault-there');
  unit.begin({
    id: key,
    effect: fault.effect,
    onset_s: unit.t,
    severity,
    ramp_s: ramp_h * 3600,
    present: fault.spells ?? 'always',
  });
  return undefined;
}

/** The trainer's hand on the clock: it changes nothing on the property, and holds whatever is gone back to. */
const CLOCK: ReadonlySet<string> = new Set([TEACH.freeze, TEACH.go, TEACH.speed]);

/** What still holds of a log: without what was done between a moment and going back to it, and without the clock's. */
export function wayOf(log: readonly Logged[]): readonly Logged[] {
  let way: readonly Logged[] = [];
  log.forEach((one, place) => {
    if (one.do === TEACH.back) way = wayOf(log.slice(0, Math.min(place, Number(one.fill?.moment) + 1)));
    else if (!CLOCK.has(one.do)) way = [...way, one];
  });
  return way;
}

/** Whether the clock is stopped: that holds whatever is gone back to. */
export function isFrozen(log: readonly Logged[]): boolean {
  return log.findLast((one) => one.do === TEACH.freeze || one.do === TEACH.go)?.do === TEACH.freeze;
}

/** The instant that was gone back to, until the trainee goes on from there. */
export function goneBackTo_ms(log: readonly Logged[]): number | undefined {
  const last = log.findLast(({ do: id }) => id === TEACH.back || !isTeaching(id));
  return last?.do === TEACH.back ? log[Number(last.fill?.moment)]?.at_ms : undefined;
}
