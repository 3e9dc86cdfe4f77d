/** More shapes of plain values, for what one window hears from another. */
import type { Shape } from '../shape.ts';

/** Longest list that is looked through: what is longer did not come from a page of ours. */
const LONGEST = 20_000;

export function listOf<T>(each: Shape<T>): Shape<readonly T[]> {
  return (value): value is readonly T[] => Array.isArray(value) && value.length <= LONGEST && value.every(each);
}

export function orNull<T>(shape: Shape<T>): Shape<T | null> {
  return (value): value is T | null => value === null || shape(value);
}

export function either<A, B>(one: Shape<A>, other: Shape<B>): Shape<A | B> {
  return (value): value is A | B => one(value) || other(value);
}

/** An object with any names, each with such a value. */
export function valuesOf<T>(each: Shape<T>): Shape<Readonly<Record<string, T>>> {
  return (value): value is Readonly<Record<string, T>> =>
    typeof value === 'object' && value !== null && !Array.isArray(value) && Object.values(value).every(each);
}

/** A list of just these, in this order. */
export function pair<A, B>(first: Shape<A>, second: Shape<B>): Shape<readonly [A, B]> {
  return (value): value is readonly [A, B] =>
    Array.isArray(value) && value.length === 2 && first(value[0]) && second(value[1]);
}
