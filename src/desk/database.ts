import { type IDBPDatabase, type IDBPObjectStore, type IDBPTransaction, openDB } from 'idb';
import { type Backing, type Hands, inMemory, KEPT, type Key, type Shelf } from './backing.ts';

type Database = IDBPDatabase<unknown>;
type Upgrade = IDBPTransaction<unknown, string[], 'versionchange'>;

const NAME = 'underlawn';
/**
 * Each takes the store from one version to the next, and is never changed once it has shipped. A page does not open the
 * store of a newer one: so whatever an older page would misread or write over wants a step here.
 */
const STEPS: readonly ((db: Database, tx: Upgrade) => unknown)[] = [
  (db) => {
    for (const shelf of ['settings', 'progress', 'lines']) db.createObjectStore(shelf);
    // `unread`: what could not be read any more or gave way to a later one, set aside rather than thrown away.
    for (const shelf of ['finished', 'unread']) db.createObjectStore(shelf, { autoIncrement: true });
  },
  (db) => db.createObjectStore('drills', { autoIncrement: true }),
  (db) => db.createObjectStore('round'),
  (db) => db.createObjectStore('brought'),
  async (db, tx) => {
    db.createObjectStore('holders');
    const round = tx.objectStore('round');
    const kept: unknown = await round.get('round');
    if (kept !== undefined) await round.put({ version: 1, savedAt: 0, kept }, 'round');
  },
  (db) => db.createObjectStore('drafts', { autoIncrement: true }),
  (db) => db.createObjectStore('moments', { autoIncrement: true }),
  (db) => {
    for (const shelf of ['cards', 'exam']) db.createObjectStore(shelf);
  },
];
const VERSION = STEPS.length;

/** Older tabs let go at once; one that does not, or a store that never answers, is not waited for longer. */
const PATIENCE_ms = { blocked: 3000, silent: 10_000 };

/** Why the page goes on in memory: no store, one of a newer page, one that does not open, or one that another tab needs. */
export type WithoutStore = 'memory' | 'newer' | 'shut' | 'left';

/** The browser's database; where it cannot be had any more, memory, and `tell` hears why. */
export function inDatabase(tell: (why: WithoutStore) => void): Backing {
  let now = open();
  function open(): Promise<Backing> {
    return connect({
      letGo(db) {
        now = letGo(db);
      },
      // Taken away by the browser: what is kept from now on begins a new one.
      takenAway() {
        now = open();
      },
    }).then(over, (error: unknown) => {
      tell(whyNot((error as Error).name));
      return inMemory();
    });
  }
  /** Another tab waits for this one to close the store: what is there is read first, so that the screens do not go empty. */
  async function letGo(db: Database): Promise<Backing> {
    tell('left');
    const seed = over(db).run(KEPT, 'readonly', (at) =>
      Promise.all(KEPT.map(async (shelf) => [shelf, await at.all(shelf)] as const)),
    );
    db.close();
    return inMemory(await seed.catch(() => []));
  }
  return {
    run: async (shelves, mode, work) => (await now).run(shelves, mode, work),
    shared: async () => (await now).shared(),
  };
}

function whyNot(name: string): WithoutStore {
  if (name === 'VersionError') return 'newer';
  return ['AbortError', 'QuotaExceededError', 'TimeoutError', 'UnknownError'].includes(name) ? 'shut' : 'memory';
}

interface Ends {
  readonly letGo: (db: Database) => void;
  readonly takenAway: () => void;
}

function connect({ letGo, takenAway }: Ends): Promise<Database> {
  return new Promise((opened, failed) => {
    let late = false;
    const limit = (ms: number) =>
      setTimeout(() => {
        late = true;
        failed(new DOMException('the store does not open', 'TimeoutError'));
      }, ms);
    let timer = limit(PATIENCE_ms.silent);
    const opening = openDB(NAME, VERSION, {
      async upgrade(db, oldVersion, _newVersion, tx) {
        for (const step of STEPS.slice(oldVersion)) await step(db, tx);
      },
      blocked() {
        clearTimeout(timer);
        timer = limit(PATIENCE_ms.blocked);
      },
      blocking: () => void opening.then(letGo),
      terminated: takenAway,
    });
    opening.then(
      (db) => {
        clearTimeout(timer);
        if (late) db.close();
        else opened(db);
      },
      (error: unknown) => {
        clearTimeout(timer);
        failed(error);
      },
    );
  });
}

function over(db: Database): Backing {
  return {
    async run(shelves, mode, work) {
      const tx = db.transaction([...shelves], mode);
      const ended = tx.done.then(
        () => null,
        (error: unknown) => ({ error }),
      );
      let value: Awaited<ReturnType<typeof work>>;
      try {
        value = await work(handsIn(tx));
      } catch (error) {
        // Where it has ended by itself there is nothing to abort.
        if (tx.error === null) tx.abort();
        await ended;
        throw tx.error ?? error;
      }
      const failed = await ended;
      if (failed !== null) throw failed.error;
      return value;
    },
    shared: async () => true,
  };
}

/** What is done on a shelf in a transaction; one that only reads has no way to put or to drop. */
function handsIn(tx: IDBPTransaction<unknown, Shelf[], IDBTransactionMode>): Hands {
  const readable = (shelf: Shelf) => tx.objectStore(shelf);
  const writable = (shelf: Shelf) => readable(shelf) as IDBPObjectStore<unknown, Shelf[], Shelf, 'readwrite'>;
  return {
    get: (shelf, key) => readable(shelf).get(key),
    async all(shelf) {
      const [keys, values] = await Promise.all([readable(shelf).getAllKeys(), readable(shelf).getAll()]);
      return keys.map((key, i) => ({ key: key as Key, value: values[i] }));
    },
    put: async (shelf, value, key) => (await writable(shelf).put(value, key)) as Key,
    drop: (shelf, key) => writable(shelf).delete(key),
  };
}
