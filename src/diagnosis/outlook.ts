/** What each check is worth at a moment of a call: bits, and the cost expected to come after it. */
import { PLACED_FAULTS } from '../faults/index.ts';
import { ACTION_BY_ID } from '../service/index.ts';
import type { Diagnosis, Suspect } from './diagnosis.ts';
import { keysOf, SOUND_CAUSE } from './hypotheses.ts';
import { type Advice, advise, type Check, causeChances, gain_bits, type Problem } from './plan.ts';
import type { Probe } from './probes.ts';
import { alike, type Reading } from './reading.ts';
import { trialCost } from './repair.ts';
import type { Twin } from './twin.ts';

/** Suspects that are planned with: enough to hold nearly all of the belief, few enough to foresee every check on each. */
const PLANNED = { most: 48, share: 0.995 };
/** Minutes to see whether a mend was the right one: a reset and five minutes at the panel, a proof (convention). */
const SEE_WHETHER = 10;
/** Minutes of a visit that found nothing, driven again (our choice, no source). */
const NO_MEND = 90;

export interface Option {
  readonly id: string;
  readonly cost: number;
  readonly bits: number;
  /** Cost of it and of the best that comes after it, and how much that is over the best there is. */
  readonly toCome: number;
  readonly regret: number;
}

export interface Outlook {
  /** Checks by rising regret. */
  readonly options: readonly Option[];
  /** Least expected cost still to come, and that of stopping now and mending by trial. */
  readonly best: number;
  readonly stop: number;
  readonly exact: boolean;
  /** Suspects planned with, and the groups of them that each check would tell apart, in the order of `options`. */
  readonly suspects: readonly Suspect[];
  readonly groups: readonly (readonly number[])[];
}

/** Foresees every check on the likeliest suspects and values it. */
export function outlookOf(diagnosis: Diagnosis, probes: readonly Probe[]): Outlook {
  const suspects = diagnosis.likeliest(PLANNED.most, PLANNED.share);
  const [likeliest] = suspects;
  if (!likeliest) return { options: [], best: 0, stop: 0, exact: true, suspects: [], groups: [] };
  const possible = probes.filter((probe) => likeliest.twin.canReach(probe));
  const checks = possible.map((probe): Check => {
    const cost = likeliest.twin.costOf(probe);
    return { cost, groups: groupsOf(suspects.map(({ twin }) => twin.predict(probe))) };
  });
  const problem = problemOf(suspects, checks, likeliest.twin);
  const all = suspects.map((_, i) => i);
  const advice: Advice = advise(problem);
  const options = possible.map((probe, i): Option & { groups: readonly number[] } => {
    const check = checks[i] as Check;
    const toCome = advice.after[i] as number;
    const bits = gain_bits(problem, all, check);
    return { id: probe.id, cost: check.cost, bits, toCome, regret: toCome - advice.best, groups: check.groups };
  });
  options.sort((a, b) => a.regret - b.regret);
  return {
    options: options.map(({ groups: _, ...option }) => option),
    best: advice.best,
    stop: advice.stop,
    exact: advice.exact,
    suspects,
    groups: options.map((o) => o.groups),
  };
}

/** Suspects that a check would not tell apart share a number. */
export function groupsOf(readings: readonly Reading[]): readonly number[] {
  const kinds: Reading[] = [];
  return readings.map((reading) => {
    const known = kinds.findIndex((kind) => alike(reading, kind));
    return known >= 0 ? known : kinds.push(reading) - 1;
  });
}

function problemOf(suspects: readonly Suspect[], checks: readonly Check[], twin: Twin): Problem {
  const total = suspects.reduce((sum, s) => sum + s.weight, 0);
  const causes = [...new Set(suspects.map((s) => s.hypothesis.cause))];
  const costs = causes.map((cause) => mendCost(cause, twin));
  const problem: Problem = {
    belief: suspects.map((s) => s.weight / total),
    causeOf: suspects.map((s) => causes.indexOf(s.hypothesis.cause)),
    checks,
    stop: (left) => {
      const chances = causeChances(problem, left);
      const sum = [...chances.values()].reduce((a, b) => a + b, 0);
      return trialCost(
        [...chances.values()].map((p) => p / sum),
        [...chances.keys()].map((cause) => costs[cause] ?? NO_MEND),
      );
    },
  };
  return problem;
}

/** Cost of the cheapest mend of a cause, all its faults, with the steps around it, and of seeing whether it helped. */
export function mendCost(cause: string, twin: Twin): number {
  if (cause === SOUND_CAUSE) return 0;
  return keysOf(cause).reduce((sum, key) => {
    const mends = PLACED_FAULTS.get(key)?.mendedBy ?? [];
    const costs = mends.flatMap((id) => {
      const def = ACTION_BY_ID.get(id);
      return def && twin.canReach({ id, acts: [def] }) ? [twin.costOf({ id, acts: [def] })] : [];
    });
    return sum + (costs.length > 0 ? Math.min(...costs) : NO_MEND);
  }, SEE_WHETHER);
}
