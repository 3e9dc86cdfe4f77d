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
    readings: newest(row).flatMap(({ outcome }) =>
      outcome.notes.map(({ what, reading, remark }) => ({ what, reading, ...(remark ? { tone: remark.tone } : {}) })),
    ),
    open: openOf(row),
  }));
}

/** What was done last of each: a check made again is read again. */
function newest({ done }: Row): Row['done'] {
  return done.filter(({ def }, i) => done.slice(i + 1).every((later) => later.def.id !== def.id));
}

function openOf({ wants, done }: Row): RowView['open'] {
  const made = new Set(done.map((d) => d.def.id));
  return wants.flatMap((ids) => {
    const def = ids.some((id) => made.has(id)) ? undefined : ACTION_BY_ID.get(ids[0] ?? '');
    return def ? [def.label] : [];
  });
}
