import type { Language } from '../words/words.ts';
import type { CardIn } from './cards.ts';
import { fetched } from './fetched.ts';
import type { CallCard } from './protocol.ts';

/** The cards of all calls that ship, in a language: each of their texts stands for both. */
export async function listIn(language: Language): Promise<readonly CallCard[]> {
  const { CARDS } = await fetched(language === 'es' ? import('./cards-es.ts') : import('./cards-en.ts'));
  return CARDS.map(spoken);
}

function spoken({ title, summary, lot, ...card }: CardIn): CallCard {
  const text = (one: string) => ({ en: one, es: one });
  return { ...card, title: text(title), summary: text(summary), lot: text(lot) };
}
