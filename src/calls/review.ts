/**
 * A call looked back on, step by step: what was believed before and after, what the step was expected to bring, what it
 * cost over the best that could have been done from the same facts. Judged by what was knowable then, never by the truth.
 */
import {
  type Chance,
  type Diagnosis,
  entropy_bits,
  keysOf,
  type Lived,
  lastOfRow,
  type Outlook,
  outlookOf,
  type Probe,
  type Sifting,
  siftingOf,
} from '../diagnosis/index.ts';
import { PLACED_FAULTS, placedFault } from '../faults/index.ts';
import { costIn_min, isRoutine } from '../service/index.ts';
import { drained } from './drained.ts';
import { diagnosisOf, probesIn, seenOf } from './expertise.ts';
import { stepOfAction } from './procedure.ts';
import type { CallSession, Done } from './session.ts';
import { STATE_CAUSE } from './session-actions.ts';
import { changedAt_ms } from './taught.ts';
import { isListed } from './visit/rows.ts';

/** What a step shows of the judgement behind it. Shown beside the score, never counted in it. */
export type Finding = 'told-nothing' | 'too-early' | 'against-evidence' | 'best';

/** What can be said of a step before its outcome. */
interface Judged {
  /** Bits a check was expected to bring. */
  readonly expected_bits?: number;
  /** Cost in minutes over the best choice from the same facts; undefined where nothing was to be chosen. */
  readonly regret?: number;
  /** The check, or the mend, that was worth most then. */
  readonly best?: string;
  /** How likely what was mended or named was then. */
  readonly chance?: number;
  readonly finding?: Finding;
}

export interface StepReview extends Judged {
  /** Place in the list of what was done. */
  readonly step: number;
  readonly at_ms: number;
  readonly before: readonly Chance[];
  readonly after: readonly Chance[];
  /** Bits the step brought; luck makes them differ from those expected. */
  readonly brought_bits: number;
  /** Whether there is anything to say of it: something was to be chosen, or it moved the belief before the cure. */
  readonly weighed: boolean;
}

/** Fewer bits than this tell nothing: as much the rarest forms of the causes bring by themselves (convention). */
const NOTHING_bits = 0.02;
/** What moved the belief by as much as this did tell something: only the likeliest causes are foreseen (convention). */
const MOVED_bits = 0.1;
/** Regret, minutes, under which a step was as good as the best (convention). */
const AS_GOOD_AS_BEST = 0.5;
const TOO_EARLY = 3;
const AGAINST_EVIDENCE = 0.01;

/**
 * Reviews step after step; each takes about a second, so it comes one at a time, and at the end what the readings make
 * together. `lived` hears how the setting up goes.
 */
export function* reviewOf(session: CallSession, lived?: Lived): Generator<StepReview, Sifting> {
  const diagnosis = diagnosisOf(session.prepared, lived);
  const probes = probesIn(session.prepared);
  const changed_ms = changedAt_ms(session.log);
  for (const [step, done] of session.done.entries()) {
    const before = diagnosis.belief();
    if (done.at_ms >= changed_ms) {
      yield { step, at_ms: done.at_ms, before, after: before, brought_bits: 0, weighed: false };
      continue;
    }
    const judged = judgeStep(session, step, diagnosis, probes);
    diagnosis.observe(seenOf(session, done));
    const after = diagnosis.belief();
    const brought_bits = bitsOf(before) - bitsOf(after);
    const moved = Math.abs(brought_bits) >= MOVED_bits && !cured(session, step);
    const weighed = moved || judged.regret !== undefined || judged.chance !== undefined;
    yield { step, at_ms: done.at_ms, before, after, brought_bits, weighed, ...afterwards(judged, moved) };
  }
  return siftingAtMend(session, diagnosis);
}

/** Reviews a whole call; `each` hears step after step as it is done. Gives what the readings make together. */
export function reviewAll(session: CallSession, each: (review: StepReview) => void, lived?: Lived): Sifting {
  return drained(reviewOf(session, lived), each);
}

