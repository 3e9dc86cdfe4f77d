/** Speaks whole values of the core in every language and system of units, strictly: a missing text or gap throws. */
import type { Message } from '../../src/service/index.ts';
import { course as enCourse } from '../../src/words/en/course.ts';
import { offline as enOffline } from '../../src/words/en/offline.ts';
import { en } from '../../src/words/en.ts';
import { ofAccess as enAccess } from '../../src/words/en-access.ts';
import { ofBuild as enBuild } from '../../src/words/en-build.ts';
import { ofClass as enClass } from '../../src/words/en-class.ts';
import { ofDrills as enDrills } from '../../src/words/en-drills.ts';
import { ofFind as enFind } from '../../src/words/en-find.ts';
import { ofHome as enHome } from '../../src/words/en-home.ts';
import { ofInstructor as enInstructor } from '../../src/words/en-instructor.ts';
import { ofKept as enKept } from '../../src/words/en-kept.ts';
import { later as enLater } from '../../src/words/en-later.ts';
import { ofMeter as enMeter } from '../../src/words/en-meter.ts';
import { ofPicture as enPicture } from '../../src/words/en-picture.ts';
import { ofQuiz as enQuiz } from '../../src/words/en-quiz.ts';
import { ofShare as enShare } from '../../src/words/en-share.ts';
import { ofVisit as enVisit } from '../../src/words/en-visit.ts';
import { course as esCourse } from '../../src/words/es/course.ts';
import { offline as esOffline } from '../../src/words/es/offline.ts';
import { es } from '../../src/words/es.ts';
import { ofAccess as esAccess } from '../../src/words/es-access.ts';
import { ofBuild as esBuild } from '../../src/words/es-build.ts';
import { ofClass as esClass } from '../../src/words/es-class.ts';
import { ofDrills as esDrills } from '../../src/words/es-drills.ts';
import { ofFind as esFind } from '../../src/words/es-find.ts';
import { ofHome as esHome } from '../../src/words/es-home.ts';
import { ofInstructor as esInstructor } from '../../src/words/es-instructor.ts';
import { ofKept as esKept } from '../../src/words/es-kept.ts';
import { later as esLater } from '../../src/words/es-later.ts';
import { ofMeter as esMeter } from '../../src/words/es-meter.ts';
import { ofPicture as esPicture } from '../../src/words/es-picture.ts';
import { ofQuiz as esQuiz } from '../../src/words/es-quiz.ts';
import { ofShare as esShare } from '../../src/words/es-share.ts';
import { ofVisit as esVisit } from '../../src/words/es-visit.ts';
import { type Speak, speak } from '../../src/words/speak.ts';
import type { Words } from '../../src/words/words.ts';

export const ENGLISH: Words = {
  language: 'en',
  texts: {
    ...en,
    ...enLater,
    ...enDrills,
    ...enQuiz,
    ...enShare,
    ...enKept,
    ...enClass,
    ...enBuild,
    ...enCourse,
    ...enOffline,
    ...enMeter,
    ...enInstructor,
    ...enHome,
    ...enVisit,
    ...enAccess,
    ...enFind,
    ...enPicture,
  },
};
export const SPANISH: Words = {
  language: 'es',
  texts: {
    ...es,
    ...esLater,
    ...esDrills,
    ...esQuiz,
    ...esShare,
    ...esKept,
    ...esClass,
    ...esBuild,
    ...esCourse,
    ...esOffline,
    ...esMeter,
    ...esInstructor,
    ...esHome,
    ...esVisit,
    ...esAccess,
    ...esFind,
    ...esPicture,
  },
};

const SPEAKERS: readonly Speak[] = [ENGLISH, SPANISH].flatMap((words) => [
  speak(words, 'us', true),
  speak(words, 'si', true),
]);

/** The dictionary's topics, by file name; the core's are those that its own messages stand in. */
export const TOPICS = new Map(
  Object.entries(
    import.meta.glob<Record<string, Record<string, string>>>('../../src/words/en/*.ts', { eager: true }),
  ).map(([path, module]) => [path.replace(/^.*\/|\.ts$/g, ''), Object.values(module)[0] ?? {}] as const),
);
const CORE_TOPICS = [
  'actions',
  'about',
  'notes',
  'readings',
  'remarks',
  'faults',
  'shows',
  'forms',
  'why',
  'teaching',
  'breach',
  'flags',
  'proofs',
  'verdict',
  'happenings',
  'replays',
];

/** Ids and English texts of the core's own messages. */
export function coreTexts(): [string, string][] {
  return CORE_TOPICS.flatMap((topic) => Object.entries(TOPICS.get(topic) ?? {}));
}

/** Every message within a value, the nested ones too. An action to be sent back is no message, though it looks like one. */
export function messagesIn(value: unknown, found: Message[] = []): Message[] {
  if (typeof value !== 'object' || value === null) return found;
  if (Array.isArray(value)) {
    for (const one of value) messagesIn(one, found);
    return found;
  }
  const { id, values, ...more } = value as Record<string, unknown>;
  if (typeof id === 'string' && Object.keys(more).length === 0) {
    found.push(value as Message);
    return messagesIn(Object.values(values ?? {}), found);
  }
  for (const [key, inner] of Object.entries(value)) if (key !== 'action') messagesIn(inner, found);
  return found;
}

/** Speaks every message within a value, and returns the ids that were spoken. */
export function speakAll(value: unknown, spoken = new Set<string>()): Set<string> {
  for (const message of messagesIn(value)) {
    spoken.add(message.id);
    for (const say of SPEAKERS) {
      const text = say(message);
      if (text.trim() === '' || /[{}[\]]|undefined|NaN/.test(text)) throw new Error(`${message.id}: "${text}"`);
    }
  }
  return spoken;
}
