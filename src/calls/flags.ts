/** What a debrief comes back to: procedure and record faults, each with its instant and one sentence in `words`. */

import { placedFault } from '../faults/index.ts';
import { type Note, RECORD_LINES } from '../service/index.ts';
import { spent } from './cost.ts';
import { phaseOf, stepState } from './procedure.ts';
import { proofsShown } from './proof.ts';
import type { CallSession, Done } from './session.ts';
import { listOf } from './session-actions.ts';
import { takenOut } from './taught.ts';

export type FlagId =
  | 'reset-before-reading'
  | 'reset-twice'
  | 'closed-unwatched'
  | 'closed-needing-visit'
  | 'no-follow-up'
  | 'wrong-urgency'
  | 'needless-visit'
  | 'part-not-on-truck'
  | 'part-not-needed'
  | 'no-suspect'
  | 'repeated-check'
  | 'cause-after-mend'
  | 'wrong-cause'
  | 'unverified-close'
  | 'left-unready'
  | 'record-short'
  | 'household-not-told'
  | 'told-to-open'
  | 'sprayed-uncleared'
  | 'over-limit'
  | 'label-unsigned';

export interface Flag {
  readonly id: FlagId;
  readonly at_ms: number;
}

type Rule = (session: CallSession) => Flag[];

const first = (session: CallSession, id: string): Done | undefined => session.done.find((d) => d.def.id === id);
const closing = (session: CallSession): number => session.now_ms;
const flag = (id: FlagId, at_ms: number): Flag[] => [{ id, at_ms }];

/** A tripped lever is evidence: it is read before it is touched. */
const resetBeforeReading: Rule = (s) => {
  const reset = first(s, 'guide-reset');
  const state = stepState(s.procedure, 'breakers');
  return reset && state !== 'done' ? flag('reset-before-reading', reset.at_ms) : [];
};

const resetTwice: Rule = (s) => {
  const resets = s.done.filter((d) => d.def.id === 'guide-reset');
  return resets[1] ? flag('reset-twice', resets[1].at_ms) : [];
};

/** A lamp that stays out is only known after five minutes. */
const closedUnwatched: Rule = (s) => {
  if (phaseOf(s.procedure) !== 'closedByPhone') return [];
  const reset = s.done.findIndex((d) => d.def.id === 'guide-reset');
  const watched = s.done.some((d, i) => i > reset && d.def.id === 'guide-watch');
  return reset >= 0 && watched ? [] : flag('closed-unwatched', closing(s));
};

const closedNeedingVisit: Rule = (s) =>
  phaseOf(s.procedure) === 'closedByPhone' && s.prepared.call.expected.decision === 'visit'
    ? flag('closed-needing-visit', closing(s))
    : [];

const noFollowUp: Rule = (s) => {
  const close = first(s, 'decide-close');
  if (!close) return [];
  const ticked = listOf(close.action.fill?.['follow-up']);
  const needed = ['call-tomorrow', 'count-trip', 'visit-if-again'];
  return needed.every((n) => ticked.includes(n)) && !ticked.includes('nothing')
    ? []
    : flag('no-follow-up', close.at_ms);
};

const wrongUrgency: Rule = (s) => {
  const { decision, urgency } = s.prepared.call.expected;
  const visit = first(s, 'decide-visit');
  if (!visit || decision !== 'visit') return [];
  return s.urgency && urgency.includes(s.urgency) ? [] : flag('wrong-urgency', visit.at_ms);
};

const needlessVisit: Rule = (s) => {
  const visit = first(s, 'decide-visit');
  return visit && s.prepared.call.expected.decision === 'close' ? flag('needless-visit', visit.at_ms) : [];
};

const partNotOnTruck: Rule = (s) =>
  s.done.filter((d) => d.outcome.fetched).map((d) => ({ id: 'part-not-on-truck', at_ms: d.at_ms }));

