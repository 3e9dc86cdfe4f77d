import type { Prepared } from '../calls/setup.ts';
import { solutionSpends } from '../calls/solution.ts';
import { calendarDay, parseInstant } from '../unit/index.ts';
import type { CallCard } from './protocol.ts';

/** What the list shows of a call. */
export function cardOf(prepared: Prepared): CallCard {
  const { call } = prepared;
  const start = parseInstant(call.start);
  return {
    id: call.id,
    title: call.title,
    summary: call.summary,
    kind: call.kind,
    unit: call.unit,
    lot: call.lot,
    minutes: Math.round(solutionSpends(prepared).minutes),
    starts: { secondOfDay: start?.secondOfDay ?? 0, month: calendarDay(start?.day ?? 0).month },
  };
}
