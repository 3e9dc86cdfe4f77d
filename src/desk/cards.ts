/** The list of calls. The page is built with what this comes to, without all it is made from (`tools/worked-out.ts`). */
import { allShipped, prepareCall } from '../calls/index.ts';
import { cardOf } from './card-of.ts';
import type { CallCard } from './protocol.ts';

export const CARDS: readonly CallCard[] = allShipped().map((call) => cardOf(prepareCall(call)));
