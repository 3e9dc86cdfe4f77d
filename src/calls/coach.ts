/**
 * What a coach would say now: four hints, each plainer than the one before, and the causes still likely. All of it comes
 * from what was seen so far; the coach knows no more of the property than the trainee.
 */
import {
  type Chance,
  type Diagnosis,
  keysOf,
  type Outlook,
  outlookOf,
  SOMETHING_ELSE,
  SOUND_CAUSE,
  tellingAct,
} from '../diagnosis/index.ts';
import { faultOn } from '../faults/index.ts';
import { type Message, say } from '../service/index.ts';
import { probesIn } from './expertise.ts';
import { isSame } from './flags.ts';
import { placeWords } from './places.ts';
import type { Account } from './schema.ts';
import type { CallSession, Done } from './session.ts';
import { faultName, STATE_CAUSE } from './session-actions.ts';

export interface LikelyCause {
  readonly name: Message;
  readonly chance: number;
}

export interface Advice {
  /** From the symptom to the check itself: at most one is shown at a time. */
  readonly hints: readonly Message[];
  readonly likely: readonly LikelyCause[];
  /** The action that the last hint names: once it is done, hints begin anew. */
  readonly check: string;
  /** Help that is offered unasked: a trainee goes round in circles. */
  readonly unasked?: Message;
}

/** Causes that are shown, and the least chance worth showing. */
const SHOWN = 6;
const WORTH_SHOWING = 0.01;
const LEAST_bits = 0.02;

export function adviceOn(session: CallSession, diagnosis: Diagnosis): Advice {
  const outlook = outlookOf(diagnosis, probesIn(session.prepared));
  const fixed = fixation(session.done);
  return {
    ...hintsOf(session, diagnosis, outlook),
    likely: likelyCauses(diagnosis.belief()),
    ...(fixed ? { unasked: fixed } : {}),
  };
}

export function likelyCauses(belief: readonly Chance[]): readonly LikelyCause[] {
  return belief
    .filter((c) => c.chance >= WORTH_SHOWING)
    .slice(0, SHOWN)
    .map(({ cause, chance }) => ({ name: causeName(cause), chance }));
}

/** A cause in words: one fault, several at once, none, or none that is listed. */
export function causeName(cause: string): Message {
  if (cause === SOUND_CAUSE || cause === SOMETHING_ELSE.cause) return say(`cause.${cause}`);
  const [first = '', ...more] = keysOf(cause);
  return more.reduce((one, key) => say('word.and', { one, other: faultName(key) }), faultName(first));
}

function hintsOf(session: CallSession, diagnosis: Diagnosis, outlook: Outlook): Pick<Advice, 'hints' | 'check'> {
  const [said] = session.prepared.call.report.said;
  const account = accountStill(session);
  const plain = say('hint.symptom', said ? { said } : {});
  const symptom = account ? say('hint.cue', { symptom: plain, cue: account.cue }) : plain;
  const last = session.done.at(-1)?.def.id;
  const best = outlook.options.findIndex((o) => o.bits > LEAST_bits && tellingAct(o.id)?.id !== last);
  const check = tellingAct(outlook.options[best]?.id ?? '');
  if (!check || outlook.stop <= outlook.best) return { hints: [symptom, ...enough(diagnosis)], check: STATE_CAUSE };
  const part = placeWords(check.place, session.prepared.spec).name;
  const hints = [
    symptom,
    say('hint.area', { part }),
    account ? say('hint.account', { check: account.check }) : say(`hint.kind.${check.group}`, { part }),
    say('hint.check', { check: check.label, ...parted(outlook, best) }),
  ];
  return { hints, check: check.id };
}

/** What the call's author tells of its first fault, until a check has been made that shows that. */
function accountStill({ prepared, done }: CallSession): Account | undefined {
  const told = prepared.call.faults.find((fault) => fault.account);
  const placed = told && faultOn(prepared.spec, told.fault, told.part);
  const shown = done.some(({ def }) => placed?.shownBy.includes(def.id));
  return shown ? undefined : told?.account;
}

/** No check is worth its time any more: say what it is. */
function enough(diagnosis: Diagnosis): readonly Message[] {
  const top = diagnosis.belief().find(({ cause }) => cause !== SOMETHING_ELSE.cause);
  return [say('hint.enough'), say('hint.name-it'), say('hint.cause', { cause: causeName(top?.cause ?? SOUND_CAUSE) })];
}

/** The two likeliest causes that the check would tell apart. */
function parted(outlook: Outlook, option: number): Record<'one' | 'other', Message> {
  const groups = outlook.groups[option] ?? [];
  const cause = (i: number) => outlook.suspects[i]?.hypothesis.cause ?? SOUND_CAUSE;
  const second = groups.findIndex((group, i) => group !== groups[0] && cause(i) !== cause(0));
  return { one: causeName(cause(0)), other: causeName(cause(Math.max(0, second))) };
}

/** The same check twice with nothing done in between. */
function fixation(done: readonly Done[]): Message | undefined {
  const [before, last] = done.slice(-2);
  const checks = last && (last.def.group === 'look' || last.def.group === 'measure');
  return checks && before && isSame(before, last) ? say('hint.again', { check: last.def.label }) : undefined;
}
