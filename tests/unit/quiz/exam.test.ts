import { describe, expect, it } from 'vitest';
import { SKILLS } from '../../../src/quiz/drill.ts';
import { formOf, scoreOf } from '../../../src/quiz/exam.ts';
import { drill } from '../../../src/quiz/index.ts';
import { loadExam } from '../../../src/quiz/load-exam.ts';
import { skillsOf, TOPIC_OF, TOPICS, type Topic } from '../../../src/quiz/topics.ts';
import { SPECS } from '../../control/panels.ts';
import { MOCK } from './sat.ts';

const FORMS = Array.from({ length: 40 }, (_, seed) => formOf(MOCK, seed));

describe('a form of the mock exam', () => {
  it('has so many questions of each topic as the blueprint says, in whatever order', () => {
    for (const form of FORMS) {
      for (const topic of TOPICS) {
        const asked = form.filter(({ skill }) => TOPIC_OF[skill] === topic);
        expect(asked.length).toBe(MOCK.topics[topic] ?? 0);
        // The skills of a topic take turns.
        const times = skillsOf(topic).map((skill) => asked.filter((one) => one.skill === skill).length);
        expect(Math.max(0, ...times) - Math.min(...times, Math.max(0, ...times))).toBeLessThanOrEqual(1);
      }
    }
    expect(new Set(FORMS.map((form) => form.map(({ skill }) => skill).join())).size).toBe(FORMS.length);
  });

  it('is the same for everybody with its number, and another with another number', () => {
    expect(formOf(MOCK, 7)).toEqual(FORMS[7]);
    const questions = FORMS.flat().map(({ skill, seed }) => `${skill} ${seed}`);
    expect(new Set(questions).size).toBe(questions.length);
  });

  it('can be asked on every unit', () => {
    for (const spec of [SPECS.u1, SPECS.u2, SPECS.u3]) {
      for (const { skill, seed } of FORMS[0] ?? []) expect(drill(skill, seed, spec).seed).toBe(seed);
    }
  });

  it('asks about every topic that any question asks about', () => {
    const asked = new Set<Topic>(SKILLS.map((skill) => TOPIC_OF[skill]));
    expect(TOPICS.filter((topic) => MOCK.topics[topic] !== undefined)).toEqual(TOPICS.filter((one) => asked.has(one)));
  });
});

describe('its score', () => {
  const rights = (right: number, of: number) =>
    Array.from({ length: of }, (_, i) => ({ skill: 'jar' as const, right: i < right }));

  // 70 % of a written exam: Snohomish Health District 5.45.030.
  it('passes with 21 of 30 at 70 %, not with 20', () => {
    expect(MOCK.pass).toBe(0.7);
    expect(scoreOf(rights(21, 30), 0.7).passed).toBe(true);
    expect(scoreOf(rights(20, 30), 0.7).passed).toBe(false);
    // 0.7 times 90 is a little over 63 in floating point.
    expect(scoreOf(rights(63, 90), 0.7).passed).toBe(true);
  });

  it('is counted by topic, and the topics add up', () => {
    const items = [
      { skill: 'jar', right: true },
      { skill: 'floats', right: false },
      { skill: 'jar', right: false },
    ] as const;
    const { topics, ...whole } = scoreOf(items, 0.5);
    expect(whole).toEqual({ right: 1, of: 3, passed: false });
    expect(topics).toEqual([
      { topic: 'hydraulics', right: 0, of: 1 },
      { topic: 'solids', right: 1, of: 2 },
    ]);
  });
});

describe('the file of an exam', () => {
  it('is refused with the path and the mend of each fault', () => {
    const bad = loadExam(JSON.stringify({ ...MOCK, minutes: 0, topics: { air: 0.5 } }));
    expect(bad.ok ? [] : bad.problems.map(({ path }) => path)).toEqual(['minutes', 'topics.air']);
    const none = loadExam(JSON.stringify({ ...MOCK, topics: {} }));
    expect(none.ok ? [] : none.problems).toEqual([
      { path: 'topics', message: 'an exam without questions', mend: 'name a topic and how many' },
    ]);
    expect(loadExam('{').ok).toBe(false);
    expect(loadExam(JSON.stringify(MOCK))).toEqual({ ok: true, value: MOCK });
  });
});
