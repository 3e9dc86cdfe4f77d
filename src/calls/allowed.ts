/** What can be done in a call: what its unit has, less the checks and mends that its trainer withholds. */
import { type ActionDef, actionOn, isOfVisits } from '../service/index.ts';
import type { CallFile } from './schema.ts';
import type { Prepared } from './setup.ts';

/** Levers, lids and locks, questions and words keep a visit safe, and are never withheld. */
export function canWithhold({ group }: ActionDef): boolean {
  return group === 'look' || group === 'measure' || group === 'mend';
}

export function isWithheld(call: CallFile, id: string): boolean {
  return call.withheld?.includes(id) ?? false;
}

/** Whether a kind of call has an action that its unit has. */
export function isOfCall(call: CallFile, id: string): boolean {
  if (id === 'dig-up-lid') return call.visit?.buried !== undefined;
  return call.kind === 'visit' || !isOfVisits(id);
}

export function actionIn({ call, spec }: Prepared, id: string): ActionDef | undefined {
  return isWithheld(call, id) || !isOfCall(call, id) ? undefined : actionOn(spec, id);
}
