/** Every limit at its edges: what fits stays as it is, and what does not is cut or refused by its rule, never otherwise. */
import { describe, expect, it } from 'vitest';
import {
  BeyondLimit,
  decimal,
  listed,
  NUMBER,
  type NumberLimit,
  number,
  TEXT,
  type TextLimit,
  text,
} from '../../../src/records/limits.ts';

const TEXTS: readonly (readonly [string, TextLimit])[] = Object.entries(TEXT);
const NUMBERS: readonly (readonly [string, NumberLimit])[] = Object.entries(NUMBER);

describe.each(TEXTS)('the text %s', (_, limit) => {
  const full = 'a'.repeat(limit.most);

  it('holds as much as it may', () => {
    expect(text(limit, full)).toBe(full);
  });

  it('is cut or refused one beyond, as its rule says', () => {
    if (limit.beyond === 'cut') expect(text(limit, `${full}b`)).toBe(full);
    else expect(() => text(limit, `${full}b`)).toThrow(BeyondLimit);
  });

  it('refuses a character that it must not have, and names the field and the source', () => {
    if (limit.only === undefined) return;
    expect(() => text(limit, 'ñ')).toThrow(
      new BeyondLimit(limit.field, 'a character that it must not have', limit.source),
    );
  });
});

it('a text is never cut within a character that takes two', () => {
  const limit: TextLimit = { field: 'x', most: 4, beyond: 'cut', source: 'x' };
  expect(text(limit, 'abc\u{1f600}')).toBe('abc');
  expect(text(limit, 'ab\u{1f600}c')).toBe('ab\u{1f600}');
});

it('a list is cut after the last element that fits whole', () => {
  const limit: TextLimit = { field: 'x', most: 7, beyond: 'cut', source: 'x' };
  expect(listed(limit, ['aaa', 'bbb'], ',')).toBe('aaa,bbb');
  expect(listed(limit, ['aaa', 'bbbb'], ',')).toBe('aaa');
  expect(listed(limit, ['aaaaaaaa'], ',')).toBe('');
  expect(listed(limit, [], ',')).toBe('');
});

describe.each(NUMBERS)('the number %s', (_, limit) => {
  it('is taken at both ends and refused beyond them', () => {
    expect(number(limit, limit.least)).toBe(limit.least);
    expect(number(limit, limit.most)).toBe(limit.most);
    for (const beyond of [limit.least - 0.01, limit.most + 0.01, Number.NaN]) {
      expect(() => number(limit, beyond)).toThrow(BeyondLimit);
    }
  });
});

it('a number is written in digits, without an exponent', () => {
  expect([0, 100, 0.7, 22.5, 1e-9, -0, 1 / 3, 1e7].map(decimal)).toEqual([
    ...['0', '100', '0.7', '22.5', '0', '0', '0.3333333', '10000000'],
  ]);
});
