import { UsageError } from './output.ts';

/** A number from an option, at least `least`. */
export function number(name: string, text: string, least: number): number {
  const value = Number(text);
  if (!Number.isFinite(value) || value < least) {
    throw new UsageError(`--${name} ${text}: write a number of at least ${least}`);
  }
  return value;
}
