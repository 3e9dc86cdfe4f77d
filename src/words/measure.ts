import type { Quantity } from '../service/message.ts';
import { shown, type Units } from './units.ts';
import type { Words } from './words.ts';

const MINUTES_IN_WORDS = 120;

/** A number with the language's decimal mark, grouped from five digits on, and a real minus sign. */
export function formatNumber(words: Words, value: number, decimals: number): string {
  const fixed = Math.abs(value).toFixed(decimals);
  const [whole = '0', part] = fixed.split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, words.texts['number.group'] ?? '') : whole;
  const digits = part === undefined ? grouped : `${grouped}${words.texts['number.decimal'] ?? '.'}${part}`;
  return value < 0 && Number(fixed) !== 0 ? `\u2212${digits}` : digits;
}

/** "16:42", and "16:42:05" with seconds. Any number of seconds is taken round the day. */
export function formatClock(second: number, withSeconds = false): string {
  const whole = Math.floor(second);
  const ofDay = whole - 86_400 * Math.floor(whole / 86_400);
  const two = (n: number) => String(n).padStart(2, '0');
  const minutes = `${two(Math.floor(ofDay / 3600))}:${two(Math.floor(ofDay / 60) % 60)}`;
  return withSeconds ? `${minutes}:${two(ofDay % 60)}` : minutes;
}

/** A quantity as a person reads it: rounded by its resolution, with its unit, in the language's own marks. */
export function formatQuantity(words: Words, units: Units, quantity: Quantity): string {
  if (quantity.measure === 'clock_s') return formatClock(quantity.value);
  if (quantity.measure === 'duration_min' && quantity.value >= MINUTES_IN_WORDS) {
    const minutes = Math.floor(quantity.value + 0.5);
    const rest = minutes % 60;
    const pattern = rest === 0 ? 'unit.h' : 'unit.hmin';
    return fill(words, pattern, { n: String(Math.floor(minutes / 60)), m: String(rest) });
  }
  const { value, decimals, unit } = shown(quantity, units);
  return fill(words, `unit.${unit}`, { n: formatNumber(words, value, decimals) });
}

function fill(words: Words, id: string, values: Readonly<Record<string, string>>): string {
  const pattern = words.texts[id] ?? '{n}';
  return pattern.replace(/\{(\w+)\}/g, (_, name: string) => values[name] ?? '');
}
