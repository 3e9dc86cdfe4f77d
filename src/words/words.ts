import type { en } from './en.ts';
import type { later } from './en-later.ts';

export type Language = 'en' | 'es';

/** Every message id there is. English leads; Spanish is typed to have the same. */
export type Key = keyof typeof en | keyof typeof later;

/** One language, loaded. */
export interface Words {
  readonly language: Language;
  readonly texts: Readonly<Record<string, string>>;
}

/** Loads the texts of a call in one language; each is its own file, so that a page fetches only what it shows. */
export async function loadWords(language: Language): Promise<Words> {
  const texts = language === 'es' ? (await import('./es.ts')).es : (await import('./en.ts')).en;
  return { language, texts };
}

/** Loads all texts of one language: a debrief says more than a call. */
export async function loadAllWords(language: Language): Promise<Words> {
  const later = language === 'es' ? await import('./es-later.ts') : await import('./en-later.ts');
  const { texts } = await loadWords(language);
  return { language, texts: { ...texts, ...later.later } };
}
