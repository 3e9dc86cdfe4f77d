/**
 * A call looked back on, step by step: what was believed before and after, what the step was expected to bring, what it
 * cost over the best that could have been done from the same facts. Judged by what was knowable then, never by the truth.
 */
import {
  type Chance,
  type Diagnosis,
  entropy_bits,
  type Outlook,
  outlookOf,
  type Probe,
  probesOf,
} from '../diagnosis/index.ts';
import { PLACED_FAULTS } from '../faults/index.ts';
import { type Message, say } from '../service/index.ts';
import { checkOf, type LikelyCause, likelyCauses } from './coach.ts';
import { diagnosisOf, seenOf } from './expertise.ts';
import type { CallSession, Done } from './session.ts';
import { STATE_CAUSE } from './session-actions.ts';

/** What a step shows of the judgement behind it. Shown beside the score, never counted in it. */
export type Finding = 'told-nothing' | 'too-early' | 'against-evidence' | 'best';

export interface StepReview {
  /** Place in the list of what was done. */
  readonly step: number;
  readonly at_ms: number;
  readonly before: readonly Chance[];
  readonly after: readonly Chance[];
  /** Bits the step was expected to bring and those it brought; luck makes the second differ from the first. */
  readonly expected_bits: number;
  readonly brought_bits: number;
  /** Cost in minutes over the best choice from the same facts; undefined where nothing was to be chosen. */
  readonly regret?: number;
  /** The check, or the mend, that was worth most then. */
  readonly best?: string;
  readonly finding?: Finding;
}

/** A step of the review in words, for a screen. */
export interface StepReviewView {
  readonly step: number;
  readonly at_ms: number;
  readonly label: Message;
  readonly before: readonly LikelyCause[];
  readonly after: readonly LikelyCause[];
  readonly expected_bits: number;
  readonly brought_bits: number;
  readonly regret_min?: number;
  readonly best?: Message;
  readonly finding?: Finding;
}

export function stepReviewView(session: CallSession, review: StepReview): StepReviewView {
  const { step, at_ms, before, after, expected_bits, brought_bits, regret, best, finding } = review;
  const bestCheck = best === undefined ? undefined : checkOf(best);
  return {
    step,
    at_ms,
    label: session.done[step]?.def.label ?? say('word.nothing'),
    before: likelyCauses(before),
    after: likelyCauses(after),
    expected_bits,
    brought_bits,
    ...(regret === undefined ? {} : { regret_min: regret }),
    ...(bestCheck === undefined ? {} : { best: bestCheck.label }),
    ...(finding === undefined ? {} : { finding }),
  };
}

/** Fewer bits than this tell nothing (learning.md's sense of a redundant test). */
const NOTHING_bits = 0.01;
/** Regret, minutes, under which a step was as good as the best (convention). */
const AS_GOOD_AS_BEST = 0.5;
const TOO_EARLY = 3;
const AGAINST_EVIDENCE = 0.01;
/** Causes kept of a belief. */
const SHOWN = 6;

/** Reviews step after step; each takes about a second, so it comes one at a time. */
export function* reviewOf(session: CallSession): Generator<StepReview> {
  const diagnosis = diagnosisOf(session.prepared);
  const probes = probesOf(session.prepared.spec);
  for (const [step, done] of session.done.entries()) {
    const before = diagnosis.belief();
    const judged = judgeStep(session, step, diagnosis, probes);
    diagnosis.observe(seenOf(session, done));
    const after = diagnosis.belief();
    yield {
      step,
      at_ms: done.at_ms,
      before: before.slice(0, SHOWN),
      after: after.slice(0, SHOWN),
      expected_bits: judged.bits,
      brought_bits: bitsOf(before) - bitsOf(after),
      ...(judged.regret === undefined ? {} : { regret: judged.regret }),
      ...(judged.best === undefined ? {} : { best: judged.best }),
      ...(judged.finding === undefined ? {} : { finding: judged.finding }),
    };
  }
}

function bitsOf(belief: readonly Chance[]): number {
  return entropy_bits(belief.map((c) => c.chance));
}

interface Judged {
  readonly bits: number;
  readonly regret?: number;
  readonly best?: string;
  readonly finding?: Finding;
}

function judgeStep(session: CallSession, step: number, diagnosis: Diagnosis, probes: readonly Probe[]): Judged {
  const done = session.done[step] as Done;
  if (done.def.id === STATE_CAUSE) return judgeCause(done, diagnosis);
  if (cured(session, step)) return { bits: 0 };
  if (done.def.group === 'mend') return judgeMend(done, diagnosis, outlookOf(diagnosis, probes));
  const probe = probes.find((p) => p.acts[0]?.id === done.def.id);
  return probe ? judgeCheck(probe.id, outlookOf(diagnosis, probes)) : { bits: 0 };
}

/** After the first mend that ended something, checks prove and are not asked to tell. */
function cured(session: CallSession, step: number): boolean {
  return session.done.slice(0, step).some((d) => d.outcome.mended.length > 0);
}

function judgeCheck(id: string, outlook: Outlook): Judged {
  const option = outlook.options.find((o) => o.id === id);
  if (!option) return { bits: 0 };
  const [best] = outlook.options;
  return {
    bits: option.bits,
    regret: option.regret,
    ...(best ? { best: best.id } : {}),
    ...(option.bits < NOTHING_bits
      ? { finding: 'told-nothing' as const }
      : option.regret < AS_GOOD_AS_BEST
        ? { finding: 'best' as const }
        : {}),
  };
}

/** A mend is worth its cost and, should it be the wrong one, all that would still be to do. */
function judgeMend(done: Done, diagnosis: Diagnosis, outlook: Outlook): Judged {
  const ends = (cause: string) => cause.split(' + ').some((key) => mends(done.def.id, key));
  const chance = diagnosis
    .belief()
    .filter((c) => ends(c.cause))
    .reduce((sum, c) => sum + c.chance, 0);
  const cost = done.def.minutes + (done.def.cost_usd ?? 0) / 1.2;
  const regret = Math.max(0, cost + (1 - chance) * outlook.best - outlook.best);
  const [best] = outlook.options;
  const stopIsBest = outlook.stop <= outlook.best;
  return {
    bits: 0,
    regret,
    ...(stopIsBest || !best ? {} : { best: best.id }),
    ...(regret > TOO_EARLY && !stopIsBest ? { finding: 'too-early' as const } : {}),
  };
}

function mends(action: string, key: string): boolean {
  return PLACED_FAULTS.get(key)?.mendedBy.includes(action) ?? false;
}

function judgeCause(done: Done, diagnosis: Diagnosis): Judged {
  const named = [done.action.fill?.cause ?? []].flat();
  const belief = diagnosis.belief();
  const chanceOf = (key: string) =>
    belief.filter((c) => c.cause.split(' + ').includes(key)).reduce((sum, c) => sum + c.chance, 0);
  return named.some((key) => chanceOf(key) < AGAINST_EVIDENCE) ? { bits: 0, finding: 'against-evidence' } : { bits: 0 };
}
