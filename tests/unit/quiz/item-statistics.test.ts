import { describe, expect, it } from 'vitest';
import { chosen } from '../../../src/quiz/distractors.ts';
import { formOf } from '../../../src/quiz/exam.ts';
import { formStatistics, LEAST_ANSWERS } from '../../../src/quiz/item-statistics.ts';
import { column, correlation, kr20, kr21, type Matrix, sem } from '../../../src/quiz/statistics.ts';
import { statisticsCsv } from '../../../src/records/statistics-csv.ts';
import { MOCK, sat } from './sat.ts';

/** A class in which person `n` gets every question right whose place is under `n`: the first is easy, the last hard. */
const orderly = Array.from({ length: 32 }, (_, n) => sat(5, (place) => place < n));

describe('statistics of a form', () => {
  it('tell nothing of a question under 30 answers, and so many there are', () => {
    const [few] = formStatistics(orderly.slice(0, LEAST_ANSWERS - 1));
    expect(few).toMatchObject({ exam: 'mock', form: 5, unit: 'u1', n: 29, items: formOf(MOCK, 5), found: null });
    expect(
      statisticsCsv(few ? [few] : [])
        .trim()
        .split('\r\n').length,
    ).toBe(1);
    expect(formStatistics(orderly.slice(0, LEAST_ANSWERS))[0]?.found).not.toBeNull();
  });

  it('keep forms apart, also where only the questions or the units differ', () => {
    const other = sat(6, () => true);
    const [first] = orderly;
    const changed = { ...other, form: 5 };
    const inSi = first ? [{ ...first, units: 'si' as const }] : [];
    const forms = formStatistics([...orderly, other, changed, ...inSi]);
    expect(forms.map(({ form, n }) => [form, n])).toEqual([
      [5, 32],
      [6, 1],
      [5, 1],
      [5, 1],
    ]);
  });

  it('flag what everybody gets right, hardly anybody does, and what tells nobody apart', () => {
    const files = orderly.map((_, n) =>
      sat(5, (place) => {
        if (place === 0) return true;
        if (place === 1) return n > 29;
        // Those who know less get it right.
        return place === 2 ? n < 16 : place < n;
      }),
    );
    const items = formStatistics(files)[0]?.found?.items ?? [];
    expect(items[0]).toMatchObject({ place: 1, p: 1, r: undefined, answered: 32, omitted: 0, flags: ['easy'] });
    expect(items[1]?.flags).toEqual(['hard']);
    expect(items[2]?.p).toBe(0.5);
    expect(items[2]?.r).toBeLessThan(-0.5);
    expect(items[2]?.flags).toContain('weak');
    expect(items[15]?.flags).toEqual([]);
    expect(items[15]?.r).toBeGreaterThan(0.5);
  });

  it('flag a wrong answer that was offered and that those who know more prefer', () => {
    const at = formOf(MOCK, 5).findIndex(({ skill }) => skill === 'panel');
    // Those who know most get it wrong, those who know least leave it out.
    const files = orderly.map((_, n) =>
      sat(5, (place) => {
        if (place !== at) return place < n;
        return n > 20 ? false : n < 10 ? null : true;
      }),
    );
    expect(formStatistics(files)[0]?.found?.items[at]?.flags).toContain('distractor');
    expect(formStatistics(orderly)[0]?.found?.items[at]?.flags).not.toContain('distractor');
  });

  it('take what was left out for wrong, and say how many left it out', () => {
    const files = orderly.map((_, n) => sat(5, (place) => (place === 4 && n % 2 === 0 ? null : place < n)));
    const item = formStatistics(files)[0]?.found?.items[4];
    expect(item).toMatchObject({ answered: 16, omitted: 16, p: 14 / 32 });
  });

  it('go to a spreadsheet with N beside each, the right answer starred', () => {
    const [head, first] = statisticsCsv(formStatistics(orderly)).split('\r\n');
    expect(head).toBe('exam,form,unit,units,place,topic,skill,seed,n,omitted,p,r_corrected,flags,answers');
    expect(first).toMatch(/^mock,5,u1,us,1,[\w-]+,[\w-]+,\d+,32,0,0\.969,/);
    expect(first).toContain('* 31');
  });
});

describe('answers that were chosen', () => {
  const totals = [9, 8, 8, 5, 5, 5, 4, 3, 2, 1, 1];

  it('are counted for all, and shared among the highest and the lowest 27 %', () => {
    const given = ['a', 'a', 'b', 'a', 'a', undefined, 'c', 'c', 'b', 'b', 'b'];
    expect(chosen(given, totals, new Set(['a']))).toEqual([
      { answer: 'a', right: true, times: 4, high: 2 / 3, low: 0 },
      { answer: 'b', right: false, times: 4, high: 1 / 3, low: 1 },
      { answer: 'c', right: false, times: 2, high: 0, low: 0 },
    ]);
  });

  it('do not depend on the order of those with equal totals', () => {
    const equal = [3, 3, 3, 3];
    for (const { high, low } of chosen(['a', 'b', 'b', 'a'], equal, new Set(['a']))) expect(high).toBe(low);
  });
});

describe('a matrix', () => {
  const matrix: Matrix = [
    [true, true, false],
    [true, false, false],
    [true, true, true],
  ];

  it('has no reliability where totals do not vary or there is one item', () => {
    const alike: Matrix = [
      [true, false],
      [false, true],
    ];
    expect([kr20(alike), kr21(alike), sem(alike)]).toEqual([undefined, undefined, undefined]);
    expect(kr20(matrix.map((row) => row.slice(0, 1)))).toBeUndefined();
    expect(correlation(column(matrix, 0), column(matrix, 1))).toBeUndefined();
  });

  it('has at most the reliability of formula 20 by formula 21', () => {
    expect(kr21(matrix)).toBeLessThanOrEqual(kr20(matrix) ?? 0);
  });
});
