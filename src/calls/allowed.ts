/** What can be done in a call: what its unit has, less the checks and mends that its trainer withholds. */
import { type ActionDef, actionOn, isOfVisits } from '../service/index.ts';
import type { CallFile } from './schema.ts';
import type { Prepared } from './setup.ts';
import { serviceRecord, WRITE_RECORD } from './visit/form.ts';

/** Levers, lids and locks, questions and words keep a visit safe, and are never withheld. */
export function canWithhold({ group }: ActionDef): boolean {
  return group === 'look' || group === 'measure' || group === 'mend';
}

export function isWithheld(call: CallFile, id: string): boolean {
  return call.withheld?.includes(id) ?? false;
}

/** Whether a kind of call has an action that its unit has. */
function isOfCall(call: CallFile, id: string): boolean {
  if (id === 'dig-up-lid') return call.visit?.buried !== undefined;
  return call.kind === 'visit' || !isOfVisits(id);
}

/** An action as it is in a call: on a routine visit the record is the service record. */
export function actionIn({ call, spec }: Prepared, id: string): ActionDef | undefined {
  if (isWithheld(call, id) || !isOfCall(call, id)) return undefined;
  return id === WRITE_RECORD && call.kind === 'visit' ? serviceRecord(spec) : actionOn(spec, id);
}