const partNotNeeded: Rule = (s) =>
  s.done
    .filter((d) => d.outcome.needless && !(solidsGather(s) && isFull(s, d)))
    .map((d) => ({ id: 'part-not-needed', at_ms: d.at_ms }));

/** On a living property and on a routine visit tanks fill without a fault. */
const solidsGather = ({ prepared }: CallSession): boolean =>
  prepared.lived !== undefined || prepared.call.kind === 'visit';

/** What shows that a tank wants pumping out. */
const FULLNESS: Readonly<Partial<Record<string, string>>> = {
  'pump-out:trash': 'probe-trash',
  'pump-out:aeration': 'settle-jar',
  'pump-out:pump': 'core-sludge',
};

/** Whether a tank was pumped out after a check had shown it full. */
function isFull(s: CallSession, { def, at_ms }: Done): boolean {
  return s.done.some(
    (d) => d.at_ms < at_ms && d.def.id === FULLNESS[def.id] && d.outcome.notes.some((n) => n.remark?.tone === 'off'),
  );
}

/** Before a mend one says what one suspects. */
const noSuspect: Rule = (s) => {
  const blind = s.done.find((d) => d.def.group === 'mend' && !d.def.id.startsWith('clean-') && d.suspects.length === 0);
  return blind && (s.cause === undefined || s.cause.at_ms > blind.at_ms) ? flag('no-suspect', blind.at_ms) : [];
};

/** The same check twice running, with nothing done in between, tells nothing new. */
const repeatedCheck: Rule = (s) =>
  s.done
    .filter((d, i) => {
      const before = s.done[i - 1];
      return (d.def.group === 'measure' || d.def.group === 'look') && before !== undefined && isSame(before, d);
    })
    .slice(0, 1)
    .map((d) => ({ id: 'repeated-check', at_ms: d.at_ms }));

/** The same action with the same answers: a meter's probes on other screws are another check. */
export function isSame(one: Done, other: Done): boolean {
  return one.def.id === other.def.id && JSON.stringify(one.action.fill) === JSON.stringify(other.action.fill);
}

const causeAfterMend: Rule = (s) => {
  const mend = s.done.find((d) => d.def.group === 'mend' && d.outcome.mended.length > 0);
  return mend && (s.cause === undefined || s.cause.at_ms > mend.outcome.to_ms)
    ? flag('cause-after-mend', mend.at_ms)
    : [];
};

const wrongCause: Rule = (s) => (s.cause && !causeRight(s) ? flag('wrong-cause', s.cause.at_ms) : []);

const unverifiedClose: Rule = (s) => {
  if (phaseOf(s.procedure) !== 'closed') return [];
  return missingProofs(s).length === 0 ? [] : flag('unverified-close', closing(s));
};

/** Breakers on, selector in Auto, no lock left on, lamp dark: the unit is left to run by itself. */
const leftUnready: Rule = (s) =>
  phaseOf(s.procedure) === 'closed' && !leftReady(s) ? flag('left-unready', closing(s)) : [];

const recordShort: Rule = (s) => {
  if (phaseOf(s.procedure) !== 'closed') return [];
  const lines = listOf(first(s, 'write-record')?.action.fill?.lines);
  return RECORD_LINES.every((l) => lines.includes(l)) ? [] : flag('record-short', closing(s));
};

const householdNotTold: Rule = (s) => {
  if (phaseOf(s.procedure) !== 'closed') return [];
  const told = listOf(first(s, 'tell-household')?.action.fill?.told);
  const needed = ['what-was-wrong', 'what-alarm-means', 'keep-lids-shut'];
  return needed.every((n) => told.includes(n)) ? [] : flag('household-not-told', closing(s));
};

const toldToOpen: Rule = (s) => {
  const tell = first(s, 'tell-household');
  return tell && listOf(tell.action.fill?.told).includes('open-and-look') ? flag('told-to-open', tell.at_ms) : [];
};

const sprayedUncleared: Rule = (s) =>
  s.done
    .filter((d) => d.outcome.sprayedUncleared)
    .slice(0, 1)
    .map((d) => ({ id: 'sprayed-uncleared', at_ms: d.at_ms }));

