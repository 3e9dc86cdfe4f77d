import { describe, expect, it } from 'vitest';
import { formOf } from '../../../src/quiz/exam.ts';
import { drill } from '../../../src/quiz/index.ts';
import { angoffSheet, readSheet } from '../../../src/records/angoff-sheet.ts';
import { questionOf } from '../../../src/records/qti/question.ts';
import { readCsv } from '../../../src/records/read-csv.ts';
import { speak } from '../../../src/words/speak.ts';
import { SPECS } from '../../control/panels.ts';
import { MOCK } from '../quiz/sat.ts';
import { ENGLISH } from '../spoken.ts';

const form = formOf(MOCK, 3).slice(0, 4);
const questions = form.map(({ skill, seed }) =>
  questionOf(drill(skill, seed, SPECS.u1), 'en', speak(ENGLISH, 'us', true)),
);
const sheet = angoffSheet(form, questions);
/** The sheet as a judge hands it back. */
const filled = (...chances: readonly string[]) =>
  sheet
    .trimEnd()
    .split('\r\n')
    .map((line, i) => (i === 0 ? line : `${line}${chances[i - 1] ?? ''}`))
    .join('\r\n');

describe('the sheet for a judge', () => {
  it('has a line for each question with its right answer, and leaves the chance to the judge', () => {
    const rows = readCsv(sheet);
    expect(rows.length).toBe(5);
    for (const [i, row] of rows.slice(1).entries()) {
      expect(row[2]).toBe(`${form[i]?.skill}-${form[i]?.seed}`);
      expect(row[3]).toBe(questions[i]?.prompt);
      expect(row[6]).not.toBe('');
      expect(row[7]).toBe('');
    }
  });

  it('is read back by item, with either decimal mark', () => {
    const read = readSheet(filled('0.9', '0.55', '1', '"0,25"'));
    expect(read).toEqual({
      ok: true,
      value: { items: form.map(({ skill, seed }) => `${skill}-${seed}`), chances: [0.9, 0.55, 1, 0.25] },
    });
  });

  it('is refused where a chance is missing or is none, by its line', () => {
    const read = readSheet(filled('0.9', '', '70', '-0.1'));
    expect(read.ok ? [] : read.problems.map(({ path, message }) => `${path}: ${message}`)).toEqual([
      'line 3, chance: no chance is written',
      'line 4, chance: "70" is no chance',
      'line 5, chance: "-0.1" is no chance',
    ]);
    expect(readSheet('a,b\r\n1,2').ok).toBe(false);
    expect(readSheet('item,chance\r\n').ok).toBe(false);
  });
});

describe('a CSV file', () => {
  it('is read with quotes, lines within quotes, semicolons and the mark of UTF-8', () => {
    expect(readCsv('a,b\r\n"x, ""y""","1\r\n2"\r\n')).toEqual([
      ['a', 'b'],
      ['x, "y"', '1\r\n2'],
    ]);
    expect(readCsv('\uFEFFitem;chance\n1;0,5')).toEqual([
      ['item', 'chance'],
      ['1', '0,5'],
    ]);
  });
});
