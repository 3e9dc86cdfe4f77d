/** The service record of a routine visit for a file: as JSON, and as rows for a spreadsheet. Numbers are SI, each with its measure. */
import type { CalendarClock, VisitView } from '../calls/view.ts';
import type { Message, MessageValue } from '../service/message.ts';
import { csvOf, type Value } from './csv.ts';

interface Entry {
  readonly name: string;
  readonly value: string | number;
  /** What a number is and its unit, as in `length_m`; none of a word. */
  readonly measure?: string;
}

const dayOf = ({ year, month, day }: CalendarClock): string =>
  `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;

/** What a message carries in its gaps, however deep: numbers with their measures, words by their ids. */
function entriesOf({ values = {} }: Message): readonly Entry[] {
  return Object.entries(values).flatMap(([name, value]) => entryOf(name, value));
}

function entryOf(name: string, value: MessageValue): readonly Entry[] {
  if (typeof value === 'string' || typeof value === 'number') return [{ name, value }];
  if ('measure' in value) return [{ name, value: value.value, measure: value.measure }];
  if ('en' in value) return [{ name, value: value.en }];
  const inner = entriesOf(value);
  return inner.length > 0 ? inner : [{ name, value: value.id }];
}

export function serviceRecordJson(call: string, visit: VisitView): object {
  return {
    kind: 'underlawn-service-record',
    version: 1,
    call,
    visited: dayOf(visit.visited),
    rows: visit.rows.map(({ id, taken, wanted, readings }) => ({
      id,
      taken,
      wanted,
      readings: readings.map(({ what, reading }) => ({
        what: what.id,
        reading: reading.id,
        values: entriesOf(reading),
      })),
    })),
    mends: visit.mends.map(({ id, values }) => ({ id, ...(values ? { values } : {}) })),
    record: Object.fromEntries(visit.written.map(({ id, answers }) => [id, answers.map((answer) => answer.id)])),
    signed: visit.signed,
  };
}

const COLUMNS = ['part', 'id', 'reading', 'name', 'value', 'measure'] as const;

export function serviceRecordCsv(call: string, visit: VisitView): string {
  const readings = visit.rows.flatMap(({ id, readings: of }) =>
    of.flatMap(({ reading }) => {
      const entries = entriesOf(reading);
      const row = (entry?: Entry): Value[] => [
        'row',
        id,
        reading.id,
        entry?.name ?? '',
        entry?.value ?? '',
        entry?.measure ?? '',
      ];
      return entries.length > 0 ? entries.map(row) : [row()];
    }),
  );
  const written = visit.written.flatMap(({ id, answers }) =>
    answers.map(({ id: answer }): Value[] => ['record', id, '', '', answer, '']),
  );
  return csvOf([
    [...COLUMNS],
    ['visit', call, '', 'visited', dayOf(visit.visited), ''],
    ['visit', call, '', 'signed', visit.signed, ''],
    ...readings,
    ...visit.mends.map(({ id }): Value[] => ['mend', id, '', '', '', '']),
    ...written,
  ]);
}
