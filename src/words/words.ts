import type { en } from './en.ts';

export type Language = 'en' | 'es';

/** Every message id there is. English leads; Spanish is typed to have the same. */
export type Key = keyof typeof en;

/** One language, loaded. */
export interface Words {
  readonly language: Language;
  readonly texts: Readonly<Record<string, string>>;
}

/** Loads one language; each is its own file, so that a page fetches only what it shows. */
export async function loadWords(language: Language): Promise<Words> {
  const texts = language === 'es' ? (await import('./es.ts')).es : (await import('./en.ts')).en;
  return { language, texts };
}
