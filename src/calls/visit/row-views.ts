/** The checklist as a screen shows it and as the service record prints it. */
import { ACTION_BY_ID, say } from '../../service/index.ts';
import type { CallSession } from '../session.ts';
import type { RowView } from '../view.ts';
import { type Row, rowsOf } from './rows.ts';

export function rowViews(session: CallSession): readonly RowView[] {
  return rowsOf(session).map((row) => ({
    id: row.id,
    label: say(`row.${row.id}`),
    taken: row.met,
    wanted: row.wants.length,
    readings: row.done.flatMap(({ outcome }) =>
      outcome.notes.map(({ what, reading, remark }) => ({ what, reading, ...(remark ? { tone: remark.tone } : {}) })),
    ),
    open: openOf(row),
  }));
}

function openOf({ wants, done }: Row): RowView['open'] {
  const made = new Set(done.map((d) => d.def.id));
  return wants.flatMap((ids) => {
    const def = ids.some((id) => made.has(id)) ? undefined : ACTION_BY_ID.get(ids[0] ?? '');
    return def ? [def.label] : [];
  });
}
