/**
 * A reviewed step in words: what was seen, what that meant for the causes, and the next useful question. Of the works and
 * the evidence, never of the person, in small pieces (Shute 2008, Review of Educational Research 78:153).
 */
import { keysOf, SOMETHING_ELSE, SOUND_CAUSE } from '../diagnosis/hypotheses.ts';
import { tellingAct } from '../diagnosis/probes.ts';
import { PLACED_FAULTS } from '../faults/index.ts';
import { type Message, quantity, say } from '../service/index.ts';
import { causeName } from './coach.ts';
import type { Finding, StepReview } from './review.ts';
import type { CallSession, Done } from './session.ts';

/** A cause before and after a step. */
export interface CauseShift {
  readonly name: Message;
  readonly before: number;
  readonly after: number;
  /** Whether it was among the person's own suspects then. */
  readonly ticked: boolean;
}

export interface StepReviewView {
  readonly step: number;
  readonly at_ms: number;
  readonly weighed: boolean;
  readonly label: Message;
  readonly seen: readonly Message[];
  /** What it meant, and a question. */
  readonly lesson: readonly Message[];
  /** The likeliest causes, those that were or became so. */
  readonly causes: readonly CauseShift[];
  readonly expected_bits?: number;
  readonly brought_bits: number;
  readonly regret_min?: number;
  readonly best?: Message;
  readonly finding?: Finding;
}

/** Causes that are shown, and the least chance worth showing. */
const SHOWN = 5;
const WORTH_SHOWING = 0.01;
/** A chance that moved by less stands as it stood; one over the second is enough to act on (conventions). */
const MOVED = 0.02;
const ENOUGH = 0.9;
/** Regret, minutes, that is worth a word. */
const WORTH_SAYING = 0.5;

export function stepReviewView(session: CallSession, review: StepReview): StepReviewView {
  const { step, at_ms, weighed, expected_bits, brought_bits, regret, finding } = review;
  const done = session.done[step];
  const shifts = shiftsOf(review);
  const suspects = done?.suspects ?? [];
  return {
    step,
    at_ms,
    weighed,
    label: done?.def.label ?? say('word.nothing'),
    seen: done ? seenAt(done, session.done[step - 1]) : [],
    lesson: [meaning(review, shifts), question(review, shifts)].filter((one) => one !== undefined),
    causes: likeliest(shifts).map(({ cause, before, after }) => ({
      name: causeName(cause),
      before,
      after,
      ticked: isTicked(cause, suspects),
    })),
    brought_bits,
    ...(expected_bits === undefined ? {} : { expected_bits }),
    ...(regret === undefined ? {} : { regret_min: regret, best: bestWords(review) }),
    ...(finding === undefined ? {} : { finding }),
  };
}

/** Whether the person suspected all of a cause then. */
function isTicked(cause: string, suspects: readonly string[]): boolean {
  const keys = keysOf(cause);
  return keys.length > 0 && keys.every((key) => suspects.includes(key));
}

/** What was noted, and the lamp where it was seen anew on the side. */
export function seenAt({ outcome: { notes, perceived } }: Done, before: Done | undefined): readonly Message[] {
  const lines = notes.map(({ what, reading }) => say('note.line', { what, reading }));
  const { lamp, buzzer } = perceived;
  const told = notes.some(({ reading }) => /^reading\.lamp-/.test(reading.id));
  if (lamp === undefined || told || lamp === before?.outcome.perceived.lamp) return lines;
  const reading = say(`reading.lamp-${lamp === 'lit' ? 'on' : 'off'}-${buzzer ? 'buzzer' : 'quiet'}`);
  return [...lines, say('note.line', { what: say('note.lamp'), reading })];
}

interface Shift {
  readonly cause: string;
  readonly before: number;
  readonly after: number;
}

function shiftsOf({ before, after }: StepReview): readonly Shift[] {
  const then = new Map(before.map(({ cause, chance }) => [cause, chance]));
  return after.map(({ cause, chance }) => ({ cause, before: then.get(cause) ?? 0, after: chance }));
}

