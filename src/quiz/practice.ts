/** What a practice asks next: weak spots first, what was never asked mixed in, skills and topics taking turns. */
import type { Skill } from './drill.ts';
import { TOPIC_OF } from './topics.ts';

/** How a skill stands on the unit that is practised on. */
export interface Standing {
  readonly skill: Skill;
  readonly seen: boolean;
  readonly due: boolean;
  /** How likely it is still known, 0 to 1. */
  readonly recall: number;
}

/** Every so many questions one is of a skill that was never asked, while there are such (convention). */
const FRESH_EVERY = 3;

/** The next skill, after those that were asked in this sitting; the first of `all` where nothing else speaks for one. */
export function nextSkill(all: readonly Standing[], asked: readonly Skill[]): Skill {
  const weakest = (some: readonly Standing[]) => [...some].sort((a, b) => a.recall - b.recall);
  const due = weakest(all.filter(({ seen, due }) => seen && due));
  const fresh = all.filter(({ seen }) => !seen);
  const rest = weakest(all.filter(({ seen, due }) => seen && !due));
  const freshFirst = asked.length % FRESH_EVERY === FRESH_EVERY - 1;
  const wanted = freshFirst ? [...fresh, ...due] : [...due, ...fresh];
  const last = asked.at(-1);
  const otherSkill = ({ skill }: Standing) => skill !== last;
  const otherTopic = ({ skill }: Standing) => last === undefined || TOPIC_OF[skill] !== TOPIC_OF[last];
  const found =
    wanted.find(otherTopic) ??
    wanted.find(otherSkill) ??
    rest.find(otherTopic) ??
    rest.find(otherSkill) ??
    [...wanted, ...rest][0];
  if (found === undefined) throw new Error('no skill to practise');
  return found.skill;
}
