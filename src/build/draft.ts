/**
 * A call that is being made: the value of its file as far as it has come. Nothing in it need be right yet, so it is plain
 * JSON, read and changed by the paths that problems name, such as `faults[0].onset`.
 */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };
export type Draft = { readonly [key: string]: Json };

export function isDraft(value: unknown): value is Draft {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

type Key = string | number;

/** `faults[0].onset` as its keys. */
export function keysIn(path: string): readonly Key[] {
  return [...path.matchAll(/([^.[\]]+)|\[(\d+)\]/g)].map(([, name, place]) => name ?? Number(place));
}

/** What stands at a path; undefined where nothing does. */
export function valueAt(draft: Json | undefined, path: string): Json | undefined {
  return keysIn(path).reduce<Json | undefined>((value, key) => inside(value, key), draft);
}

function inside(value: Json | undefined, key: Key): Json | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  if (Array.isArray(value)) return typeof key === 'number' ? value[key] : undefined;
  const fields = value as { readonly [name: string]: Json };
  return Object.hasOwn(fields, key) ? fields[key] : undefined;
}

/** The draft with another value at a path; undefined takes it out, from a list with its place. */
export function withValue(draft: Draft, path: string, value: Json | undefined): Draft {
  return placed(draft, keysIn(path), value) as Draft;
}

function placed(at: Json | undefined, [key, ...rest]: readonly Key[], value: Json | undefined): Json | undefined {
  if (key === undefined) return value;
  const changed = placed(inside(at, key), rest, value);
  if (typeof key === 'number') {
    const list = Array.isArray(at) ? [...at] : [];
    if (changed === undefined) list.splice(key, 1);
    else list[Math.min(key, list.length)] = changed;
    return list;
  }
  const { [key]: _before, ...others } = (isDraft(at) ? at : {}) as Draft;
  if (changed === undefined) return others;
  return isDraft(at) && Object.hasOwn(at, key) ? { ...at, [key]: changed } : { ...others, [key]: changed };
}

/** The texts of a value that stand for one thing in both languages. */
export function textAt(draft: Draft, path: string, language: 'en' | 'es'): string {
  const text = valueAt(draft, `${path}.${language}`);
  return typeof text === 'string' ? text : '';
}

/** What a field shows of a value, also of one of a kind that it may not have. */
export function shownAt(draft: Draft, path: string): string {
  const value = valueAt(draft, path);
  if (value === undefined) return '';
  return typeof value === 'string' ? value : JSON.stringify(value);
}

/** How many entries a list has. */
export function lengthAt(draft: Draft, path: string): number {
  const list = valueAt(draft, path);
  return Array.isArray(list) ? list.length : 0;
}
