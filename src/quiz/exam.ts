/** A mock exam: the questions of a form, drawn from its seed, and what came out of it. Everybody with the seed sits the same form. */
import { Draws } from './draws.ts';
import type { Skill } from './drill.ts';
import type { ExamFile } from './exam-schema.ts';
import { skillsOf, TOPIC_OF, TOPICS, type Topic } from './topics.ts';

/** One question of a form: with the unit it makes the drill. */
export interface Item {
  readonly skill: Skill;
  readonly seed: number;
}

/** Seeds of drills that a form draws from. */
const SEEDS = 1e9;

/** So many questions of each topic as the exam asks for, its skills taking turns, all of them mixed. */
export function formOf(exam: ExamFile, seed: number): readonly Item[] {
  const draws = new Draws(seed, `exam/${exam.id}`);
  const items = TOPICS.flatMap((topic): Item[] => {
    const skills = draws.some(skillsOf(topic));
    return Array.from({ length: exam.topics[topic] ?? 0 }, (_, i): Item => {
      const skill = skills[i % skills.length];
      if (skill === undefined) throw new Error(`no question asks about ${topic}`);
      return { skill, seed: draws.whole(0, SEEDS - 1) };
    });
  });
  return draws.some(items);
}

export interface TopicScore {
  readonly topic: Topic;
  readonly right: number;
  readonly of: number;
}

export interface Score {
  readonly right: number;
  readonly of: number;
  readonly passed: boolean;
  /** Those that were asked about. */
  readonly topics: readonly TopicScore[];
}

/** What came out: what was left unanswered is wrong. */
export function scoreOf(items: readonly { readonly skill: Skill; readonly right: boolean }[], pass: number): Score {
  const counted = (some: typeof items) => ({ right: some.filter(({ right }) => right).length, of: some.length });
  const all = counted(items);
  return {
    ...all,
    // Of 30 with 70 %, 21 are enough: a share times a count is not always whole where it should be.
    passed: all.right >= pass * all.of - 1e-9,
    topics: TOPICS.map((topic) => ({
      topic,
      ...counted(items.filter(({ skill }) => TOPIC_OF[skill] === topic)),
    })).filter(({ of }) => of > 0),
  };
}
