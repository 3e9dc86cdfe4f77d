/**
 * What a household tells that happened, asked what went before: a hand in the panel, a dug-up lawn. No simulation gives it,
 * so how much likelier it makes a fault is a judgement of ours (no source); it is kept in one place, to be argued with.
 */
import { keysOf } from './hypotheses.ts';

export const TOLD_FACTS = ['panel-worked-on'] as const;
export type ToldFact = (typeof TOLD_FACTS)[number];

/** Times as likely as before; of what somebody did to wires, levers and dials (convention). */
const LIKELIER = 15;

/** Faults by their ids that each makes likelier. */
const OF: Readonly<Record<ToldFact, readonly string[]>> = {
  'panel-worked-on': ['floats-swapped', 'selector-left', 'timer-misset', 'terminal-loose', 'splice-corroded'],
};

/** How much likelier a cause is once these facts are told: that of its likeliest fault. */
export function likelierBy(told: readonly ToldFact[], cause: string): number {
  const ids = keysOf(cause).map((key) => key.split(':')[0] ?? key);
  return told.some((fact) => OF[fact].some((id) => ids.includes(id))) ? LIKELIER : 1;
}
