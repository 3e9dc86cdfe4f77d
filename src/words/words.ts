import type { en } from './en.ts';
import type { ofClass } from './en-class.ts';
import type { ofDrills } from './en-drills.ts';
import type { ofKept } from './en-kept.ts';
import type { later } from './en-later.ts';
import type { ofShare } from './en-share.ts';

export type Language = 'en' | 'es';

/** Every message id there is. English leads; Spanish is typed to have the same. */
export type Key =
  | keyof typeof en
  | keyof typeof later
  | keyof typeof ofDrills
  | keyof typeof ofShare
  | keyof typeof ofClass
  | keyof typeof ofKept;

/** One language, loaded. */
export interface Words {
  readonly language: Language;
  readonly texts: Readonly<Record<string, string>>;
}

/**
 * Texts that a call does without: a debrief and a coach say more; drills, calls from elsewhere, a class and what is kept
 * other things.
 */
export type Extra = 'debrief' | 'drills' | 'share' | 'kept' | 'class';

/** Loads the texts of a call in one language, and what else is asked for; a page fetches only what it shows. */
export async function loadWords(language: Language, ...extras: readonly Extra[]): Promise<Words> {
  const texts = language === 'es' ? (await import('./es.ts')).es : (await import('./en.ts')).en;
  const more = await Promise.all(extras.map((extra) => loadExtra(language, extra)));
  return { language, texts: Object.assign({}, texts, ...more) };
}

async function loadExtra(language: Language, extra: Extra): Promise<Words['texts']> {
  if (extra === 'drills') {
    return language === 'es' ? (await import('./es-drills.ts')).ofDrills : (await import('./en-drills.ts')).ofDrills;
  }
  if (extra === 'share') {
    return language === 'es' ? (await import('./es-share.ts')).ofShare : (await import('./en-share.ts')).ofShare;
  }
  if (extra === 'class') {
    return language === 'es' ? (await import('./es-class.ts')).ofClass : (await import('./en-class.ts')).ofClass;
  }
  if (extra === 'kept') {
    return language === 'es' ? (await import('./es-kept.ts')).ofKept : (await import('./en-kept.ts')).ofKept;
  }
  return language === 'es' ? (await import('./es-later.ts')).later : (await import('./en-later.ts')).later;
}
