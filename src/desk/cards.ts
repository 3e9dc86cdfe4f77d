/** The list of calls. The page is built with what this comes to, without all it is made from (`tools/worked-out.ts`). */
import { type Prepared, prepareCall, shippedCalls, solutionMinutes } from '../calls/index.ts';
import { calendarDay, parseInstant } from '../unit/index.ts';
import type { CallCard } from './protocol.ts';

export const CARDS: readonly CallCard[] = shippedCalls().map((call) => cardOf(prepareCall(call)));

function cardOf(prepared: Prepared): CallCard {
  const { call } = prepared;
  const start = parseInstant(call.start);
  return {
    id: call.id,
    title: call.title,
    summary: call.summary,
    kind: call.kind,
    unit: call.unit,
    lot: call.lot,
    minutes: Math.round(solutionMinutes(prepared)),
    starts: { secondOfDay: start?.secondOfDay ?? 0, month: calendarDay(start?.day ?? 0).month },
  };
}
