import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Shape } from './shape.ts';
import { Brought, DrillCount, Finished, Line, Progress, Settings } from './stored.ts';

interface Shelves extends DBSchema {
  settings: { key: string; value: unknown };
  progress: { key: string; value: unknown };
  finished: { key: number; value: unknown };
  lines: { key: string; value: unknown };
  drills: { key: number; value: unknown };
  round: { key: string; value: unknown };
  brought: { key: string; value: unknown };
  /** What could not be read any more, set aside rather than thrown away. */
  unread: { key: number; value: unknown };
}
type Shelf = 'settings' | 'progress' | 'finished' | 'lines' | 'drills' | 'round' | 'brought';

/** What went wrong with the store, for one visible line each. */
export type StoreTrouble = 'memory' | 'unread' | 'full';

export interface FinishedEntry extends Finished {
  readonly key: number;
}

/** Everything the browser keeps between visits. */
export interface Store {
  /** None on a first visit. */
  settings(): Promise<Settings | undefined>;
  putSettings(settings: Settings): Promise<void>;
  progress(): Promise<Progress[]>;
  progressOf(callId: string): Promise<Progress | undefined>;
  putProgress(progress: Progress): Promise<void>;
  dropProgress(callId: string): Promise<void>;
  finished(): Promise<FinishedEntry[]>;
  finishedBy(key: number): Promise<FinishedEntry | undefined>;
  addFinished(finished: Finished): Promise<number>;
  /** Keeps what was worked out of a finished call beside it. */
  putReview(key: number, review: unknown): Promise<void>;
  lines(): Promise<Line[]>;
  putLine(line: Line): Promise<void>;
  /** Oldest first. */
  drills(): Promise<DrillCount[]>;
  addDrill(count: DrillCount): Promise<void>;
  /** The round between two doors, as the engine's worker gave it out and will check it. */
  round(): Promise<unknown>;
  putRound(kept: unknown): Promise<void>;
  dropRound(): Promise<void>;
  /** Calls that came by link or file, by their ids. */
  brought(): Promise<Brought[]>;
  broughtBy(callId: string): Promise<Brought | undefined>;
  putBrought(brought: Brought): Promise<void>;
  dropBrought(callId: string): Promise<void>;
}

/** Where the values lie: the browser's database, or memory where there is none. */
interface Backing {
  all(shelf: Shelf): Promise<{ key: string | number; value: unknown }[]>;
  get(shelf: Shelf, key: string | number): Promise<unknown>;
  put(shelf: Shelf, value: unknown, key?: string | number): Promise<string | number>;
  drop(shelf: Shelf, key: string | number): Promise<void>;
  setAside(shelf: Shelf, key: string | number, value: unknown): Promise<void>;
}

const NAME = 'underlawn';
/** 2 brought the shelf of the drills, 3 that of the round, 4 that of calls from elsewhere. A shelf once there is never made anew. */
const VERSION = 4;

/** Opens the store; `trouble` is told, at most once for each kind, what does not work and why it does not matter. */
export async function openStore(trouble: (what: StoreTrouble) => void): Promise<Store> {
  const told = new Set<StoreTrouble>();
  const tell = (what: StoreTrouble) => {
    if (!told.has(what)) trouble(what);
    told.add(what);
  };
  let backing: Backing;
  try {
    backing = inDatabase(await openDatabase());
  } catch {
    tell('memory');
    backing = inMemory();
  }
  return overBacking(backing, tell);
}

function openDatabase(): Promise<IDBPDatabase<Shelves>> {
  return new Promise((opened, failed) => {
    openDB<Shelves>(NAME, VERSION, {
      upgrade(db, from) {
        if (from < 1) {
          db.createObjectStore('settings');
          db.createObjectStore('progress');
          db.createObjectStore('finished', { autoIncrement: true });
          db.createObjectStore('lines');
          db.createObjectStore('unread', { autoIncrement: true });
        }
        if (from < 2) db.createObjectStore('drills', { autoIncrement: true });
        if (from < 3) db.createObjectStore('round');
        if (from < 4) db.createObjectStore('brought');
      },
      // Another tab holds an older version open: this page goes on without it rather than wait for that tab to close.
      blocked: () => failed(new Error('an older version is open')),
      // And this tab does not stand in the way of a newer one.
      blocking: (_from, _to, event) => (event.target as IDBDatabase).close(),
    }).then(opened, failed);
  });
}

