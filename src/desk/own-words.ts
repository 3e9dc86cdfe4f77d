import { type Speak, speak } from '../words/speak.ts';
import type { Language, Words } from '../words/words.ts';
import type { Desk } from './desk.ts';

/** Speaks words that are few and come with the file that says them, in the language of the desk. */
export function speakWith({ words, settings }: Desk, own: Readonly<Record<Language, Words['texts']>>): Speak {
  const { language, texts } = words.value;
  return speak({ language, texts: { ...texts, ...own[language] } }, settings.value.units);
}
