/** What a visit decided, beside what the simulation and the cited rules say: each decision right or wrong, and why. */
import { placedFault } from '../../faults/index.ts';
import { type Message, quantity, say } from '../../service/index.ts';
import { actionIn } from '../allowed.ts';
import { isCleared, trueFaults } from '../flags.ts';
import type { CallSession, Done } from '../session.ts';
import { faultName, listOf } from '../session-actions.ts';
import {
  ADVICE,
  type AdviceId,
  COPIES,
  DUE_TANKS,
  type Due,
  type DueTank,
  hasStore,
  itemsOf,
  WRITE_RECORD,
} from './form.ts';
import { chlorineLeft, lasts, outlookOf } from './outlook.ts';
import { allTaken } from './rows.ts';

export interface Decision {
  /** `inoperative`, `repairs`, or a field of the record. */
  readonly id: string;
  readonly right: boolean;
  readonly reason: Message;
}

/** The record as it was written last. */
export function writtenRecord({ done }: CallSession): Done | undefined {
  return done.filter(({ def }) => def.id === WRITE_RECORD).at(-1);
}

/** Faults that a visit puts right with tools and parts; what a hauler takes away is decided tank by tank. */
export function repairsOf(session: CallSession): readonly string[] {
  return trueFaults(session).filter((key) => !placedFault(key).mendedBy.some((id) => id.startsWith('pump-out:')));
}

/** A decision that is right by its answer is a guess all the same where its reading was not taken. */
export function decisionsOf(session: CallSession): readonly Decision[] {
  return answersOf(session).map((one) => (one.right && !isRead(session, one.id) ? unread(one) : one));
}

/** What has to be read for a decision; of those left out nothing. */
const READ: Readonly<Partial<Record<string, readonly string[]>>> = {
  'due-trash': ['probe-trash'],
  'due-aeration': ['settle-jar', 'core-clarifier'],
  'due-pump': ['core-sludge'],
  refill: ['look-at-disinfectant'],
};

/** What works and what is acceptable can only be said of a property that was gone through whole. */
const OF_THE_WHOLE: readonly string[] = ['inoperative', 'result'];

function isRead(session: CallSession, id: string): boolean {
  if (OF_THE_WHOLE.includes(id)) return allTaken(session);
  const { prepared, done } = session;
  const wanted = (READ[id] ?? []).filter((check) => actionIn(prepared, check) !== undefined);
  return wanted.every((check) => done.some(({ def }) => def.id === check));
}

function unread({ id }: Decision): Decision {
  return not(id, say(OF_THE_WHOLE.includes(id) ? 'decision.not-all-read' : 'decision.unread'));
}

function answersOf(session: CallSession): readonly Decision[] {
  const fill = writtenRecord(session)?.action.fill ?? {};
  const repairs = repairsOf(session);
  return [
    inoperative(listOf(fill.inoperative), session),
    repaired(session, repairs),
    ...DUE_TANKS.map((tank) => due(session, tank, fill[`due-${tank}`])),
    ...(hasStore(session.prepared.spec) ? [refill(session, fill.refill)] : []),
    result(session, repairs, fill.result),
    advice(session, listOf(fill.advice)),
    copies(listOf(fill.copies)),
    next(fill.next, repairs.length > 0),
  ];
}

/** Every item that something is wrong with is ticked, and no other. */
function inoperative(ticked: readonly string[], session: CallSession): Decision {
  const wrong = trueFaults(session).map((key) => ({ key, items: itemsOf(placedFault(key)) }));
  const missed = repairsOf(session)
    .map((key) => itemsOf(placedFault(key)))
    .find((items) => items.length > 0 && !items.some((item) => ticked.includes(item)));
  const sound = ticked.find((item) => !wrong.some(({ items }) => items.some((one) => one === item)));
  const [first] = missed ?? [];
  if (first !== undefined) return not('inoperative', say('decision.missed', { item: say(`item.${first}`) }));
  if (sound !== undefined) return not('inoperative', say('decision.sound', { item: say(`item.${sound}`) }));
  return yes('inoperative', say(ticked.length > 0 ? 'decision.found' : 'decision.all-work'));
}

