/**
 * What the catalogue says of each fault, and how the units are called. The page is built with what this comes to, without
 * all it is made from (`tools/worked-out.ts`).
 */
import { shippedLibrary } from '../../calls/shipped.ts';
import type { LocalText } from '../../service/message.ts';
import { type FaultCard, faultCards } from './fault-card.ts';

export const FAULT_CARDS: readonly FaultCard[] = faultCards();

export const UNIT_NAMES: Readonly<Record<string, LocalText>> = Object.fromEntries(
  [...shippedLibrary().units.values()].map(({ id, name }) => [id, name]),
);
