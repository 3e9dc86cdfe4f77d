/** A routine visit that is over, as its debrief shows it and its service record prints it. */
import { dateWords, say } from '../../service/index.ts';
import type { CallSession } from '../session.ts';
import { listOf } from '../session-actions.ts';
import { doorOf } from '../setup.ts';
import type { VisitView } from '../view.ts';
import { clockAt } from '../viewOf.ts';
import { decisionsOf, writtenRecord } from './decisions.ts';
import { serviceRecord } from './form.ts';
import { rowViews } from './row-views.ts';

/** Decisions that are judged by more than one field, by the name they are told under. */
const OWN_NAMES: readonly string[] = ['inoperative', 'repairs'];

export function visitView(session: CallSession): VisitView {
  const { call, spec, firstDay, report_s } = session.prepared;
  return {
    lot: call.lot,
    unit: spec.name,
    visited: clockAt(session, report_s),
    day: dateWords(firstDay + Math.floor(report_s / 86_400)),
    last: dateWords(doorOf(session.prepared)?.label.signed_day ?? firstDay),
    rows: rowViews(session),
    mends: session.done
      .filter(({ def, outcome }) => def.group === 'mend' || outcome.mended.length > 0)
      .map(({ def }) => def.label),
    written: writtenOf(session),
    signed: session.done.some(({ def }) => def.id === 'sign-label'),
    decisions: decisionsOf(session).map((one) => ({
      ...one,
      label: say(OWN_NAMES.includes(one.id) ? `decision.${one.id}` : `field.${one.id}`),
    })),
  };
}

function writtenOf(session: CallSession): VisitView['written'] {
  const fill = writtenRecord(session)?.action.fill;
  if (!fill) return [];
  return (serviceRecord(session.prepared.spec).form ?? []).map(({ id, options }) => {
    const given = listOf(fill[id]);
    return {
      id,
      label: say(`field.${id}`),
      answers: options.filter((option) => given.includes(option.id)).map(({ label }) => label),
    };
  });
}