function likeliest(shifts: readonly Shift[]): readonly Shift[] {
  const top = (s: Shift) => Math.max(s.before, s.after);
  const shown = shifts.filter((s) => top(s) >= WORTH_SHOWING).sort((a, b) => top(b) - top(a));
  return shown.slice(0, SHOWN).sort((a, b) => b.after - a.after);
}

function bestWords({ best }: StepReview): Message {
  return (best === undefined ? undefined : tellingAct(best)?.label) ?? say('lesson.best.act');
}

function meaning({ finding, chance }: StepReview, shifts: readonly Shift[]): Message {
  if (finding === 'told-nothing') return say('lesson.told-nothing');
  if (chance === undefined) return movement(shifts);
  const p = share(chance);
  if (finding === 'against-evidence') return say('lesson.against-evidence');
  return finding === 'too-early' ? say('lesson.too-early', { p }) : say('lesson.given', { p });
}

/** What rose most and what fell most, and where in the works they sit. */
function movement(shifts: readonly Shift[]): Message {
  const moved = [...shifts].sort((a, b) => b.after - b.before - (a.after - a.before));
  const [up, down] = [moved[0], moved.at(-1)];
  const rose = up && up.after - up.before > MOVED ? up : undefined;
  const fell = down && down.before - down.after > MOVED ? down : undefined;
  if (rose && fell) return between(rose, fell);
  if (rose) return say('lesson.rose', { rose: causeName(rose.cause), p: share(rose.after) });
  return fell ? say('lesson.fell', { fell: causeName(fell.cause), p: share(fell.after) }) : say('lesson.still');
}

function between(rose: Shift, fell: Shift): Message {
  const [one, other] = [functionOf(rose.cause), functionOf(fell.cause)];
  const values = {
    rose: causeName(rose.cause),
    p: share(rose.after),
    fell: causeName(fell.cause),
    q: share(fell.after),
  };
  if (!one || !other) return say('lesson.shifted', values);
  if (one === other) return say('lesson.shifted-within', { ...values, one: say(`function.${one}`) });
  return say('lesson.shifted-between', { ...values, one: say(`function.${one}`), other: say(`function.${other}`) });
}

/** What of the works a cause puts out of order; nothing where it is none that is listed. */
function functionOf(cause: string): string | undefined {
  return PLACED_FAULTS.get(keysOf(cause)[0] ?? '')?.family;
}

function question(review: StepReview, shifts: readonly Shift[]): Message | undefined {
  const { finding, regret, best, chance } = review;
  if (finding === 'against-evidence') return say('lesson.ask.contrary');
  if (chance !== undefined && finding === undefined) return chance < ENOUGH ? apart(shifts) : undefined;
  if (finding !== 'told-nothing' && regret !== undefined && regret >= WORTH_SAYING) {
    const settle = finding === 'too-early' ? 'lesson.ask.settle' : 'lesson.ask.better';
    return best === undefined
      ? say('lesson.ask.act', { m: quantity('duration_min', regret, 1) })
      : say(settle, { best: bestWords(review), m: quantity('duration_min', regret, 1) });
  }
  return apart(shifts);
}

/** What would tell the two likeliest causes apart; with one of them likely enough, what shows it. */
function apart(shifts: readonly Shift[]): Message | undefined {
  const [one, other] = shifts.filter(({ cause }) => cause !== SOMETHING_ELSE.cause && cause !== SOUND_CAUSE);
  if (!one) return undefined;
  if (one.after >= ENOUGH || !other) return say('lesson.ask.enough', { one: causeName(one.cause) });
  return say('lesson.ask.apart', { one: causeName(one.cause), other: causeName(other.cause) });
}

function share(chance: number) {
  return chance < WORTH_SHOWING ? say('lesson.under') : quantity('share', chance, 0.01);
}