function inDatabase(db: IDBPDatabase<Shelves>): Backing {
  return {
    async all(shelf) {
      const tx = db.transaction(shelf);
      const [keys, values] = await Promise.all([tx.store.getAllKeys(), tx.store.getAll()]);
      return keys.map((key, i) => ({ key, value: values[i] }));
    },
    get: (shelf, key) => db.get(shelf, key as never),
    put: (shelf, value, key) => db.put(shelf, value, key as never),
    drop: (shelf, key) => db.delete(shelf, key as never),
    async setAside(shelf, key, value) {
      const tx = db.transaction([shelf, 'unread'], 'readwrite');
      await Promise.all([
        tx.objectStore('unread').put?.({ shelf, key, value }),
        tx.objectStore(shelf).delete?.(key as never),
        tx.done,
      ]);
    },
  };
}

function inMemory(): Backing {
  const shelves = new Map<Shelf, Map<string | number, unknown>>();
  const of = (shelf: Shelf) => {
    const found = shelves.get(shelf) ?? new Map<string | number, unknown>();
    shelves.set(shelf, found);
    return found;
  };
  let last = 0;
  return {
    all: async (shelf) => [...of(shelf)].map(([key, value]) => ({ key, value })),
    get: async (shelf, key) => of(shelf).get(key),
    async put(shelf, value, key) {
      const at = key ?? ++last;
      of(shelf).set(at, value);
      return at;
    },
    async drop(shelf, key) {
      of(shelf).delete(key);
    },
    async setAside(shelf, key) {
      of(shelf).delete(key);
    },
  };
}

function overBacking(backing: Backing, tell: (what: StoreTrouble) => void): Store {
  async function read<T>(shelf: Shelf, shape: Shape<T>): Promise<[string | number, T][]> {
    const good: [string | number, T][] = [];
    for (const { key, value } of await backing.all(shelf)) {
      const checked = await check(shelf, shape, key, value);
      if (checked !== undefined) good.push([key, checked]);
    }
    return good;
  }
  async function check<T>(shelf: Shelf, shape: Shape<T>, key: string | number, value: unknown): Promise<T | undefined> {
    if (value === undefined) return undefined;
    if (shape(value)) return value;
    tell('unread');
    await backing.setAside(shelf, key, value);
    return undefined;
  }
  async function put(shelf: Shelf, value: unknown, key?: string | number): Promise<number> {
    try {
      return Number(await backing.put(shelf, value, key));
    } catch {
      tell('full');
      return Number.NaN;
    }
  }
  const one = async <T>(shelf: Shelf, shape: Shape<T>, key: string | number) =>
    check(shelf, shape, key, await backing.get(shelf, key));

  return {
    settings: () => one('settings', Settings, 'settings'),
    putSettings: async (settings) => void (await put('settings', settings, 'settings')),
    progress: async () => (await read('progress', Progress)).map(([, value]) => value),
    progressOf: (callId) => one('progress', Progress, callId),
    putProgress: async (progress) => void (await put('progress', progress, progress.callId)),
    dropProgress: (callId) => backing.drop('progress', callId),
    finished: async () => (await read('finished', Finished)).map(([key, value]) => ({ ...value, key: Number(key) })),
    async finishedBy(key) {
      const found = await one('finished', Finished, key);
      return found === undefined ? undefined : { ...found, key };
    },
    addFinished: (finished) => put('finished', finished),
    async putReview(key, review) {
      const found = await one('finished', Finished, key);
      if (found !== undefined) await put('finished', { ...found, review }, key);
    },
    lines: async () => (await read('lines', Line)).map(([, value]) => value),
    putLine: async (line) => void (await put('lines', line, line.family ?? line.callId)),
    drills: async () => (await read('drills', DrillCount)).map(([, value]) => value),
    addDrill: async (count) => void (await put('drills', count)),
    round: () => backing.get('round', 'round'),
    putRound: async (kept) => void (await put('round', kept, 'round')),
    dropRound: () => backing.drop('round', 'round'),
    brought: async () => (await read('brought', Brought)).map(([, value]) => value),
    broughtBy: (callId) => one('brought', Brought, callId),
    putBrought: async (brought) => void (await put('brought', brought, brought.card.id)),
    dropBrought: (callId) => backing.drop('brought', callId),
  };
}
