import type { en } from './en.ts';
import type { ofAccess } from './en-access.ts';
import type { ofBuild } from './en-build.ts';
import type { ofClass } from './en-class.ts';
import type { ofDrills } from './en-drills.ts';
import type { ofFind } from './en-find.ts';
import type { ofHome } from './en-home.ts';
import type { ofInstructor } from './en-instructor.ts';
import type { ofKept } from './en-kept.ts';
import type { later } from './en-later.ts';
import type { ofMeter } from './en-meter.ts';
import type { ofPicture } from './en-picture.ts';
import type { ofQuiz } from './en-quiz.ts';
import type { ofShare } from './en-share.ts';
import type { ofVisit } from './en-visit.ts';

export type Language = 'en' | 'es';

/** Every message id there is. English leads; Spanish is typed to have the same. */
export type Key =
  | keyof typeof en
  | keyof typeof later
  | keyof typeof ofDrills
  | keyof typeof ofQuiz
  | keyof typeof ofShare
  | keyof typeof ofClass
  | keyof typeof ofBuild
  | keyof typeof ofKept
  | keyof typeof ofMeter
  | keyof typeof ofInstructor
  | keyof typeof ofHome
  | keyof typeof ofVisit
  | keyof typeof ofAccess
  | keyof typeof ofFind
  | keyof typeof ofPicture;

/** One language, loaded. */
export interface Words {
  readonly language: Language;
  readonly texts: Readonly<Record<string, string>>;
}

/**
 * Texts that a call does without: a debrief and a coach say more; drills, a quiz, calls from elsewhere, a class, a meter, a
 * trainer, a household, a routine visit, the yard in words, a picture looked into or kept, a search and what is kept other
 * things.
 */
export type Extra =
  | 'debrief'
  | 'drills'
  | 'quiz'
  | 'share'
  | 'kept'
  | 'class'
  | 'build'
  | 'meter'
  | 'instructor'
  | 'home'
  | 'visit'
  | 'access'
  | 'find'
  | 'picture';

/** Loads the texts of a call in one language, and what else is asked for; a page fetches only what it shows. */
export async function loadWords(language: Language, ...extras: readonly Extra[]): Promise<Words> {
  const texts = language === 'es' ? (await import('./es.ts')).es : (await import('./en.ts')).en;
  if (extras.length === 0) return { language, texts };
  const { EXTRAS } = await import('./extras.ts');
  const more = await Promise.all(extras.map((extra) => EXTRAS[language][extra]()));
  return { language, texts: Object.assign({}, texts, ...more) };
}
