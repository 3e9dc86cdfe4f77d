import { UsageError } from './output.ts';

/** One of the words that an option takes. */
export function oneOf<const T extends string>(name: string, text: string, allowed: readonly T[]): T {
  const found = allowed.find((one) => one === text);
  if (found === undefined)
    throw new UsageError(`--${name} ${text}: write one of ${allowed.join(', ')}`.replace('  ', ' '));
  return found;
}

/** A number from an option, at least `least`. */
export function number(name: string, text: string, least: number): number {
  const value = Number(text);
  if (!Number.isFinite(value) || value < least) {
    throw new UsageError(`--${name} ${text}: write a number of at least ${least}`);
  }
  return value;
}

/** A whole number from an option, at least `least`. */
export function whole(name: string, text: string, least: number): number {
  const value = number(name, text, least);
  if (!Number.isInteger(value)) throw new UsageError(`--${name} ${text}: write a whole number`);
  return value;
}
