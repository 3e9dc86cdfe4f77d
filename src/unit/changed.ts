/** A unit whose numbers are not all as its file says: a float hung otherwise, a timer set longer. */
import type { UnitSpec } from './spec.ts';

/** Numbers by their paths in the unit's file, such as `panel.floats.highWaterFloat.makes_m`. */
export type Changes = Readonly<Record<string, number>>;

type Branch = Readonly<Record<string, unknown>>;

/** The number at a path; undefined where there is none. */
export function numberAt(spec: UnitSpec, path: string): number | undefined {
  const at = path.split('.').reduce<unknown>(inside, spec);
  return typeof at === 'number' ? at : undefined;
}

/** The unit with those numbers changed. Throws where a path leads to no number: whoever reads a file checks it first. */
export function withNumbers(spec: UnitSpec, changes: Changes): UnitSpec {
  return Object.entries(changes).reduce((changed, [path, value]) => {
    if (numberAt(spec, path) === undefined) throw new Error(`${spec.id} has no number at ${path}`);
    return placed(changed, path.split('.'), value) as UnitSpec;
  }, spec);
}

function placed(at: unknown, [key, ...rest]: readonly string[], value: number): unknown {
  return key === undefined ? value : { ...(at as Branch), [key]: placed(inside(at, key), rest, value) };
}

function inside(value: unknown, key: string): unknown {
  const has = typeof value === 'object' && value !== null && !Array.isArray(value) && Object.hasOwn(value, key);
  return has ? (value as Branch)[key] : undefined;
}
