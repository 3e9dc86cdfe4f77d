import { describe, expect, it } from 'vitest';
import { SKILLS } from '../../src/quiz/drill.ts';
import { type Count, countOf, proposed } from '../../src/quiz/round.ts';

describe('the count of a round', () => {
  it('tells how many were right, and a time that half of the answers kept to', () => {
    const answers = [9, 3, 30, 5].map((seconds, i) => ({ right: i !== 2, seconds }));
    expect(countOf(answers)).toEqual({ asked: 4, right: 3, median_s: 5 });
    expect(countOf(answers.slice(0, 3)).median_s).toBe(9);
    expect(countOf([])).toEqual({ asked: 0, right: 0, median_s: 0 });
  });
});

const count = (skill: Count['skill'], right: number, asked = 8): Count => ({ skill, right, asked });

describe('the next drill', () => {
  it('is the one of which the largest share went wrong', () => {
    expect(proposed([count('jar', 6), count('panel', 1, 2), count('meter', 8)])).toEqual({
      skill: 'panel',
      because: 'most-wrong',
    });
  });

  it('goes by the last three rounds of each', () => {
    const counts = [count('jar', 0), count('jar', 8), count('jar', 8), count('jar', 8), count('meter', 7)];
    expect(proposed(counts)).toEqual({ skill: 'meter', because: 'most-wrong' });
  });

  it('is one not tried yet where nothing went wrong, then the one that is longest ago', () => {
    expect(proposed([])).toEqual({ skill: 'floats', because: 'untried' });
    expect(proposed([count('floats', 8), count('jar', 8)])).toEqual({ skill: 'air-line', because: 'untried' });
    const all = [...SKILLS].reverse().map((skill) => count(skill, 8));
    expect(proposed(all)).toEqual({ skill: SKILLS.at(-1), because: 'longest-ago' });
  });
});
