/**
 * The list of calls in Spanish. The page is built with what this comes to, without all it is made from
 * (`tools/worked-out.ts`).
 */
import { type CardIn, cardsIn } from './cards.ts';

export const CARDS: readonly CardIn[] = cardsIn('es');
