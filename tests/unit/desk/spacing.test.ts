import { describe, expect, it } from 'vitest';
import { answered, standingOf } from '../../../src/desk/quiz/spacing.ts';
import type { QuizCard } from '../../../src/desk/stored.ts';

const DAY_ms = 86_400_000;
const START = 2_000_000_000_000;
const of = { skill: 'jar', unit: 'u1' } as const;

/** The card after answers, each so many days after the one before. */
function after(answers: readonly (readonly [gap_d: number, right: boolean])[]): QuizCard {
  let now = START;
  let card: QuizCard | undefined;
  for (const [gap_d, right] of answers) {
    now += gap_d * DAY_ms;
    card = answered(of, card, right, now);
  }
  if (card === undefined) throw new Error('no answers');
  return card;
}

describe('when a skill is asked again', () => {
  // Vectors of the scheduler's own tests, ts-fsrs 5.4.2, FSRS-6.test.ts, with its default numbers.
  it('is as the scheduler’s tests have it, each answer given when it is due', () => {
    const answers = [...'GGGGGGAAGGGGG'];
    let card: QuizCard | undefined;
    const days = answers.map((grade) => {
      card = answered(of, card, grade === 'G', card?.due ?? START);
      return card.scheduled_d;
    });
    expect(days).toEqual([0, 2, 11, 46, 163, 498, 0, 0, 2, 4, 7, 12, 21]);
  });

  it('comes to the stability and difficulty of those tests', () => {
    const card = after([
      [0, false],
      [0, true],
      [1, true],
      [3, true],
      [8, true],
      [21, true],
    ]);
    expect(card.stability).toBeCloseTo(53.62691, 4);
    expect(card.difficulty).toBeCloseTo(6.3574867, 4);
  });

  it('is the same for the same answers at the same times', () => {
    const answers = [
      [0, true],
      [2, true],
      [9, false],
      [1, true],
    ] as const;
    expect(after(answers)).toEqual(after(answers));
  });
});

describe('what is likely still known', () => {
  it('is nine tenths once as many days have passed as the stability says, and that is when it is due', () => {
    const card = after([
      [0, true],
      [1, true],
      [3, true],
    ]);
    expect(card.due - card.last).toBe(card.scheduled_d * DAY_ms);
    const then = standingOf('jar', card, card.last + Math.round(card.stability) * DAY_ms);
    expect(then.due).toBe(true);
    expect(then.recall).toBeCloseTo(0.9, 2);
    const soon = standingOf('jar', card, card.last + DAY_ms);
    expect(soon.due).toBe(false);
    expect(soon.recall).toBeGreaterThan(then.recall);
    expect(standingOf('jar', card, card.due + 300 * DAY_ms).recall).toBeLessThan(0.7);
  });

  it('falls with a wrong answer, and what was never asked is not due', () => {
    const right = after([
      [0, true],
      [3, true],
    ]);
    const wrong = after([
      [0, true],
      [3, false],
    ]);
    const later = START + 10 * DAY_ms;
    expect(standingOf('jar', wrong, later).recall).toBeLessThan(standingOf('jar', right, later).recall);
    expect(standingOf('jar', undefined, later)).toEqual({ skill: 'jar', seen: false, due: false, recall: 0 });
  });
});
