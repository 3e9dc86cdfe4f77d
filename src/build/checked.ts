/** A draft as the check of every call sees it: what is wrong with it, and the property that it makes. */
import { checkCall, type Library, preparedIn } from '../calls/check.ts';
import type { Problem } from '../calls/problems.ts';
import type { Prepared } from '../calls/setup.ts';
import { type Draft, isDraft, type Json, lengthAt } from './draft.ts';

/**
 * Everything that is wrong with a draft as a file. A text that is still to be written hides nothing else: what would be wrong
 * if all were written is told too.
 */
export function problemsOf(draft: Draft, library: Library): readonly Problem[] {
  const found = [draft, written(draft)].flatMap((one) => {
    const checked = checkCall(one, library);
    return checked.ok ? [] : checked.problems;
  });
  const seen = new Set<string>();
  return found.filter(({ path, message }) => {
    const key = `${path} ${message}`;
    return !seen.has(key) && seen.add(key);
  });
}

/** The property of a draft, to live through: texts and solution need not be there yet, nor faults. */
export function propertyOf(draft: Draft, library: Library): Prepared | undefined {
  const checked = checkCall({ ...written(draft), ...standIn(draft) }, library);
  if (!checked.ok) return undefined;
  const call = isSound(draft) ? { ...checked.value, faults: [] } : checked.value;
  return preparedIn(call, library);
}

function isSound(draft: Draft): boolean {
  return lengthAt(draft, 'faults') === 0;
}

/** A fault to be checked with, where there is none yet. */
function standIn(draft: Draft): Draft {
  return isSound(draft)
    ? { faults: [{ fault: 'surge-latch', onset: `${String(draft.start).slice(0, 10)}T00:00` }] }
    : {};
}

/** The draft with something in every text, an id and a solution: what is still to come is then no problem. */
function written(draft: Draft): Draft {
  const whole = filled(draft) as Draft;
  return {
    ...whole,
    id: draft.id === '' ? 'draft' : (whole.id ?? 'draft'),
    solution: lengthAt(draft, 'solution') === 0 ? [{ do: 'ask-danger' }] : (whole.solution ?? []),
  };
}

function filled(value: Json): Json {
  if (Array.isArray(value)) return value.map(filled);
  if (!isDraft(value)) return value;
  if (isText(value)) return { en: value.en === '' ? '-' : value.en, es: value.es === '' ? '-' : value.es };
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, filled(inner)]));
}

function isText(value: Draft): value is { readonly en: string; readonly es: string } {
  return typeof value.en === 'string' && typeof value.es === 'string' && Object.keys(value).length === 2;
}