function repaired(session: CallSession, repairs: readonly string[]): Decision {
  const left = repairs.find((key) => !isCleared(session, key));
  if (left !== undefined) return not('repairs', say('decision.left', { fault: faultName(left) }));
  return yes('repairs', say(repairs.length > 0 ? 'decision.repaired' : 'decision.none-needed'));
}

/** A share so near to its limit is on the line: instruments and eyes read it either way (convention). */
const ON_THE_LINE = 0.08;

/** Answers that the numbers bear out: one, or two where they are on the line between them. */
function dueAnswers(found: number, nextVisit: number): readonly Due[] {
  const near = (share: number) => Math.abs(share - 1) < ON_THE_LINE;
  const later: Due = nextVisit >= 1 ? 'before-next' : 'no';
  const first: Due = found >= 1 ? 'now' : later;
  const answers: Due[] = [first];
  if (near(found)) answers.push('now', 'before-next');
  else if (first !== 'now' && near(nextVisit)) answers.push('before-next', 'no');
  return answers;
}

function due(session: CallSession, tank: DueTank, given: unknown): Decision {
  const { found, nextVisit } = outlookOf(session.prepared);
  const right = dueAnswers(found[tank], nextVisit[tank]).some((answer) => answer === given);
  const values = {
    found: quantity('share', found[tank], 0.01),
    next: quantity('share', nextVisit[tank], 0.01),
  };
  return { id: `due-${tank}`, right, reason: say(`decision.due-${tank}`, values) };
}

function refill(session: CallSession, given: unknown): Decision {
  const filled = session.done.some(({ def }) => def.id === 'refill-disinfectant' || def.id === 'change-tablets');
  if (given === 'filled' && !filled) return not('refill', say('decision.not-filled'));
  const left = chlorineLeft(session);
  return {
    id: 'refill',
    right: lasts(left) && (given === 'filled') === filled,
    reason: say('decision.chlorine', { left: quantity('share', left, 0.1) }),
  };
}

/** As it was found: acceptable when nothing was broken and no tank was full. */
function result(session: CallSession, repairs: readonly string[], given: unknown): Decision {
  const { found } = outlookOf(session.prepared);
  const shares = DUE_TANKS.map((tank) => found[tank]);
  const bad = repairs.length > 0 || shares.some((share) => share >= 1);
  const onTheLine =
    repairs.length === 0 && shares.every((share) => share < 1 + ON_THE_LINE) && shares.some((s) => s > 1 - ON_THE_LINE);
  return {
    id: 'result',
    right: onTheLine || given === (bad ? 'unacceptable' : 'acceptable'),
    reason: say(bad ? 'decision.unacceptable' : 'decision.acceptable'),
  };
}

/** What this household has to be told beyond what every household is. */
function adviceNeeded({ prepared, service }: CallSession): readonly AdviceId[] {
  const { call } = prepared;
  const faults = service.unit.faults.map(({ fault }) => placedFault(fault.id));
  const needed = new Set<AdviceId>();
  if (call.visit?.buried !== undefined) needed.add('raise-lid');
  if (faults.some(({ mendedBy }) => mendedBy.includes('refill-disinfectant'))) needed.add('check-chlorine');
  if (faults.some(({ mendedBy }) => mendedBy.includes('advise-spare-drains'))) needed.add('spare-drains');
  return ADVICE.filter((id) => needed.has(id));
}

function advice(session: CallSession, given: readonly string[]): Decision {
  if (given.includes('open-and-look')) return not('advice', say('decision.told-to-open'));
  const missing = adviceNeeded(session).find((id) => !given.includes(id));
  if (missing !== undefined) return not('advice', say('decision.unsaid', { advice: say(`advice.${missing}`) }));
  return yes('advice', say('decision.advised'));
}

function copies(given: readonly string[]): Decision {
  return { id: 'copies', right: COPIES.every((one) => given.includes(one)), reason: say('decision.copies') };
}

function next(given: unknown, wasBroken: boolean): Decision {
  return {
    id: 'next',
    right: given === 'four-months' || (wasBroken && given === 'month'),
    reason: say('decision.next'),
  };
}

const yes = (id: string, reason: Message): Decision => ({ id, right: true, reason });
const not = (id: string, reason: Message): Decision => ({ id, right: false, reason });
