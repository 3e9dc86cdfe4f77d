/** Fetches a version of the page into a cache of its own. */
import type { WhyNot } from './line.ts';
import { digestOf, isNamedByContent, type ListedFile, type Listing, sizeOf } from './listing.ts';

/** What keeping needs of a service worker. */
export interface Surroundings {
  readonly caches: CacheStorage;
  readonly fetch: typeof fetch;
  /** Address of the folder that the page lies in, with its closing slash. */
  readonly base: string;
}

/** Two at a time: whatever the page itself wants meanwhile still finds connections free. */
const AT_ONCE = 2;

/** The version could not be kept whole. */
export class NotKept extends Error {
  readonly why: WhyNot;
  constructor(why: WhyNot) {
    super(why);
    this.why = why;
  }
}

/**
 * Has the cache `name` hold every listed file. What it holds already stays; what an older cache holds is taken from there;
 * only the rest is fetched. Each file must be the one that was built. `onBytes` hears how far it is. Throws `NotKept`:
 * what was kept so far stays for the next try, unless there is no room, for records need it more.
 */
export async function keepVersion(
  { caches, fetch, base }: Surroundings,
  listing: Listing,
  name: string,
  older: readonly string[],
  onBytes: (done: number, of: number) => void,
): Promise<void> {
  const of = sizeOf(listing);
  let done = 0;
  try {
    const cache = await caches.open(name);
    const others = await Promise.all(older.map((one) => caches.open(one)));
    const keepOne = async (file: ListedFile) => {
      const address = base + file.path;
      if ((await cache.match(address)) === undefined) {
        await cache.put(address, (await held(others, address, file)) ?? (await fetched(fetch, address, file)));
      }
      done += file.bytes;
      onBytes(done, of);
    };
    const left = [...listing.files];
    const keepOn = async () => {
      for (let file = left.shift(); file !== undefined; file = left.shift()) await keepOne(file);
    };
    const ends = await Promise.allSettled(
      Array.from({ length: AT_ONCE }, () => keepOn().finally(() => left.splice(0))),
    );
    const broken = ends.find((end) => end.status === 'rejected');
    if (broken !== undefined) throw broken.reason;
  } catch (error) {
    const why = whyNot(error);
    if (why === 'full') await giveBack(caches, name).catch(() => false);
    throw new NotKept(why);
  }
}

/** One by one first: a cache that is deleted whole keeps its room for as long as anything still holds it open. */
async function giveBack(caches: CacheStorage, name: string): Promise<void> {
  try {
    const cache = await caches.open(name);
    for (const key of await cache.keys()) await cache.delete(key);
  } finally {
    await caches.delete(name);
  }
}

/** Whether a cache holds every listed file. */
export async function isWhole(caches: CacheStorage, listing: Listing, name: string): Promise<boolean> {
  if (!(await caches.has(name))) return false;
  return (await (await caches.open(name)).keys()).length >= listing.files.length;
}

/** The file out of an older version's cache, where it is the same. */
async function held(others: readonly Cache[], address: string, file: ListedFile): Promise<Response | undefined> {
  for (const cache of others) {
    const found = await cache.match(address);
    const same = found && (await checked(found, file));
    if (same) return same;
  }
  return undefined;
}

/** What the browser fetched for the page is not fetched again, unless it turns out to be something else. */
async function fetched(fetch: Surroundings['fetch'], address: string, file: ListedFile): Promise<Response> {
  const ways: readonly RequestCache[] = isNamedByContent(file.path)
    ? ['force-cache', 'reload']
    : ['no-cache', 'reload'];
  for (const cache of ways) {
    const response = await fetch(address, { cache, priority: 'low', credentials: 'same-origin' }).catch(() => {
      throw new NotKept('network');
    });
    const same = response.ok ? await checked(response, file) : undefined;
    if (same) return same;
    if (response.status >= 500) throw new NotKept('network');
  }
  throw new NotKept('changed');
}

/** The file with the headers it came with, but for those that tell how it travelled; undefined if it is another. */
async function checked(response: Response, file: ListedFile): Promise<Response | undefined> {
  const bytes = await response.arrayBuffer();
  if (bytes.byteLength !== file.bytes || (await digestOf(bytes)) !== file.digest) return undefined;
  const headers = new Headers(response.headers);
  for (const travelled of ['vary', 'content-encoding', 'content-length']) headers.delete(travelled);
  return new Response(bytes, { headers });
}

function whyNot(error: unknown): WhyNot {
  if (error instanceof NotKept) return error.why;
  const name = (error as Error | undefined)?.name;
  return name === 'QuotaExceededError' ? 'full' : name === 'TypeError' ? 'network' : 'denied';
}
