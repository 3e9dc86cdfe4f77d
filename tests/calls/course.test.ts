import { describe, expect, it } from 'vitest';
import {
  COURSE,
  type CourseEntry,
  difficulty,
  mastery,
  nextCall,
  rungOf,
  shippedCalls,
} from '../../src/calls/index.ts';
import { RUNGS, type Rung } from '../../src/calls/rungs.ts';

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
const passedOn = (rung: Rung, call: string, score = 80) => ({ ...passed(call, score), rung });
const failedOn = (rung: Rung, call: string) => ({ call, passed: false, score: 30, rung });

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
    expect(mastery(SMALL, [led], 'air')).toBe(mastery(SMALL, [], 'air'));
    expect(nextCall(SMALL, [passed('a'), led, passed('c')])).toBe('b');
  });

  it('is another of its family after a walkthrough, where there is one', () => {
    expect(nextCall(SMALL, [passedOn('led-whole', 'a')])).toBe('c');
    expect(nextCall(SMALL, [failedOn('led-whole', 'a')])).toBe('c');
    expect(nextCall(SMALL, [{ ...passed('b'), assistance: 4 }])).toBe('d');
    expect(nextCall(SMALL, [passedOn('led-whole', 'e')])).toBe('a');
  });

  it('is never the one just taken, and comes back to a call until it was passed with nobody leading', () => {
    const taken: { call: string; passed: boolean; score: number; rung: Rung }[] = [];
    const times = (call: string) => taken.filter((t) => t.call === call).length;
    while (!SMALL.every(({ call }) => taken.some((t) => t.call === call && RUNGS.indexOf(t.rung) > 2))) {
      const next = nextCall(SMALL, taken);
      if (next === undefined || next === taken.at(-1)?.call || taken.length > 40) throw new Error(`stuck at ${next}`);
      taken.push({ ...passed(next), rung: rungOf(SMALL, taken, next) });
    }
    expect(SMALL.map(({ call }) => times(call)).every((n) => n >= 1 && n <= 4)).toBe(true);
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

describe('mastery', () => {
  it('does not fall because somebody was led to a pass, and rises less the farther they were led', () => {
    const held = [passed('a'), passed('c')];
    const known = mastery(SMALL, held, 'power');
    for (const rung of RUNGS.slice(0, 3)) {
      expect(mastery(SMALL, [...held, passedOn(rung, 'a')], 'power')).toBeGreaterThanOrEqual(known);
    }
    const learnt = RUNGS.map((rung) => mastery(SMALL, [passedOn(rung, 'a')], 'power'));
    expect(learnt[0]).toBe(mastery(SMALL, [], 'power'));
    expect(learnt).toEqual([...learnt].sort((a, b) => a - b));
    expect(new Set(learnt).size).toBe(4);
  });
});

describe('the rung to take a call on', () => {
  const rung = (...taken: Parameters<typeof rungOf>[1][number][]) => rungOf(SMALL, taken, 'c');

  it('is the lowest for a family that is unknown', () => {
    expect(rung()).toBe('led-whole');
    expect(rung(passed('b'))).toBe('led-whole');
  });

  it('is one above a pass, two with 90 or more and no hint', () => {
    expect(rung(passedOn('led-to-cause', 'a', 80))).toBe('led-by-phone');
    expect(rung(passedOn('led-to-cause', 'a', 90))).toBe('coached');
    expect(rung({ ...passedOn('led-to-cause', 'a', 90), assistance: 1 })).toBe('led-by-phone');
    expect(rung(passedOn('coached', 'a', 95))).toBe('alone');
    expect(rung(passed('a'))).toBe('alone');
  });

  it('is one above a walkthrough at most, for it shows nothing yet; nor does a call that hints led to its end', () => {
    expect(rung(passedOn('led-whole', 'a', 100))).toBe('led-to-cause');
    expect(rung({ ...passedOn('coached', 'a', 100), assistance: 4 })).toBe('led-to-cause');
  });

  it('does not fall by a pass on a lower one', () => {
    expect(rung(passed('a'), passedOn('led-whole', 'a'))).toBe('alone');
  });

  it('is one lower after a call that was not passed, unless that was tried above it', () => {
    expect(rung(passed('a'), failedOn('alone', 'a'))).toBe('coached');
    expect(rung(passed('a'), failedOn('alone', 'a'), failedOn('coached', 'a'))).toBe('led-by-phone');
    expect(rung(passedOn('led-whole', 'a'), failedOn('alone', 'a'))).toBe('led-to-cause');
    expect(rung(failedOn('led-whole', 'a'))).toBe('led-whole');
  });

  it('is that of the family that stands lowest, where there are several', () => {
    const both = [...SMALL, entry('f', 5, 'power', 'air')];
    expect(rungOf(both, [passed('a')], 'f')).toBe('led-whole');
    expect(rungOf(both, [passed('a'), passedOn('led-to-cause', 'b')], 'f')).toBe('led-by-phone');
  });
});
