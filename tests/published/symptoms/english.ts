/** How the checks and faults of the catalogue are called, in English and SI. */
import { faultName } from '../../../src/calls/index.ts';
import { ACTION_BY_ID, type Quantity } from '../../../src/service/index.ts';
import { en } from '../../../src/words/en.ts';
import { formatQuantity } from '../../../src/words/measure.ts';
import { speak } from '../../../src/words/speak.ts';

const TEXTS: Readonly<Record<string, string>> = en;
const ENGLISH = { language: 'en', texts: TEXTS } as const;
const spoken = speak(ENGLISH, 'si');

function lower(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** Checks in a row, as their buttons say; one that is done again is said once. */
export function checks(acts: readonly string[]): string {
  const labels = acts.flatMap((id) => ACTION_BY_ID.get(id)?.label ?? []).map((label) => lower(spoken(label)));
  return [...new Set(labels)].join(', then ');
}

export function fault(key: string): string {
  return lower(spoken(faultName(key)));
}

/** A text without the numbers that would stand in its gaps. */
export function words(id: string): string {
  return (TEXTS[id] ?? id).replace(/\{[^}]*\} ?/g, '').replace(/, $/, '');
}

export function amount(quantity: Quantity): string {
  return formatQuantity(ENGLISH, 'si', quantity);
}
