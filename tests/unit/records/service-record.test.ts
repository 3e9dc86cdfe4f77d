/** The service record as a file: what was read, done and decided, in SI, and nothing that a spreadsheet would run. */
import { expect, it } from 'vitest';
import { type CallFile, debriefOf, playSolution, prepareCall, shippedVisits, Trace } from '../../../src/calls/index.ts';
import { serviceRecordCsv, serviceRecordJson } from '../../../src/records/service-record.ts';

const call = shippedVisits().find(({ id }) => id === 'three-years-on') as CallFile;
const session = playSolution(prepareCall(call));
const { visit } = debriefOf(session, new Trace(session));
if (!visit) throw new Error('no routine visit');

interface Saved {
  readonly visited: string;
  readonly signed: boolean;
  readonly rows: readonly {
    readonly id: string;
    readonly readings: readonly { readonly values: readonly object[] }[];
  }[];
  readonly record: Readonly<Record<string, readonly string[]>>;
}

it('holds every line, every reading with its measure, and every decision', () => {
  const saved = JSON.parse(JSON.stringify(serviceRecordJson(call.id, visit))) as Saved;
  expect([saved.visited, saved.signed]).toEqual(['2031-07-22', true]);
  expect(saved.rows.map(({ id }) => id)).toEqual(visit.rows.map(({ id }) => id));
  const trash = saved.rows.find(({ id }) => id === 'trash-tank');
  expect(trash?.readings[0]?.values).toContainEqual({
    name: 'sludge',
    measure: 'length_m',
    value: expect.closeTo(0.27, 1),
  });
  expect(Object.keys(saved.record)).toEqual(visit.written.map(({ id }) => id));
  expect(saved.record.copies).toEqual(['copy.owner', 'copy.authority', 'copy.own-file']);
});

it('is the same as rows: six columns in each, ended as RFC 4180 has it', () => {
  const csv = serviceRecordCsv(call.id, visit);
  const rows = csv.split('\r\n');
  expect(rows.pop()).toBe('');
  for (const row of rows) expect(row.replace(/"[^"]*"/g, '').split(',')).toHaveLength(6);
  expect(csv).toMatch(/\r\nrow,trash-tank,reading\.trash-solids,sludge,0\.2\d*,length_m\r\n/);
  for (const { id, answers } of visit.written)
    for (const answer of answers) expect(csv).toContain(`\r\nrecord,${id},,,${answer.id},\r\n`);
});
