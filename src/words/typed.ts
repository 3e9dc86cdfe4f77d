import type { Words } from './words.ts';

/** A number as it is typed, with either decimal mark, and grouped as the language groups or by spaces; NaN where it is none. */
export function readNumber(words: Words, typed: string): number {
  const digits = typed.trim().replaceAll(/\s(?=\d{3}(?!\d))/g, '');
  if (digits === '') return Number.NaN;
  const group = words.texts['number.group'] ?? '';
  // A number under one has no thousands.
  const plain = digits.startsWith('0')
    ? digits
    : digits.replaceAll(/[.,](?=\d{3}(?!\d))/g, (mark) => (mark === group ? '' : mark));
  return Number(plain.replace(',', '.').replace('\u2212', '-'));
}
