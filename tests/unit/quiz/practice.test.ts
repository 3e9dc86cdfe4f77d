import { describe, expect, it } from 'vitest';
import { SKILLS, type Skill } from '../../../src/quiz/drill.ts';
import { nextSkill, type Standing } from '../../../src/quiz/practice.ts';
import { TOPIC_OF } from '../../../src/quiz/topics.ts';

const due = (skill: Skill, recall: number): Standing => ({ skill, seen: true, due: true, recall });
const later = (skill: Skill, recall: number): Standing => ({ skill, seen: true, due: false, recall });
const fresh = (skill: Skill): Standing => ({ skill, seen: false, due: false, recall: 0 });

/** So many questions in a row, where answers change nothing. */
function asked(all: readonly Standing[], count: number): Skill[] {
  const skills: Skill[] = [];
  for (let i = 0; i < count; i++) skills.push(nextSkill(all, skills));
  return skills;
}

describe('the next skill of a practice', () => {
  it('is the due one that is least likely still known', () => {
    const all = [due('floats', 0.8), due('jar', 0.5), due('meter', 0.7), later('panel', 0.2)];
    expect(nextSkill(all, [])).toBe('jar');
    expect(nextSkill(all, ['jar'])).toBe('meter');
  });

  it('is one that was never asked at every third question, and as long as nothing is due', () => {
    const all = [due('floats', 0.8), due('jar', 0.5), fresh('meter'), fresh('panel')];
    expect(asked(all, 6)).toEqual(['jar', 'floats', 'meter', 'jar', 'floats', 'meter']);
    expect(asked([fresh('floats'), fresh('air-line'), later('jar', 0.95)], 3)).toEqual([
      'floats',
      'air-line',
      'floats',
    ]);
  });

  it('is ahead of its time, the weakest first, where all is known and nothing is due', () => {
    const all = [later('floats', 0.97), later('jar', 0.91), later('meter', 0.95)];
    expect(nextSkill(all, [])).toBe('jar');
    expect(nextSkill(all, ['jar'])).toBe('meter');
  });

  it('is never the same twice in a row where there is another, nor of the same topic where another is wanted', () => {
    const all = SKILLS.map((skill, i) => (i % 2 === 0 ? due(skill, 0.5 + i / 100) : fresh(skill)));
    const skills = asked(all, 30);
    skills.forEach((skill, i) => {
      expect(skill).not.toBe(skills[i - 1]);
      const before = skills[i - 1];
      if (before !== undefined) expect(TOPIC_OF[skill]).not.toBe(TOPIC_OF[before]);
    });
    expect(asked([due('jar', 0.5)], 3)).toEqual(['jar', 'jar', 'jar']);
  });
});
