/** Item and test statistics against worked examples: numbers to the digits in which they stand there. */
import { describe, expect, it } from 'vitest';
import { cuts } from '../../src/quiz/angoff.ts';
import {
  column,
  correctedPointBiserial,
  difficulty,
  kr20,
  kr20Without,
  kr21,
  type Matrix,
  pointBiserial,
  sem,
  totals,
  variance,
} from '../../src/quiz/statistics.ts';

const rowOf = (text: string) => [...text].map((one) => one === '1');
const overItems = <T>(matrix: Matrix, of: (matrix: Matrix, item: number) => T): T[] =>
  (matrix[0] ?? []).map((_, item) => of(matrix, item));
const rounded = (values: readonly (number | undefined)[], digits: number) =>
  values.map((one) => Number(one?.toFixed(digits)));

/** K. Wuensch, East Carolina University, KR20.txt: ten students, ten items. */
const WUENSCH = [
  ...['1111110110', '1011011101', '1111011001', '0010001000', '0000010010'],
  ...['1110111111', '1101110111', '1111111101', '0101111101', '1101101110'],
].map(rowOf);

describe('ten students and ten items (Wuensch, KR20.txt)', () => {
  it('gives the totals, shares right and variance that the page gives', () => {
    expect(totals(WUENSCH)).toEqual([8, 7, 7, 2, 2, 9, 8, 9, 7, 7]);
    expect(overItems(WUENSCH, difficulty)).toEqual([0.7, 0.7, 0.6, 0.7, 0.6, 0.8, 0.7, 0.7, 0.5, 0.6]);
    expect(variance(totals(WUENSCH))).toBeCloseTo(5.84, 10);
  });

  // Worked out by hand from the page's table: the page gives no such numbers for them.
  it('gives KR-20 0.6963, KR-21 0.6842 and a standard error of 1.3317', () => {
    expect(rounded([kr20(WUENSCH), kr21(WUENSCH), sem(WUENSCH)], 4)).toEqual([0.6963, 0.6842, 1.3317]);
  });

  it('does not take p(1-p) of a population beside a variance of a sample: that would give 0.7378', () => {
    const mixed = (10 / 9) * (1 - 2.18 / ((5.84 * 10) / 9));
    expect(Number(mixed.toFixed(4))).toBe(0.7378);
    expect(kr20(WUENSCH)).toBeLessThan(mixed - 0.04);
  });

  it('tells items apart by the total, and two of them worse than chance once they are out of it', () => {
    const plain = [795, 795, 203, 614, 710, 434, 163, 795, 83, 625].map((one) => one / 1000);
    const corrected = [706, 706, 0, 474, 584, 286, -27, 706, -124, 476].map((one) => one / 1000);
    expect(rounded(overItems(WUENSCH, pointBiserial), 3)).toEqual(plain);
    overItems(WUENSCH, correctedPointBiserial).forEach((r, item) => {
      expect(r).toBeCloseTo(corrected[item] ?? Number.NaN, 3);
    });
  });
});

/**
 * Bock and Lieberman 1970, section 6 of a law school admission test: how many of 1,000 gave each pattern, 00000 to 11111 in
 * binary order (from memory; they sum to 1,000).
 */
const PATTERNS = [
  ...[3, 6, 2, 11, 1, 1, 3, 4, 1, 8, 0, 16, 0, 3, 2, 15],
  ...[10, 29, 14, 81, 3, 28, 15, 80, 16, 56, 21, 173, 11, 61, 28, 298],
];
const LSAT6 = PATTERNS.flatMap((times, pattern) => {
  const row = rowOf(pattern.toString(2).padStart(5, '0'));
  return Array.from({ length: times }, () => row);
});

describe('a thousand answers to five items (Bock and Lieberman 1970)', () => {
  it('gives the published shares right', () => {
    expect(LSAT6.length).toBe(1000);
    expect(overItems(LSAT6, difficulty)).toEqual([0.924, 0.709, 0.553, 0.763, 0.87]);
    expect(column(LSAT6, 2).filter(Boolean).length).toBe(553);
  });

  // As the R package ltm prints them, from memory; low, so that nothing clipped or made positive comes through.
  it('gives coefficient alpha 0.2950, and those without each item', () => {
    expect(kr20(LSAT6)?.toFixed(4)).toBe('0.2950');
    expect(rounded(overItems(LSAT6, kr20Without), 4)).toEqual([0.2754, 0.2376, 0.2168, 0.2459, 0.2663]);
  });

  it('gives the point-biserials without the item, of a population: ltm prints those of a sample, 0.0001 lower in four', () => {
    const found = rounded(overItems(LSAT6, correctedPointBiserial), 4);
    expect(found).toEqual([0.1128, 0.1532, 0.1728, 0.1444, 0.1216]);
    [0.1127, 0.1531, 0.1728, 0.1444, 0.1215].forEach((printed, item) => {
      expect(Math.abs((found[item] ?? 0) - printed)).toBeLessThan(0.00015);
    });
  });
});

describe('a panel of three judges and five items (made up: no published table of ratings was found)', () => {
  // Cuts are sums and means by hand; the method is that of Livingston and Zieky 1982, Passing Scores, ERIC ED227113 (from memory).
  it('gives the cuts of each judge, of the panel, their spread and its error', () => {
    const { judges, panel, share, sd, se } = cuts([
      [0.9, 0.7, 0.6, 0.8, 0.5],
      [0.8, 0.6, 0.7, 0.9, 0.4],
      [0.85, 0.65, 0.5, 0.8, 0.6],
    ]);
    expect(rounded(judges, 10)).toEqual([3.5, 3.4, 3.4]);
    expect(rounded([panel, 100 * share, sd, se].map(Number), 4)).toEqual([3.4333, 68.6667, 0.0577, 0.0333]);
  });
});
