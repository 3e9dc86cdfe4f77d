/**
 * A routine visit as the expert makes it: the checklist from its first line to its last, what is found put right and shown,
 * and a record that decides by the readings. A reading that nothing on the list explains is followed up like a call.
 */
import { placedFault } from '../../faults/index.ts';
import { type Fullness, type Quantity, sharesOf } from '../../service/index.ts';
import type { CallSession } from '../session.ts';
import { ADVICE, COPIES, DUE_TANKS, type Due, hasStore, itemsOf } from '../visit/form.ts';
import { rowsWanted, SIGNED } from '../visit/rows.ts';
import { expertOn } from './expert.ts';
import { Hand } from './hand.ts';
import { leave, makeSafe, showSpray } from './site.ts';

const REFILL = 'refill-disinfectant';
/** A store that an eye sees under half is filled up while one is there (common practice, no source). */
const HALF = 0.5;
/** Of what a tank may hold, four months bring about so much at a house in ordinary use (convention, from the simulation). */
const FOUR_MONTHS = 0.25;

/** Readings that tell how full a tank is, or that its chlorine is low: decided in the record, and not searched for. */
const DECIDED = ['probe-trash', 'settle-jar', 'core-clarifier', 'core-sludge', 'look-at-disinfectant', 'dip-strip'];

const ALARMS = ['make-air-alarm', 'lift-float:highWaterFloat'];

export function playVisit(session: CallSession): void {
  const hand = new Hand(session);
  makeSafe(hand);
  if (session.service.person.buried.size > 0) hand.do('dig-up-lid');
  for (const { id, wants } of rowsWanted(session.prepared)) {
    if (id === SIGNED) continue;
    for (const [first] of wants) if (first !== undefined) take(hand, first);
  }
  const low = store(session) < HALF;
  if (low) for (const id of [REFILL, 'watch-feed']) hand.doSafely(id);
  const strange = offIn(session).filter((id) => !DECIDED.includes(id));
  const mended = strange.length > 0 ? expertOn(session).putRight() : [];
  hand.do('sign-label');
  leave(hand, recordOf(session, mended, low));
}

function take(hand: Hand, id: string): void {
  // A lamp that something before left lit would hide this alarm.
  if (ALARMS.includes(id)) hand.do('reset-panel');
  if (id === 'look-at-field' || id === 'zone-pressure') showSpray(hand);
  else hand.doSafely(id);
}

/** Checks whose reading was out of order. */
function offIn({ done }: CallSession): readonly string[] {
  return done.filter(({ outcome }) => outcome.notes.some((n) => n.remark?.tone === 'off')).map(({ def }) => def.id);
}

/** A number of the newest note that a check wrote. */
function read({ service }: CallSession, by: string, gap: string): number | undefined {
  const note = service.person.notebook.filter((n) => n.by === by).at(-1);
  return (note?.reading.values?.[gap] as Quantity | undefined)?.value;
}

/** Share of its chlorine that was seen; full where there is none to fill. */
function store(session: CallSession): number {
  if (!hasStore(session.prepared.spec)) return 1;
  return read(session, 'look-at-disinfectant', 'share') ?? 0;
}

/** Shares of their limits that the readings tell of; what was not read is taken for nothing. */
function fullness(session: CallSession): Fullness {
  const number = (by: string, gap: string, unread = 0) => read(session, by, gap) ?? unread;
  return sharesOf(session.prepared.spec, {
    trash_m: number('probe-trash', 'sludge') + number('probe-trash', 'scum'),
    // A jar without a line to read has not settled.
    settled_mLL: 1000 * number('settle-jar', 'settled', 1),
    clear_m: number('core-clarifier', 'clear', Number.POSITIVE_INFINITY),
    cored_m: number('core-sludge', 'mean'),
  });
}

function dueBy(share: number): Due {
  if (share >= 1) return 'now';
  return share + FOUR_MONTHS >= 1 ? 'before-next' : 'no';
}

function recordOf(session: CallSession, mended: readonly string[], filled: boolean) {
  const { spec, call } = session.prepared;
  const shares = fullness(session);
  const empty = offIn(session).includes('look-at-disinfectant');
  const spares = mended.some((key) => placedFault(key).mendedBy.includes('advise-spare-drains'));
  const items = mended.flatMap((key) => itemsOf(placedFault(key)).slice(0, 1));
  const broken = [...new Set([...items, ...(empty ? ['disinfection'] : [])])];
  const advice = ADVICE.filter(
    (id) =>
      (id === 'raise-lid' && call.visit?.buried !== undefined) ||
      (id === 'check-chlorine' && empty) ||
      (id === 'spare-drains' && spares),
  );
  const due = Object.fromEntries(DUE_TANKS.map((tank) => [`due-${tank}`, dueBy(shares[tank])]));
  const sound = broken.length === 0 && DUE_TANKS.every((tank) => shares[tank] < 1);
  return {
    inoperative: broken,
    ...due,
    ...(hasStore(spec) ? { refill: filled ? 'filled' : 'enough' } : {}),
    result: sound ? 'acceptable' : 'unacceptable',
    advice,
    copies: [...COPIES],
    next: 'four-months',
  };
}
