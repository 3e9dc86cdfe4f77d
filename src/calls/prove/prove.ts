/**
 * Proof of a call before anyone takes it: the symptoms arise, the cause can be told apart, the solution solves it, no
 * shortcut passes; and how hard it is. All of it by playing the call, nothing by what its author says of it.
 */
import { entropy_bits, type Lived } from '../../diagnosis/index.ts';
import { drained } from '../drained.ts';
import { diagnosisOf } from '../expertise.ts';
import { trueFaults } from '../flags.ts';
import { type PlayerId, play } from '../players.ts';
import type { Problem } from '../problems.ts';
import { judged } from '../record.ts';
import type { CallSession } from '../session.ts';
import type { Prepared } from '../setup.ts';
import { playSolution } from '../solution.ts';
import { type LookAlike, lookAlikes } from './look-alikes.ts';
import { NOTICED, promisesBroken } from './promises.ts';
import { shortcuts } from './shortcuts.ts';

/** What is looked at, in this order. */
export const STAGES = ['promises', 'causes', 'expert', 'look-alikes', 'shortcuts'] as const;
export type Stage = (typeof STAGES)[number];

export type Solver = 'solution' | PlayerId;

/** What was found. What stands on a broken promise is not looked at, and left out. */
export interface CallProof {
  readonly symptomsArise: boolean;
  readonly solvedBy: readonly Solver[];
  /** Causes that no check of this property tells from the true one, with what both of them show. */
  readonly lookAlikes?: readonly LookAlike[];
  /** Ways of passing that skip the work; there should be none. */
  readonly shortcuts?: readonly string[];
  /** Bits between the report and a certain cause; minutes the expert takes, the drive among them. */
  readonly difficulty?: { readonly bits: number; readonly expectedMinutes: number };
  readonly problems: readonly Problem[];
}

export function proveCall(prepared: Prepared): CallProof {
  return drained(proving(prepared));
}

/**
 * The proof stage by stage, so that whoever waits can be told. `lived` hears how far the causes are lived through, which is
 * the longest of it.
 */
export function* proving(prepared: Prepared, lived?: Lived): Generator<Stage, CallProof> {
  yield 'promises';
  const solution = playSolution(prepared);
  const passes = judged(solution).passed;
  const broken = promisesBroken(solution);
  const symptomsArise = broken.every(({ path }) => path !== NOTICED);
  const solved: readonly Solver[] = passes ? ['solution'] : [];
  if (broken.length > 0) return { symptomsArise, solvedBy: solved, problems: broken };
  yield 'causes';
  const diagnosis = diagnosisOf(prepared, lived);
  const bits = entropy_bits(diagnosis.belief().map((c) => c.chance));
  yield 'expert';
  const expert = judged(play(prepared, 'expert'));
  const mends = prepared.call.expected.decision === 'visit' && trueFaults(solution).length > 0;
  yield 'look-alikes';
  const alikes = mends ? lookAlikes(solution, diagnosis) : [];
  yield 'shortcuts';
  const short = mends || prepared.call.kind === 'visit' ? shortcuts(prepared, trueFaults(solution)) : [];
  return {
    symptomsArise,
    solvedBy: expert.passed ? [...solved, 'expert'] : solved,
    lookAlikes: alikes,
    shortcuts: short,
    difficulty: { bits: Math.round(bits * 100) / 100, expectedMinutes: Math.round(expert.spent.minutes) },
    problems: [
      ...(passes ? [] : [unsolved(solution)]),
      ...(expert.passed ? [] : [unsolvable(expert.score)]),
      ...alikes.map(inseparable),
      ...short.map((id) => ({
        path: 'pass',
        message: `the shortcut "${id}" passes`,
        mend: 'raise the pass mark, or let the fault show only to who looks for it',
      })),
    ],
  };
}

function unsolved(solution: CallSession): Problem {
  const mend = 'let the expert write it, or play it and see where it loses';
  const at = solution.done.length;
  const step = solution.prepared.call.solution[at];
  if (!solution.ended && step) return { path: `solution[${at}]`, message: `"${step.do}" cannot be done there`, mend };
  return { path: 'solution', message: `it scores ${judged(solution).score} and does not pass`, mend };
}

function unsolvable(score: number): Problem {
  return {
    path: 'faults',
    message: `the scripted expert scores ${score} and does not pass`,
    mend: 'allow the checks that show the fault and the actions that mend it, or lower the pass mark',
  };
}

function inseparable({ cause, shared }: LookAlike): Problem {
  const through = shared.map(({ check }) => check).join(', ');
  return {
    path: 'faults',
    message: `no check tells it from ${cause}${through === '' ? '' : `: alike in ${through}`}`,
    mend: 'allow a check that tells them apart, change severity or onset, or choose another fault',
  };
}
