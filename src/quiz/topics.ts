/** What the drills are on: the table that a blueprint of an exam is made from. */

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

/** Every family of questions, and its topic. */
export const TOPIC_OF = {
  floats: 'hydraulics',
  'air-line': 'air',
  jar: 'solids',
  panel: 'electrical',
  meter: 'electrical',
  flow: 'hydraulics',
  rising: 'hydraulics',
  detention: 'hydraulics',
  'float-gap': 'hydraulics',
  'draw-down': 'hydraulics',
  timer: 'hydraulics',
  gauge: 'air',
  oxygen: 'air',
  leak: 'air',
  load: 'solids',
  sludge: 'solids',
  'pump-out': 'solids',
  overflow: 'solids',
  chlorine: 'disinfection',
  tablets: 'disinfection',
  ct: 'disinfection',
  sample: 'disinfection',
  amps: 'electrical',
  place: 'diagnosis',
  happens: 'diagnosis',
  split: 'diagnosis',
  phone: 'diagnosis',
  lockout: 'safety',
  locked: 'safety',
  urgent: 'safety',
  gas: 'safety',
  limits: 'records',
  counters: 'records',
} as const satisfies Record<string, Topic>;

export type Skill = keyof typeof TOPIC_OF;

export const SKILLS = Object.keys(TOPIC_OF) as readonly Skill[];

export function skillsOf(topic: Topic): readonly Skill[] {
  return SKILLS.filter((skill) => TOPIC_OF[skill] === topic);
}
