/** Changes to a draft that can be taken back and made again. Typing in one field is one change. */
import { type Draft, type Json, withValue } from './draft.ts';

export interface Edits {
  readonly now: Draft;
  readonly before: readonly Draft[];
  readonly after: readonly Draft[];
  /** The field that is being typed in, whose next letter belongs to the same change. */
  readonly typing: string | undefined;
}

/** As many changes as anybody goes back (convention). */
const KEPT = 300;

export function begin(draft: Draft): Edits {
  return { now: draft, before: [], after: [], typing: undefined };
}

/** Another value at a path. `typed`: letter by letter, so that what follows in the same field joins it. */
export function change(edits: Edits, path: string, value: Json | undefined, typed = false): Edits {
  return replace(edits, withValue(edits.now, path, value), typed ? path : undefined);
}

/** Another draft, as one change. */
export function replace(edits: Edits, draft: Draft, typing?: string): Edits {
  if (JSON.stringify(draft) === JSON.stringify(edits.now)) return edits;
  const joins = typing !== undefined && typing === edits.typing;
  const before = joins ? edits.before : [...edits.before, edits.now].slice(-KEPT);
  return { now: draft, before, after: [], typing };
}

export function takeBack({ now, before, after }: Edits): Edits | undefined {
  const last = before.at(-1);
  return last && { now: last, before: before.slice(0, -1), after: [now, ...after], typing: undefined };
}

export function makeAgain({ now, before, after: [next, ...rest] }: Edits): Edits | undefined {
  return next && { now: next, before: [...before, now], after: rest, typing: undefined };
}
