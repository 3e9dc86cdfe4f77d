import { describe, expect, it } from 'vitest';
import {
  answersOf,
  begun,
  drillOf,
  judged,
  later,
  left_s,
  readSitting,
  type Sitting,
  withItem,
} from '../../../src/desk/quiz/sitting.ts';
import { toldOf, withClock, withMore, withoutClock } from '../../../src/desk/quiz/time.ts';
import { loadAnswers } from '../../../src/quiz/answers.ts';
import { SPECS } from '../../control/panels.ts';
import { answerTo, MOCK, sat } from '../quiz/sat.ts';

const fresh = begun(MOCK, { form: 7, unit: 'u1', units: 'us', minutes: 60 });
/** As the store gives it back. */
const kept = (sitting: unknown) => JSON.parse(JSON.stringify(sitting));

/** All questions answered, those at even places right. */
function answered(): Sitting {
  let sitting = fresh;
  for (const [at, item] of fresh.items.entries()) {
    sitting = later(withItem({ ...sitting, at }, { given: answerTo(drillOf(sitting, item), at % 2 === 0) }), 20);
  }
  return sitting;
}

describe('an exam that is sat', () => {
  it('goes on from what was kept of it, and from nothing else', () => {
    const half = later(withItem({ ...fresh, at: 4 }, { given: 'x', marked: true }), 12.5);
    expect(readSitting(kept(half))).toEqual(half);
    expect(half.items[4]).toMatchObject({ given: 'x', marked: true, seconds: 12.5 });
    expect(readSitting({ ...half, at: 99 })?.at).toBe(0);
    for (const bad of [
      undefined,
      null,
      {},
      { ...half, unit: 'u9' },
      { ...half, items: [] },
      { ...half, used_s: '1' },
    ]) {
      expect(readSitting(bad)).toBeUndefined();
    }
    const items = half.items.map((item) => ({ ...item, skill: 'alchemy' }));
    expect(readSitting({ ...half, items })).toBeUndefined();
  });

  it('comes to answers that a trainer’s page takes, as they are', () => {
    const sitting = answered();
    expect(judged(sitting).map(({ right }) => right)).toEqual(fresh.items.map((_, at) => at % 2 === 0));
    const answers = answersOf(sitting, 'es');
    const read = loadAnswers(JSON.stringify(answers), () => SPECS.u1);
    expect(read).toEqual({ ok: true, value: answers });
    expect(answers).toMatchObject({ form: 7, unit: 'u1', language: 'es', units: 'us', minutes: 60, used_s: 600 });
    expect(answers.items.map(({ skill, seed }) => [skill, seed])).toEqual(
      sat(7, () => null).items.map(({ skill, seed }) => [skill, seed]),
    );
  });
});

describe('the time of an exam', () => {
  const used = (minutes: number) => later(fresh, minutes * 60);

  it('is what was given less what was used, and nothing where there is no clock', () => {
    expect(left_s(fresh, 0)).toBe(3600);
    expect(left_s(used(20), 30.2)).toBe(40 * 60 - 30);
    expect(left_s(used(61), 0)).toBe(0);
    expect(left_s(withoutClock(used(61)), 0)).toBeNull();
  });

  it('can be made longer at any time, and as often as it is wanted', () => {
    expect(withMore(used(20)).minutes).toBe(70);
    let sitting = used(60);
    for (let i = 0; i < 12; i++) {
      expect(left_s(sitting, 0)).toBe(0);
      sitting = withMore(sitting);
      expect(left_s(sitting, 0)).toBe(600);
      sitting = later(sitting, 600);
    }
    expect(left_s(withClock(withoutClock(used(20))), 0)).toBe(40 * 60);
    expect(left_s(withClock(withoutClock(used(300))), 0)).toBe(600);
  });

  it('is told at four times only', () => {
    const told = Array.from({ length: 3601 }, (_, s) => toldOf(3600 - s));
    expect(told[0]).toBeUndefined();
    expect(told.filter((one, i) => one !== told[i - 1])).toEqual([30, 10, 5, 1]);
  });
});