const overLimit: Rule = (s) => {
  const { minutes, money_usd } = spent(s);
  const { limits } = s.prepared.call;
  return minutes > limits.minutes || money_usd > limits.money_usd ? flag('over-limit', closing(s)) : [];
};

/** A visit stands on the label with its date, for whoever comes next. */
const labelUnsigned: Rule = (s) =>
  phaseOf(s.procedure) === 'closed' && !first(s, 'sign-label') ? flag('label-unsigned', closing(s)) : [];

/** Rules of a call by phone and of the search for a cause. */
const SEARCH_RULES: readonly Rule[] = [
  resetBeforeReading,
  resetTwice,
  closedUnwatched,
  closedNeedingVisit,
  noFollowUp,
  wrongUrgency,
  needlessVisit,
  noSuspect,
  causeAfterMend,
  wrongCause,
  recordShort,
];

/** Rules of all work on a site. */
const SITE_RULES: readonly Rule[] = [
  partNotOnTruck,
  partNotNeeded,
  repeatedCheck,
  unverifiedClose,
  leftUnready,
  householdNotTold,
  toldToOpen,
  sprayedUncleared,
  overLimit,
];

export function flagsOf(session: CallSession): Flag[] {
  const ofItsKind = session.prepared.call.kind === 'visit' ? [labelUnsigned] : SEARCH_RULES;
  return [...ofItsKind, ...SITE_RULES].flatMap((rule) => rule(session)).sort((a, b) => a.at_ms - b.at_ms);
}

/** The faults that were really there and that a technician can mend, by key; one that the trainer took out only where it was named. */
export function trueFaults(session: CallSession): readonly string[] {
  const { lived } = session.prepared;
  if (lived) return [...lived.causes, ...lived.wearing.filter((key) => session.cause?.keys.includes(key))];
  const out = takenOut(session.log);
  const there = new Set(session.service.unit.faults.map((f) => f.fault.id));
  return [...there].filter(
    (key) => placedFault(key).family !== 'use' && (!out.has(key) || session.cause?.keys.includes(key)),
  );
}

export function causeRight(session: CallSession): boolean {
  const named = new Set(session.cause?.keys);
  const truth = trueFaults(session);
  return named.size === truth.length && truth.every((key) => named.has(key));
}

/** Whether the notes given as evidence show each named fault itself. */
export function evidenceEnough(session: CallSession): boolean {
  const { cause, service } = session;
  if (!cause) return false;
  const given = service.person.notebook.filter((n) => cause.evidence.includes(n.id));
  const shows = (note: Note, key: string) =>
    [note.by, note.asGoodAs].some((check) => check !== undefined && placedFault(key).shownBy.includes(check));
  return cause.keys.every((key) => given.some((note) => shows(note, key)));
}

/** Whether a fault is over: mended, or the part it had put wrong is right again. */
export function isCleared(session: CallSession, key: string): boolean {
  const { unit } = session.service;
  const { clearedWhen } = placedFault(key);
  if (clearedWhen) {
    const { regions } = unit.control;
    return clearedWhen.every(({ region, state }) => regions[region] === undefined || regions[region] === state);
  }
  return unit.isOver(key);
}

/** Proofs that the true faults want and that were not shown after the last mend. */
export function missingProofs(session: CallSession): readonly string[] {
  const shown = proofsShown(session.done, session.prepared.spec.panel);
  const wanted = new Set(trueFaults(session).flatMap((key) => placedFault(key).proof));
  return [...wanted].filter((p) => !shown.has(p));
}

export function leftReady(session: CallSession): boolean {
  const { unit, person } = session.service;
  const { regions, outputs } = unit.control;
  const breakersOn = ['alarmBreaker', 'compressorBreaker', 'pumpBreaker'].every((b) => regions[b] === 'on');
  return breakersOn && regions.selector === 'auto' && person.locks.size === 0 && !outputs.lamp;
}
