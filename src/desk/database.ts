import { type Backing, type Hands, inMemory, KEPT, type Shelf } from './backing.ts';

const NAME = 'underlawn';
/**
 * Each takes the store from one version to the next, and is never changed once it has shipped. A page does not open the
 * store of a newer one: so whatever an older page would misread or write over wants a step here.
 */
const STEPS: readonly ((db: IDBDatabase, tx: IDBTransaction) => void)[] = [
  (db) => {
    for (const shelf of ['settings', 'progress', 'lines']) db.createObjectStore(shelf);
    // `unread`: what could not be read any more or gave way to a later one, set aside rather than thrown away.
    for (const shelf of ['finished', 'unread']) db.createObjectStore(shelf, { autoIncrement: true });
  },
  (db) => void db.createObjectStore('drills', { autoIncrement: true }),
  (db) => void db.createObjectStore('round'),
  (db) => void db.createObjectStore('brought'),
  (db, tx) => {
    db.createObjectStore('holders');
    const round = tx.objectStore('round');
    const kept = round.get('round');
    kept.onsuccess = () => {
      if (kept.result !== undefined) round.put({ version: 1, savedAt: 0, kept: kept.result }, 'round');
    };
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
    return connect().then(
      (db) => {
        db.onversionchange = () => {
          now = letGo(db);
        };
        // Taken away by the browser: what is kept from now on begins a new one.
        db.onclose = () => {
          now = open();
        };
        return over(db);
      },
      (error: unknown) => {
        tell(whyNot((error as Error).name));
        return inMemory();
      },
    );
  }
  /** Another tab waits for this one to close the store: what is there is read first, so that the screens do not go empty. */
  async function letGo(db: IDBDatabase): Promise<Backing> {
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

function connect(): Promise<IDBDatabase> {
  return new Promise((opened, failed) => {
    const asked = indexedDB.open(NAME, VERSION);
    let late = false;
    const limit = (ms: number) =>
      setTimeout(() => {
        late = true;
        failed(new DOMException('the store does not open', 'TimeoutError'));
      }, ms);
    let timer = limit(PATIENCE_ms.silent);
    asked.onblocked = () => {
      clearTimeout(timer);
      timer = limit(PATIENCE_ms.blocked);
    };
    asked.onupgradeneeded = ({ oldVersion }) => {
      const tx = asked.transaction;
      if (tx !== null) for (const step of STEPS.slice(oldVersion)) step(asked.result, tx);
    };
    asked.onerror = () => {
      clearTimeout(timer);
      failed(asked.error);
    };
    asked.onsuccess = () => {
      clearTimeout(timer);
      if (late) asked.result.close();
      else opened(asked.result);
    };
  });
}

function over(db: IDBDatabase): Backing {
  return {
    run: (shelves, mode, work) =>
      new Promise((written, failed) => {
        const tx = db.transaction([...shelves], mode);
        const at = (shelf: Shelf) => tx.objectStore(shelf);
        const hands: Hands = {
          get: (shelf, key) => done(at(shelf).get(key)),
          async all(shelf) {
            const [keys, values] = await Promise.all([done(at(shelf).getAllKeys()), done(at(shelf).getAll())]);
            return keys.map((key, i) => ({ key: key as string | number, value: values[i] }));
          },
          put: async (shelf, value, key) => (await done(at(shelf).put(value, key))) as string | number,
          drop: (shelf, key) => done(at(shelf).delete(key)),
        };
        let why: unknown;
        const worked = work(hands).catch((error: unknown) => {
          why = error;
          // Where it has ended by itself there is nothing to abort.
          if (tx.error === null) tx.abort();
        });
        tx.onabort = () => failed(tx.error ?? why);
        tx.oncomplete = () => void worked.then((value) => written(value as never));
      }),
    shared: async () => true,
  };
}

function done<T>(asked: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
  });
}
