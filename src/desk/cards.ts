/** The list of calls, as `card-of.ts` makes a card of each. */
import { allShipped, prepareCall } from '../calls/index.ts';
import type { Language } from '../words/words.ts';
import { cardOf } from './card-of.ts';
import type { CallCard } from './protocol.ts';

/** A card in one language: a visitor reads one. */
export interface CardIn extends Omit<CallCard, 'title' | 'summary' | 'lot'> {
  readonly title: string;
  readonly summary: string;
  readonly lot: string;
}

export function cardsIn(language: Language): readonly CardIn[] {
  return allShipped().map((call) => {
    const { title, summary, lot, ...card } = cardOf(prepareCall(call));
    return { ...card, title: title[language], summary: summary[language], lot: lot[language] };
  });
}
