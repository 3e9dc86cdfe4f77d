/**
 * Every row of a table of symptoms, causes, tests and remedies put together from public troubleshooting texts: its cause is
 * put into a unit, and symptom and named test must come out as printed. The table that it makes is `docs/symptoms.md`.
 */
import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { PAGE, pageOf, sumOf, sumWords } from './symptoms/page.ts';
import { SOURCES } from './symptoms/sources.ts';
import { HEADINGS, type Outcome, outcome } from './symptoms.ts';

/** Numbers of the printed rows. */
const PRINTED = [
  ...[1, 3, 4, 6, 8, 9, 11, 12, 14, 15, 17],
  ...[18, 19, 21, 22, 25, 26, 27],
  ...[28, 30, 31, 32, 33, 35, 36],
  ...[37, 39, 40, 41, 42, 44, 46, 47],
  ...[48, 49, 51, 53, 54, 55, 56],
  ...[57, 60, 61, 63, 64, 65, 66, 68, 69],
  ...[70, 71, 73, 74, 75, 77, 78, 80],
];
/** Least share of the rows that must agree. */
const LEAST = 0.95;

const rows = HEADINGS.flatMap((heading) => heading.rows);
const made: Outcome[] = [];

describe('the published table', () => {
  it('is here row by row, with its sources', () => {
    expect(rows.map((row) => row.no)).toEqual(PRINTED);
    for (const { tag } of rows)
      expect(tag.split(', ').every((one) => one.replace(/(48)c/, '$1') in SOURCES)).toBe(true);
  });
});

describe.each(HEADINGS.map(({ name, rows }) => [name, rows] as const))('%s', (_name, rows) => {
  const lines = rows.flatMap((row) =>
    row.lines.map((line, i) => [row.no, line.of ?? row.cause, row, line, i] as const),
  );
  it.each(lines)('%i, %s: as printed, or as its note explains', (_no, _of, row, line, i) => {
    const found = outcome(row, line, i === 0);
    made.push(found);
    expect(found.agrees, found.missing.join('; ')).toBe(line.miss === undefined);
  });
});

describe('the agreement', () => {
  it('is that of 95 rows in a hundred', () => {
    const { rowsAgree, rows: all } = sumOf(made);
    expect(all).toBe(PRINTED.length);
    expect(rowsAgree / all).toBeGreaterThanOrEqual(LEAST);
  });

  it('stands in the page as it is; if not, run: npm run symptoms', () => {
    expect(readFileSync(PAGE, 'utf8')).toBe(pageOf(made));
  });
});

afterAll(() => {
  const yes = (holds: boolean) => (holds ? 'yes' : 'no');
  const table = made.map(({ row, line, symptom, test }) => {
    const of = line.of === undefined ? row.cause : `${row.cause} (${line.of})`;
    return [row.no, of, line.unit, yes(symptom), yes(test), line.miss ?? line.note ?? ''].join(' | ');
  });
  console.info(['row | cause | unit | symptom | test | note', ...table, sumWords(sumOf(made))].join('\n'));
});
