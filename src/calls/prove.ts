/**
 * Proof of a call before anyone takes it: the symptoms arise, the cause can be told apart, the solution solves it, no
 * shortcut passes; and how hard it is. All of it by playing the call, nothing by what its author says of it.
 */
import {
  alike,
  causeOf,
  type Diagnosis,
  entropy_bits,
  keysOf,
  SOUND_CAUSE,
  type Suspect,
  Twin,
} from '../diagnosis/index.ts';
import { placedFault } from '../faults/index.ts';
import { actionOn, SYMPTOMS } from '../service/index.ts';
import { diagnosisOf, probesIn, propertyOf, seenOf } from './expertise.ts';
import { trueFaults } from './flags.ts';
import { type PlayerId, play } from './players.ts';
import type { Problem } from './problems.ts';
import { judged } from './record.ts';
import type { SolutionStep } from './schema.ts';
import type { CallSession, Done } from './session.ts';
import { STATE_CAUSE } from './session-actions.ts';
import { noticedOf, type Prepared, unitAtReport, unitFaults } from './setup.ts';
import { playSolution } from './solution.ts';

export interface CallProof {
  readonly symptomsArise: boolean;
  /** Causes that no check of this property tells from the true one. */
  readonly lookAlikes: readonly string[];
  readonly solvedBy: readonly PlayerId[];
  /** Ways of passing that skip the work; there should be none. */
  readonly shortcuts: readonly string[];
  /** Bits between the report and a certain cause; minutes the expert takes, the drive among them. */
  readonly difficulty: { readonly bits: number; readonly expectedMinutes: number };
  readonly problems: readonly Problem[];
}

export function proveCall(prepared: Prepared): CallProof {
  const missing = symptomsMissing(prepared);
  const solution = playSolution(prepared);
  const solved = judged(solution).passed;
  const expert = play(prepared, 'expert');
  const expertPasses = judged(expert).passed;
  const diagnosis = diagnosisOf(prepared);
  const bits = entropy_bits(diagnosis.belief().map((c) => c.chance));
  const mends = needsMend(solution);
  const alikes = mends ? lookAlikes(solution, diagnosis) : [];
  const shortcuts = mends ? shortcutsThatPass(prepared, trueFaults(solution)) : [];
  const problems: Problem[] = [
    ...missing.map((id) => problem('report.noticed', `"${id}" does not arise`, 'change onset, severity or history')),
    ...alikes.map((cause) =>
      problem('faults', `no check tells it from ${cause}`, 'change severity or unit, or accept either by another call'),
    ),
    ...(solved ? [] : [problem('solution', 'it does not pass', 'play it and see where it loses')]),
    ...(expertPasses ? [] : [problem('', 'the scripted expert does not pass', 'see play --as expert')]),
    ...shortcuts.map((id) => problem('', `the shortcut "${id}" passes`, 'raise the pass mark or the fault')),
  ];
  return {
    symptomsArise: missing.length === 0,
    lookAlikes: alikes,
    solvedBy: [...(solved ? (['solution'] as const) : []), ...(expertPasses ? (['expert'] as const) : [])],
    shortcuts,
    difficulty: { bits: Math.round(bits * 100) / 100, expectedMinutes: Math.round(judged(expert).spent.minutes) },
    problems,
  };
}

function problem(path: string, message: string, mend: string): Problem {
  return { path, message, mend };
}

/** What the household says it noticed and could not have. */
export function symptomsMissing(prepared: Prepared): readonly string[] {
  const unit = unitAtReport(prepared);
  return noticedOf(prepared.call).filter((symptom) => !SYMPTOMS[symptom](unit));
}

/** Whether something on the property must be mended by hand; a call may also be rightly closed by phone. */
function needsMend(solution: CallSession): boolean {
  return solution.prepared.call.expected.decision === 'visit' && trueFaults(solution).length > 0;
}

/** Causes of which some form, still likely after all the solution found, would read like the truth in every check. */
function lookAlikes(solution: CallSession, diagnosis: Diagnosis): readonly string[] {
  const { prepared } = solution;
  const truth = causeOf(trueFaults(solution));
  const trueTwin = new Twin(propertyOf(prepared), unitFaults(prepared));
  const untilMend = stepsUntilMend(solution.done);
  for (const done of untilMend) {
    const seen = seenOf(solution, done);
    diagnosis.observe(seen);
    trueTwin.follow(seen.deed);
  }
  const probes = probesIn(prepared).filter((probe) => trueTwin.canReach(probe));
  const readings = probes.map((probe) => trueTwin.predict(probe));
  const rivals = diagnosis.likeliest(60, 0.9999).filter(({ hypothesis }) => hypothesis.cause !== truth);
  const same = rivals
    .filter((rival) => !sameMend(rival, truth))
    .filter(({ twin }) =>
      probes.every((probe, i) => {
        const reading = readings[i];
        return reading !== undefined && alike(reading, twin.predict(probe));
      }),
    );
  return [...new Set(same.map(({ hypothesis }) => hypothesis.cause))];
}

function stepsUntilMend(done: readonly Done[]): readonly Done[] {
  const first = done.findIndex((d) => d.def.group === 'mend' || d.def.id === STATE_CAUSE);
  return first < 0 ? done : done.slice(0, first);
}

/** Two causes with a mend in common need not be told apart. */
function sameMend({ hypothesis }: Suspect, truth: string): boolean {
  const mendsOf = (cause: string) => keysOf(cause).map((key) => placedFault(key).mendedBy);
  if (hypothesis.faults.length === 0 || truth === SOUND_CAUSE) return false;
  const [mine, theirs] = [mendsOf(truth), mendsOf(hypothesis.cause)];
  return mine.every((m) => theirs.some((t) => t.some((id) => m.includes(id))));
}

function shortcutsThatPass(prepared: Prepared, truth: readonly string[]): readonly string[] {
  const probes = new Set(probesIn(prepared).flatMap((probe) => probe.acts.map((def) => def.id)));
  const players: readonly PlayerId[] = ['reset-only', 'parts-swapper', 'random'];
  const passing = players.filter((player) => judged(play(prepared, player)).passed);
  const { solution } = prepared.call;
  const bent: readonly (readonly [string, readonly SolutionStep[]])[] = [
    ['close without a mend', solution.filter((step) => !isMend(prepared, step, truth))],
    ['mend by luck', withoutLooking(solution, probes)],
  ];
  const bentPassing = bent.filter(([, steps]) => passes(prepared, steps)).map(([name]) => name);
  return [...passing, ...bentPassing];
}

function passes(prepared: Prepared, steps: readonly SolutionStep[]): boolean {
  return judged(playSolution({ ...prepared, call: { ...prepared.call, solution: [...steps] } })).passed;
}

/** A mend by its kind, or by what it does here: to plug in and to set a switch are mends of what they end. */
function isMend(prepared: Prepared, step: SolutionStep, truth: readonly string[]): boolean {
  if (truth.some((key) => placedFault(key).mendedBy.includes(step.do))) return true;
  return actionOn(prepared.spec, step.do)?.group === 'mend';
}

/** A solution with no check before the cause is named, and nothing to show for it. */
function withoutLooking(solution: readonly SolutionStep[], probes: ReadonlySet<string>): readonly SolutionStep[] {
  const named = solution.findIndex((step) => step.do === STATE_CAUSE);
  return solution.flatMap((step, i) => {
    if (step.do === STATE_CAUSE) return [{ do: step.do, fill: { ...step.fill, evidence: [] } }];
    return i < named && probes.has(step.do) && !step.do.startsWith('ask-') ? [] : [step];
  });
}
