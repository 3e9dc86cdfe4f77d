/** Where the values of the store lie: the browser's database (`database.ts`), or memory where there is none. */

/** What is kept for the person, and goes into a copy. */
export const KEPT = [
  'settings',
  'progress',
  'finished',
  'lines',
  'drills',
  'round',
  'brought',
  'drafts',
  'moments',
  'cards',
  'exam',
  'unread',
] as const;
export type Kept = (typeof KEPT)[number];
/** `holders`: which tab wrote last to a call or to the round. */
export type Shelf = Kept | 'holders';
export type Key = string | number;

export interface Entry {
  readonly key: Key;
  readonly value: unknown;
}

/** What can be done within one transaction. */
export interface Hands {
  get(shelf: Shelf, key: Key): Promise<unknown>;
  all(shelf: Shelf): Promise<readonly Entry[]>;
  /** Without a key the shelf counts on. */
  put(shelf: Shelf, value: unknown, key?: Key): Promise<Key>;
  drop(shelf: Shelf, key: Key): Promise<unknown>;
}

export interface Backing {
  /** Does all of some work or none of it, with nobody else at these shelves; once it resolves, it is written. */
  run<T>(shelves: readonly Shelf[], mode: IDBTransactionMode, work: (at: Hands) => Promise<T>): Promise<T>;
  /** Whether other tabs see the same values. */
  shared(): Promise<boolean>;
}

export function inMemory(seed: readonly (readonly [Shelf, readonly Entry[]])[] = []): Backing {
  const shelves = new Map(seed.map(([shelf, all]) => [shelf, new Map(all.map(({ key, value }) => [key, value]))]));
  const of = (shelf: Shelf) => {
    const found = shelves.get(shelf) ?? new Map<Key, unknown>();
    shelves.set(shelf, found);
    return found;
  };
  let last = Math.max(
    0,
    ...[...shelves.values()]
      .flatMap((one) => [...one.keys()])
      .filter(Number.isInteger)
      .map(Number),
  );
  let line: Promise<unknown> = Promise.resolve();
  const hands: Hands = {
    get: async (shelf, key) => of(shelf).get(key),
    all: async (shelf) => [...of(shelf)].map(([key, value]) => ({ key, value })),
    async put(shelf, value, key = ++last) {
      of(shelf).set(key, value);
      return key;
    },
    drop: async (shelf, key) => of(shelf).delete(key),
  };
  return {
    run(_shelves, _mode, work) {
      const done = line.then(() => work(hands));
      line = done.catch(() => {});
      return done;
    },
    shared: async () => false,
  };
}