/** What the readings make together, up to the first mend that ended a fault or until a trainer changed the works. */
export function siftingAtMend({ done, log }: CallSession, diagnosis: Diagnosis): Sifting {
  const changed_ms = changedAt_ms(log);
  const mend = done.findIndex((d) => d.at_ms >= changed_ms || (d.def.group === 'mend' && d.outcome.mended.length > 0));
  return siftingOf(diagnosis, mend < 0 ? done.length : mend);
}

function bitsOf(belief: readonly Chance[]): number {
  return entropy_bits(belief.map((c) => c.chance));
}

/** What could tell nothing by what was foreseen, and told something, is not held against anybody. */
function afterwards({ finding, ...judged }: Judged, moved: boolean): Judged {
  return finding === undefined || (finding === 'told-nothing' && moved) ? judged : { ...judged, finding };
}

function judgeStep(session: CallSession, step: number, diagnosis: Diagnosis, probes: readonly Probe[]): Judged {
  const done = session.done[step] as Done;
  if (done.def.id === STATE_CAUSE) return judgeCause(done, diagnosis);
  if (cured(session, step)) return {};
  if (done.def.group === 'mend') return isRoutine(done.def.id) ? {} : judgeMend(done, diagnosis, probes);
  const last = lastOfRow(session.prepared.spec, done.def.id);
  const probe = last ?? probes.find((p) => p.acts[0]?.id === done.def.id);
  if (!probe) return {};
  const { expected_bits, ...judged } = judgeCheck(probe, outlookOf(diagnosis, last ? [...probes, last] : probes));
  const bits = probe.acts.length > 1 || expected_bits === undefined ? {} : { expected_bits };
  // A step of the procedure, and a line of a visit's checklist, is taken every time, whatever it tells.
  const chosen = stepOfAction(done.def.id) === undefined && !isListed(session.prepared, done.def.id);
  return chosen ? { ...judged, ...bits } : bits;
}

/** After the first mend that ended a fault, checks prove and are not asked to tell. Saving water ends no fault. */
function cured(session: CallSession, step: number): boolean {
  const mended = session.done.slice(0, step).flatMap((d) => d.outcome.mended);
  return mended.some((key) => placedFault(key).family !== 'use');
}

function judgeCheck({ id }: Probe, outlook: Outlook): Judged {
  const option = outlook.options.find((o) => o.id === id);
  if (!option) return {};
  const { bits, regret } = option;
  const best = bestOf(outlook);
  const asGood = best.best !== undefined && regret < AS_GOOD_AS_BEST;
  const finding = bits < NOTHING_bits ? 'told-nothing' : asGood ? 'best' : undefined;
  return { expected_bits: bits, regret, ...best, ...(finding === undefined ? {} : { finding }) };
}

/** The check that was worth most, where any was worth its cost. */
function bestOf({ options: [best], best: least, stop }: Outlook): Pick<Judged, 'best'> {
  return best === undefined || stop <= least ? {} : { best: best.id };
}

/** A mend is worth its cost and, should it be the wrong one, all that would still be to do. */
function judgeMend({ def }: Done, diagnosis: Diagnosis, probes: readonly Probe[]): Judged {
  const outlook = outlookOf(diagnosis, probes);
  const chance = chanceThat(diagnosis, (key) => PLACED_FAULTS.get(key)?.mendedBy.includes(def.id) ?? false);
  const cost = costIn_min(def.minutes, def.cost_usd);
  const regret = Math.max(0, cost + (1 - chance) * outlook.best - outlook.best);
  const best = bestOf(outlook);
  return { regret, chance, ...best, ...(regret > TOO_EARLY && best.best ? { finding: 'too-early' } : {}) };
}

/** A cause that was named, or the least likely of several. */
function judgeCause({ action }: Done, diagnosis: Diagnosis): Judged {
  const named = [action.fill?.cause ?? []].flat();
  if (named.length === 0) return {};
  const chance = Math.min(...named.map((key) => chanceThat(diagnosis, (other) => other === key)));
  return { chance, ...(chance < AGAINST_EVIDENCE ? { finding: 'against-evidence' } : {}) };
}

/** Share of the belief whose causes have a fault that is such. */
function chanceThat(diagnosis: Diagnosis, such: (key: string) => boolean): number {
  const chances = diagnosis.belief().filter((c) => keysOf(c.cause).some(such));
  return chances.reduce((sum, c) => sum + c.chance, 0);
}
