/** What of the person's was left half way, read from the browser's database without opening it for anything else. */

/** As `desk/database.ts` calls them; these names stay. */
const NAME = 'underlawn';
const CALLS = 'progress';
const ROUND = 'round';
const PATIENCE_ms = 3000;

/** Ids of the calls in progress, and `round` where there is one; undefined where the database does not tell. */
export async function leftHalfWay(): Promise<readonly string[] | undefined> {
  try {
    // Opening one that is not there would make it.
    if (indexedDB.databases && !(await indexedDB.databases()).some(({ name }) => name === NAME)) return [];
    const db = await opened();
    try {
      const shelves = [CALLS, ROUND].filter((shelf) => db.objectStoreNames.contains(shelf));
      const keys = await Promise.all(shelves.map((shelf) => keysOf(db, shelf)));
      return keys.flat().map(String);
    } finally {
      db.close();
    }
  } catch {
    return undefined;
  }
}

function opened(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open(NAME);
    const late = setTimeout(() => reject(new Error('the store does not open')), PATIENCE_ms);
    // It was not there after all.
    opening.onupgradeneeded = () => opening.transaction?.abort();
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      clearTimeout(late);
      opening.result.onversionchange = () => opening.result.close();
      resolve(opening.result);
    };
  });
}

function keysOf(db: IDBDatabase, shelf: string): Promise<IDBValidKey[]> {
  return new Promise((resolve, reject) => {
    const asked = db.transaction(shelf).objectStore(shelf).getAllKeys();
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
  });
}
