/**
 * Finds what some words stand in: whatever their case and accents, by the beginnings of words, and by words that say the
 * same. Small enough to be gone through at each key.
 */

/** Something to be found: by its name, and by what else is said of it. */
export interface Findable<T> {
  readonly what: T;
  readonly name: string;
  readonly about: readonly string[];
}

export interface WordIndex<T> {
  /** What all the words of a query stand in, the best first; all in their own order where nothing is asked. */
  find(query: string): readonly T[];
}

/** Words as they are compared: without accents, in small letters. */
export function wordsOf(text: string): readonly string[] {
  return (
    text
      .normalize('NFD')
      .replace(/\p{M}/gu, '')
      .toLowerCase()
      .match(/[\p{L}\p{N}]+/gu) ?? []
  );
}

/** Beginnings of words that say the same, in groups. */
export type Alike = readonly (readonly string[])[];

/** Reads groups that are parted by semicolons. */
export function alikeOf(text: string): Alike {
  return text.split(';').map(wordsOf);
}

/** What in a text is one of those words. */
export function wordsAmong(alike: Alike, text: string): readonly string[] {
  return wordsOf(text).filter((word) => alike.some((group) => group.some((one) => word.startsWith(one))));
}

/** So many letters make a word that others may stand for before it is whole. */
const ENOUGH = 4;
/** What a word is worth in the name and elsewhere, whole and as a beginning; by another word half. */
const WORTH = { name: [8, 6], about: [3, 2] } as const;

export function indexOf<T>(things: readonly Findable<T>[], alike: Alike): WordIndex<T> {
  const entries = things.map(({ what, name, about }) => ({
    what,
    name: new Set(wordsOf(name)),
    about: new Set(about.flatMap(wordsOf)),
  }));
  return {
    find(query) {
      const asked = wordsOf(query).map((word) => ({ word, others: othersOf(word, alike) }));
      const found = entries.flatMap((entry) => {
        let rank = 0;
        for (const { word, others } of asked) {
          const worth = Math.max(worthIn(entry, word), ...others.map((other) => worthIn(entry, other) / 2));
          if (worth === 0) return [];
          rank += worth;
        }
        return [{ what: entry.what, rank }];
      });
      return found.sort((a, b) => b.rank - a.rank).map(({ what }) => what);
    },
  };
}

function othersOf(word: string, alike: Alike): readonly string[] {
  const isOf = (one: string) => word.startsWith(one) || (word.length >= ENOUGH && one.startsWith(word));
  return alike.filter((group) => group.some(isOf)).flat();
}

function worthIn(
  { name, about }: { readonly name: ReadonlySet<string>; readonly about: ReadonlySet<string> },
  word: string,
): number {
  const within = (words: ReadonlySet<string>, [whole, beginning]: readonly [number, number]) => {
    if (words.has(word)) return whole;
    for (const one of words) if (one.startsWith(word)) return beginning;
    return 0;
  };
  return Math.max(within(name, WORTH.name), within(about, WORTH.about));
}
