import type { Speak } from '../../words/speak.ts';
import type { Words } from '../../words/words.ts';
import { UNIT_NAMES } from '../faults/cards.ts';
import type { FaultCard } from '../faults/fault-card.ts';
import type { CallCard } from '../protocol.ts';
import { alikeOf, indexOf, type WordIndex, wordsAmong } from './index-of-words.ts';

export type Season = 'winter' | 'spring' | 'summer' | 'autumn';
export const SEASONS: readonly Season[] = ['winter', 'spring', 'summer', 'autumn'];

/** The season of a month, 1 to 12, in the valley that the calls are set in, north of the equator. */
export function seasonOf(month: number): Season {
  return SEASONS[Math.floor((month % 12) / 3)] ?? 'winter';
}

/** The calls by what their cards say, and nothing else: what is wrong there is for who takes the call to find. */
export function callIndex(cards: readonly CallCard[], words: Words): WordIndex<CallCard> {
  const said = (id: string) => words.texts[id] ?? '';
  const { language } = words;
  return indexOf(
    cards.map((card) => ({
      what: card,
      name: card.title[language],
      about: [
        card.summary[language],
        card.lot[language],
        card.unit,
        UNIT_NAMES[card.unit]?.[language] ?? '',
        said(`find.season.${seasonOf(card.starts.month)}`),
        said('find.months').split(' ')[card.starts.month - 1] ?? '',
        said(`find.kind.${card.kind}`),
      ],
    })),
    alikeOf(said('find.signs')),
  );
}

/**
 * The faults by their names and by the signs in what is said of them: lamp, smell, hum. What came before, a storm or guests, is
 * no sign: by that a call's own words would lead to its fault.
 */
export function faultIndex(cards: readonly FaultCard[], words: Words, speak: Speak): WordIndex<FaultCard> {
  const signs = alikeOf(words.texts['find.signs'] ?? '');
  return indexOf(
    cards.map((card) => ({
      what: card,
      name: speak(card.name),
      about: [
        ...wordsAmong(signs, words.texts[`shows.${card.id}`] ?? ''),
        words.texts[`family.${card.family}`] ?? '',
        speak(card.where),
        ...card.parts.map(speak),
      ],
    })),
    signs,
  );
}
