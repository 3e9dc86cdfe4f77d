import type { Extra, Language, Words } from './words.ts';

/** Where texts lie that a call does without. A file of its own: so many names of files are much for a page that wants none. */
export const EXTRAS: Readonly<Record<Language, Readonly<Record<Extra, () => Promise<Words['texts']>>>>> = {
  en: {
    debrief: async () => (await import('./en-later.ts')).later,
    drills: async () => (await import('./en-drills.ts')).ofDrills,
    quiz: async () => (await import('./en-quiz.ts')).ofQuiz,
    share: async () => (await import('./en-share.ts')).ofShare,
    kept: async () => (await import('./en-kept.ts')).ofKept,
    class: async () => (await import('./en-class.ts')).ofClass,
    build: async () => (await import('./en-build.ts')).ofBuild,
    meter: async () => (await import('./en-meter.ts')).ofMeter,
    instructor: async () => (await import('./en-instructor.ts')).ofInstructor,
    home: async () => (await import('./en-home.ts')).ofHome,
    visit: async () => (await import('./en-visit.ts')).ofVisit,
    access: async () => (await import('./en-access.ts')).ofAccess,
    find: async () => (await import('./en-find.ts')).ofFind,
    picture: async () => (await import('./en-picture.ts')).ofPicture,
  },
  es: {
    debrief: async () => (await import('./es-later.ts')).later,
    drills: async () => (await import('./es-drills.ts')).ofDrills,
    quiz: async () => (await import('./es-quiz.ts')).ofQuiz,
    share: async () => (await import('./es-share.ts')).ofShare,
    kept: async () => (await import('./es-kept.ts')).ofKept,
    class: async () => (await import('./es-class.ts')).ofClass,
    build: async () => (await import('./es-build.ts')).ofBuild,
    meter: async () => (await import('./es-meter.ts')).ofMeter,
    instructor: async () => (await import('./es-instructor.ts')).ofInstructor,
    home: async () => (await import('./es-home.ts')).ofHome,
    visit: async () => (await import('./es-visit.ts')).ofVisit,
    access: async () => (await import('./es-access.ts')).ofAccess,
    find: async () => (await import('./es-find.ts')).ofFind,
    picture: async () => (await import('./es-picture.ts')).ofPicture,
  },
};
