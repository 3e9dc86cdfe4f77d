/** A round of drills: its count, and which skill comes next. */
import { SKILLS, type Skill } from './drill.ts';

export interface Answered {
  readonly right: boolean;
  /** Time that the question was open, s. */
  readonly seconds: number;
}

export interface Count {
  readonly skill: Skill;
  readonly asked: number;
  readonly right: number;
}

export function countOf(answers: readonly Answered[]): { asked: number; right: number; median_s: number } {
  const times = answers.map(({ seconds }) => seconds).sort((a, b) => a - b);
  return {
    asked: answers.length,
    right: answers.filter(({ right }) => right).length,
    // The lower one of the two in the middle: at least half took no longer.
    median_s: times[Math.ceil(times.length / 2) - 1] ?? 0,
  };
}

/** Rounds of a skill that still say something of today (convention). */
const RECENT = 3;

export interface Proposal {
  readonly skill: Skill;
  readonly because: 'most-wrong' | 'untried' | 'longest-ago';
}

/** The skill of which most answers went wrong of late; where none did, one not tried yet, then the one longest ago. */
export function proposed(counts: readonly Count[]): Proposal {
  const shares = SKILLS.map((skill) => ({ skill, share: wrongShare(counts.filter((one) => one.skill === skill)) }));
  const worst = shares.reduce((most, one) => (one.share > most.share ? one : most));
  if (worst.share > 0) return { skill: worst.skill, because: 'most-wrong' };
  const last = (skill: Skill) => counts.findLastIndex((one) => one.skill === skill);
  const [oldest = 'floats'] = [...SKILLS].sort((a, b) => last(a) - last(b));
  return { skill: oldest, because: last(oldest) < 0 ? 'untried' : 'longest-ago' };
}

function wrongShare(counts: readonly Count[]): number {
  const recent = counts.slice(-RECENT);
  const asked = recent.reduce((sum, one) => sum + one.asked, 0);
  return asked === 0 ? 0 : recent.reduce((sum, one) => sum + one.asked - one.right, 0) / asked;
}
