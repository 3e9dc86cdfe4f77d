import { describe, expect, it } from 'vitest';
import {
  COURSE,
  type CourseEntry,
  difficulty,
  mastery,
  nextCall,
  shippedCalls,
  standing,
} from '../../src/calls/index.ts';

const entry = (call: string, bits: number, ...families: string[]): CourseEntry => ({
  call,
  bits,
  minutes: 60,
  families,
});
const SMALL = [
  entry('a', 3, 'power'),
  entry('b', 3.5, 'air'),
  entry('c', 4, 'power'),
  entry('d', 4.2, 'air'),
  entry('e', 6, 'pump'),
];
const passed = (call: string, score = 95) => ({ call, passed: true, score });

describe('the course', () => {
  it('holds every shipped call once, the easy ones first', () => {
    expect(COURSE.map((e) => e.call).sort()).toEqual(
      shippedCalls()
        .map((c) => c.id)
        .sort(),
    );
    const hard = COURSE.map(difficulty);
    expect(hard).toEqual([...hard].sort((a, b) => a - b));
    expect(COURSE.length).toBeGreaterThanOrEqual(24);
  });

  it('has calls on every unit and in every season', () => {
    expect(new Set(shippedCalls().map((c) => c.unit))).toEqual(new Set(['u1', 'u2', 'u3']));
    const quarters = shippedCalls().map((c) => Math.floor((Number(c.start.slice(5, 7)) % 12) / 3));
    expect(new Set(quarters).size).toBe(4);
  });
});

describe('the next call', () => {
  it('is the easiest where nothing was taken', () => {
    expect(nextCall(SMALL, [])).toBe('a');
  });

  it('goes to the family that is weakest within reach, and not far beyond what was passed', () => {
    expect(nextCall(SMALL, [passed('a')])).toBe('b');
    expect(nextCall(SMALL, [passed('a'), passed('b')])).toBe('c');
    expect(nextCall(SMALL, [passed('a'), passed('b'), passed('c')])).toBe('d');
  });

  it('comes back to one that was not passed, after another', () => {
    const failed = { call: 'b', passed: false, score: 40 };
    expect(nextCall(SMALL, [passed('a'), failed])).not.toBe('b');
    expect(nextCall(SMALL, [passed('a'), failed, passed('c')])).toBe('b');
  });

  it('does not count a call that hints led to its end', () => {
    const led = { ...passed('b'), assistance: 4 };
    expect(mastery(SMALL, [led], 'air')).toBeLessThan(mastery(SMALL, [], 'air'));
    expect(nextCall(SMALL, [passed('a'), led, passed('c')])).toBe('b');
  });

  it('is there when all are passed: practice never ends', () => {
    expect(
      nextCall(
        SMALL,
        SMALL.map((e) => passed(e.call)),
      ),
    ).toBe('a');
  });
});
