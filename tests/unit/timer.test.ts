/** The dial of the night timer: which instants of the panel's clock are starts. Pure arithmetic, in seconds. */
import { describe, expect, it } from 'vitest';
import { nextStart, startAt } from '../../src/unit/timer.ts';

const HOUR = 3600;
const DAY = 86_400;
const starts = [0, 1, 23.5];

describe('the next start', () => {
  it('is the first of the day that is still to come', () => {
    expect(nextStart(starts, 3599)).toBe(HOUR);
    expect(nextStart(starts, 2 * HOUR)).toBe(23.5 * HOUR);
    expect(nextStart([23.5, 1, 0], 1800)).toBe(HOUR);
  });

  it('is one of the day after where today has none left', () => {
    expect(nextStart(starts, 23.75 * HOUR)).toBe(DAY);
    expect(nextStart([1], 2 * HOUR)).toBe(DAY + HOUR);
  });

  it('is counted from the day it is, on any day and before day 0', () => {
    expect(nextStart(starts, 3 * DAY + 1800)).toBe(3 * DAY + HOUR);
    expect(nextStart(starts, -HOUR)).toBe(-0.5 * HOUR);
  });

  it('is not the start that is just now, nor one that rounding makes a hair later or earlier', () => {
    for (const now of [HOUR, HOUR + 1e-9, HOUR - 1e-9]) expect(nextStart(starts, now)).toBe(23.5 * HOUR);
    for (const now of [DAY, DAY + 1e-9, DAY - 1e-9]) expect(nextStart(starts, now)).toBe(DAY + HOUR);
  });

  it('a millionth of a second is one instant with the start, more is not', () => {
    expect(nextStart([1], HOUR - 2e-6)).toBe(HOUR);
    expect(nextStart([1], HOUR - 0.9e-6)).toBe(DAY + HOUR);
  });

  it('never comes on a dial without hours', () => {
    expect(nextStart([], 0)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('a time of the panel', () => {
  it('is the start whose hour it is, on any day', () => {
    expect(startAt(starts, HOUR)).toBe(1);
    expect(startAt(starts, 23.5 * HOUR)).toBe(23.5);
    expect(startAt(starts, 4 * DAY + HOUR)).toBe(1);
    expect(startAt(starts, -DAY)).toBe(0);
    expect(startAt(starts, -0.5 * HOUR)).toBe(23.5);
  });

  it('is that start also when rounding puts it a hair off, over midnight too', () => {
    for (const off of [1e-9, -1e-9]) {
      expect(startAt(starts, HOUR + off)).toBe(1);
      expect(startAt(starts, DAY + off)).toBe(0);
    }
  });

  it('is no start a second, or two millionths of one, beside it', () => {
    for (const off of [1, -1, 2e-6, -2e-6]) {
      expect(startAt(starts, HOUR + off)).toBeUndefined();
      expect(startAt(starts, DAY + off)).toBeUndefined();
    }
    expect(startAt(starts, 12 * HOUR)).toBeUndefined();
  });
});
