import type { LocalText, Message, MessageValue, Quantity } from '../service/message.ts';
import { formatNumber, formatQuantity } from './measure.ts';
import { shown, type Units } from './units.ts';
import type { Words } from './words.ts';

export type Speak = (message: Message) => string;

/**
 * A gap in a text: `{p}` puts the value in, `{^p}` with a capital first letter, and `{n:minute|minutes}` picks a word
 * by the number `n` without printing it.
 */
const GAP = /\{(\^?)(\w+)(?::([^{}|]*)\|([^{}|]*))?\}/g;

/** Names of the gaps of a text, sorted: the test that both languages ask for the same values uses it. */
export function gapsOf(text: string): string[] {
  return [...new Set([...text.matchAll(GAP)].map((m) => m[2] ?? ''))].sort();
}

/** Raised by a strict speaker where a text or the value for a gap is missing. */
export class MissingWord extends Error {}

/**
 * Gives the function that turns messages into sentences of one language and one system of units. Nested messages are
 * spoken too. A missing text shows its id in brackets, so that a screen never goes blank; `strict` throws instead.
 */
export function speak(words: Words, units: Units, strict = false): Speak {
  const missing = (what: string): string => {
    if (strict) throw new MissingWord(what);
    return `[${what}]`;
  };
  const one = (value: MessageValue): string => {
    if (typeof value === 'string') return value;
    if (typeof value === 'number') return formatNumber(words, value, Number.isInteger(value) ? 0 : 1);
    if (isQuantity(value)) return formatQuantity(words, units, value);
    return isLocal(value) ? value[words.language] : sentence(value);
  };
  const sentence = (message: Message): string => {
    const text = words.texts[message.id];
    if (text === undefined) return missing(message.id);
    return text.replace(GAP, (_, capital: string, name: string, single?: string, several?: string) => {
      const value = message.values?.[name];
      if (value === undefined) return missing(`${message.id}: ${name}`);
      if (several !== undefined) return isOne(value, units) ? (single ?? '') : several;
      const spoken = one(value);
      return capital === '' ? spoken : spoken.charAt(0).toUpperCase() + spoken.slice(1);
    });
  };
  return sentence;
}

function isQuantity(value: Quantity | LocalText | Message): value is Quantity {
  return 'measure' in value;
}

function isLocal(value: LocalText | Message): value is LocalText {
  return 'en' in value;
}

/** Whether a number reads as exactly one, as it is shown. */
function isOne(value: MessageValue, units: Units): boolean {
  if (typeof value === 'number') return value === 1;
  if (typeof value !== 'object' || !isQuantity(value)) return value === '1';
  const { value: n, decimals } = shown(value, units);
  return n.toFixed(decimals) === '1';
}
