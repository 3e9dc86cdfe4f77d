/** What an exam asks about, and which of it a skill is part of. */
import { SKILLS, type Skill } from './drill.ts';

/** An outline of our own, after the topics that published qualifications list (common practice for the parting). */
export const TOPICS = [
  'hydraulics',
  'air',
  'solids',
  'disinfection',
  'electrical',
  'diagnosis',
  'safety',
  'records',
] as const;
export type Topic = (typeof TOPICS)[number];

export const TOPIC_OF = {
  floats: 'hydraulics',
  'air-line': 'air',
  jar: 'solids',
  panel: 'diagnosis',
  meter: 'electrical',
} as const satisfies Record<Skill, Topic>;

/** The skills that ask about a topic. */
export function skillsOf(topic: Topic): readonly Skill[] {
  return SKILLS.filter((skill) => TOPIC_OF[skill] === topic);
}
