/** Ways of passing a call that skip the work: a good call lets none of them through. */
import { placedFault } from '../../faults/index.ts';
import { actionOn } from '../../service/index.ts';
import { probesIn } from '../expertise.ts';
import { type PlayerId, play } from '../players.ts';
import { judged } from '../record.ts';
import type { SolutionStep } from '../schema.ts';
import { STATE_CAUSE } from '../session-actions.ts';
import type { Prepared } from '../setup.ts';
import { playSolution } from '../solution.ts';

const BY_ROTE: readonly PlayerId[] = ['reset-only', 'parts-swapper', 'random'];

/** Those that pass, of people who do not look and of the solution bent. */
export function shortcuts(prepared: Prepared, truth: readonly string[]): readonly string[] {
  const probes = new Set(probesIn(prepared).flatMap((probe) => probe.acts.map((def) => def.id)));
  if (prepared.call.kind === 'visit') {
    const unread = prepared.call.solution.filter((step) => !probes.has(step.do));
    return passes(prepared, unread) ? ['sign without looking'] : [];
  }
  const passing = BY_ROTE.filter((player) => judged(play(prepared, player)).passed);
  const { solution } = prepared.call;
  const bent: readonly (readonly [string, readonly SolutionStep[]])[] = [
    ['close without a mend', solution.filter((step) => !isMend(prepared, step, truth))],
    ['mend by luck', withoutLooking(solution, probes)],
  ];
  return [...passing, ...bent.filter(([, steps]) => passes(prepared, steps)).map(([name]) => name)];
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
