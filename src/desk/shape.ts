/**
 * Shapes of plain values, to check what storage hands back. The page needs no more than these few, and they spare it
 * the validator that the engine's worker has for files.
 */

/** Whether a value has the shape of a `T`. */
export type Shape<T> = (value: unknown) => value is T;

/** The type whose shape it is. */
export type ShapeOf<S> = S extends Shape<infer T> ? T : never;

export const text: Shape<string> = (value) => typeof value === 'string';
export const flag: Shape<boolean> = (value) => typeof value === 'boolean';
export const finite: Shape<number> = (value): value is number => Number.isFinite(value);
/** Anything: whoever uses it checks it. */
export const anything: Shape<unknown> = (_value): _value is unknown => true;

export function textUpTo(length: number): Shape<string> {
  return (value): value is string => text(value) && value.length <= length;
}

export function oneOf<const T extends string | number>(...allowed: readonly T[]): Shape<T> {
  return (value): value is T => (allowed as readonly unknown[]).includes(value);
}

type Fields<T> = { readonly [K in keyof T]: Shape<T[K]> };

/** The shape of an object, which also tells of its fields: to say where a value goes wrong. */
export interface FieldsShape<T> {
  (value: unknown): value is T;
  readonly needed: readonly (readonly [string, Shape<unknown>])[];
  readonly free: readonly (readonly [string, Shape<unknown>])[];
}

/** An object with at least these fields, and with those of `more` or without; others are let be. */
export function fields<T extends object, M extends object = object>(
  shapes: Fields<T>,
  more?: Fields<M>,
): FieldsShape<T & Partial<M>> {
  const entries = (of: object) => Object.entries(of) as [string, Shape<unknown>][];
  const [needed, free] = [entries(shapes), entries(more ?? {})];
  const has = (value: unknown): value is T & Partial<M> => {
    if (typeof value !== 'object' || value === null) return false;
    const at = (key: string) => (value as Record<string, unknown>)[key];
    return (
      needed.every(([key, shape]) => key in value && shape(at(key))) &&
      free.every(([key, shape]) => at(key) === undefined || shape(at(key)))
    );
  };
  return Object.assign(has, { needed, free });
}
