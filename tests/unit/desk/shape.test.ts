import { describe, expect, it } from 'vitest';
import { anything, fields, finite, flag, oneOf, text, textUpTo } from '../../../src/desk/shape.ts';

describe('a shape', () => {
  const visit = fields({ version: oneOf(1), name: textUpTo(5), at: finite, done: flag, more: anything });
  const good = { version: 1, name: 'Soap', at: 7, done: true, more: null };

  it('takes what has its fields, and lets others be', () => {
    expect(visit(good)).toBe(true);
    expect(visit({ ...good, other: 1 })).toBe(true);
    expect(fields({ inner: visit })({ inner: good })).toBe(true);
  });

  it('takes what may be there and what may not, but no other value in its place', () => {
    const more = fields({ name: text }, { family: text });
    expect([{ name: 'a' }, { name: 'a', family: 'air' }, { name: 'a', family: undefined }].every(more)).toBe(true);
    expect(more({ name: 'a', family: 7 })).toBe(false);
    expect(more({ family: 'air' })).toBe(false);
  });

  it.each([
    ['another version', { ...good, version: 2 }],
    ['a long text', { ...good, name: 'Soap first' }],
    ['no number', { ...good, at: Number.NaN }],
    ['a number as text', { ...good, at: '7' }],
    ['a missing field', { version: 1, name: 'Soap', at: 7, done: true }],
    ['null', null],
    ['a text', 'visit'],
    ['nothing', undefined],
  ])('refuses %s', (_what, value) => {
    expect(visit(value)).toBe(false);
  });

  it('refuses what is wrong inside', () => {
    expect(fields({ inner: visit })({ inner: { ...good, done: 'yes' } })).toBe(false);
    expect(text(1)).toBe(false);
  });
});
