import type { Message } from '../service/index.ts';
import { speak } from '../words/speak.ts';
import { loadWords } from '../words/words.ts';

/** The command line speaks English and SI. */
export async function english(): Promise<(message: Message) => string> {
  return speak(await loadWords('en', 'class', 'share'), 'si');
}
