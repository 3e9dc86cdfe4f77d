/** What must be done before an action can be, and what puts the unit back afterwards: lids, locks, the selector. */
import type { BreakerName } from '../control/index.ts';
import { ACTION_BY_ID, type ActionDef, circuitsToLock, costIn_min, hindrance, type Service } from '../service/index.ts';

export interface Steps {
  readonly before: readonly string[];
  readonly after: readonly string[];
}

/** The steps around an action as things stand. What still hinders it then is the unit's own state. */
export function stepsAround(service: Service, def: ActionDef): Steps {
  const { person, unit } = service;
  const before: string[] = [];
  const after: string[] = [];
  if (person.onSite && !person.madeSafe && !def.handsOff) before.push('make-safe');
  const lid = def.needs?.lid;
  if (lid && !person.lids.has(lid)) before.push(`open-lid:${lid}`);
  const wanted = circuitsToLock(def);
  for (const circuit of wanted) {
    if (person.locks.has(circuit)) continue;
    before.push(`lock-out:${circuit}`);
    after.push(`unlock:${circuit}`, `breaker-on:${circuit}`);
  }
  const why = def.hindered?.(person, unit)?.id;
  if (why === 'why.locked') before.push(...locksTakenOff([...person.locks].filter((c) => !wanted.includes(c))));
  if (why === 'why.not-spraying') {
    before.push('selector-hand');
    after.push(`selector-${unit.control.regions.selector}`);
  }
  return { before, after };
}

function locksTakenOff(circuits: readonly BreakerName[]): string[] {
  return circuits.flatMap((circuit) => [`unlock:${circuit}`, `breaker-on:${circuit}`]);
}

/** Minutes and money of an action with the steps around it, as one cost in minutes. */
export function costAround(service: Service, def: ActionDef): number {
  const { before, after } = stepsAround(service, def);
  const all = [...before, def.id, ...after].map((id) => ACTION_BY_ID.get(id));
  return all.reduce((sum, step) => sum + (step ? costIn_min(step.minutes, step.cost_usd) : 0), 0);
}

/** Whether it could be done on this property, by phone or on site, if the steps around it were taken. */
export function isReachable(service: Service, def: ActionDef): boolean {
  const why = hindrance(service, def)?.id;
  return why !== 'why.on-site' && why !== 'why.on-the-phone';
}
