/**
 * Which version of the page is shown. Each version has a cache of its own; a note beside them says which one new windows
 * get. A browser starts a new service worker once the last window is closed, whatever lies half done; so the worker that
 * runs and the version that is shown are two things: a version is shown when the person takes it up, or by itself when
 * nothing is lost by it.
 */
import type { Listing } from './listing.ts';

/** What the versions need of a service worker. */
export interface House {
  readonly caches: CacheStorage;
  /** Path of the folder that the page lies in: other folders of the host have caches beside these. */
  readonly scope: string;
  /** Ids of all windows and workers of the page that are open. */
  readonly open: () => Promise<readonly string[]>;
  /** Whether another version is being fetched or waits: its cache is not ours to put away. */
  readonly another: () => boolean;
  /** Ids of the calls that were left half way, and `round`; undefined where that cannot be told. */
  readonly halfWay: () => Promise<readonly string[] | undefined>;
}

/** The note that says which version is shown. */
interface Shown extends Pick<Listing, 'version' | 'grounds' | 'calls'> {
  /** Windows and workers that were open when it came to be shown: they may be of a version before it. */
  readonly elders: readonly string[];
}

export interface Versions {
  /** Name of this version's cache. */
  readonly own: string;
  /** Names of the other versions' caches. */
  others(): Promise<readonly string[]>;
  /** Name of the cache of the version that is shown; undefined before there is one. */
  shown(): Promise<string | undefined>;
  /** Has this version shown from now on. */
  take(): Promise<void>;
  /** Has this version shown if none is, or if nothing that was left half way is lost by it. */
  takeIfHarmless(): Promise<void>;
  /** What was left half way and this version could not go on with. */
  ends(): Promise<readonly string[]>;
  /** Puts away versions that no window uses any more. */
  tidy(): Promise<void>;
}

export function createVersions(listing: Listing, { caches, scope, open, another, halfWay }: House): Versions {
  const family = `underlawn ${scope} `;
  const nameOf = (version: string) => family + version;
  const own = nameOf(listing.version);
  const notes = family.trimEnd();
  const NOTE = '/shown';

  async function note(): Promise<Shown | undefined> {
    if (!(await caches.has(notes))) return undefined;
    const found = await (await caches.open(notes)).match(NOTE);
    const shown = found && ((await found.json()) as Shown);
    // Without its files a version cannot be shown.
    return shown && (await caches.has(nameOf(shown.version))) ? shown : undefined;
  }
  async function write(elders: readonly string[]): Promise<void> {
    const { version, grounds, calls } = listing;
    const shown: Shown = { version, grounds, calls, elders };
    await (await caches.open(notes)).put(NOTE, new Response(JSON.stringify(shown)));
  }
  const all = async () => (await caches.keys()).filter((name) => name.startsWith(family));

  /** A call that was brought lies in the browser with its file: it stands on the grounds alone. */
  async function endsOf(shown: Shown): Promise<readonly string[]> {
    const goesOn = (id: string) =>
      shown.grounds === listing.grounds && (!(id in shown.calls) || shown.calls[id] === listing.calls[id]);
    if (shown.grounds === listing.grounds && Object.keys(shown.calls).every(goesOn)) return [];
    return (await halfWay())?.filter((id) => !goesOn(id)) ?? ['unknown'];
  }

  const versions: Versions = {
    own,
    others: async () => (await all()).filter((name) => name !== own),
    async shown() {
      const shown = await note();
      return shown && nameOf(shown.version);
    },
    async take() {
      if ((await note())?.version !== listing.version) await write(await open());
    },
    async takeIfHarmless() {
      const shown = await note();
      if (shown === undefined || (shown.version !== listing.version && (await endsOf(shown)).length === 0)) {
        await write(await open());
      }
    },
    async ends() {
      const shown = await note();
      return shown === undefined || shown.version === listing.version ? [] : endsOf(shown);
    },
    async tidy() {
      const shown = await note();
      if (shown === undefined || another()) return;
      const there = new Set(await open());
      if (shown.elders.some((id) => there.has(id))) return;
      const kept = [own, nameOf(shown.version)];
      await Promise.all((await all()).filter((name) => !kept.includes(name)).map((name) => caches.delete(name)));
    },
  };
  return versions;
}
