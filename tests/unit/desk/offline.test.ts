import { beforeEach, describe, expect, it } from 'vitest';
import { askedFor } from '../../../src/desk/offline/asked-for.ts';
import { isWhole, keepVersion, type NotKept } from '../../../src/desk/offline/keeping.ts';
import { digestOf, type Listing } from '../../../src/desk/offline/listing.ts';
import { createVersions } from '../../../src/desk/offline/versions.ts';

const BASE = 'https://host.example/place/';

/** The browser's cache storage as far as it is used, with room for so many bytes. What is deleted whole keeps its room a while. */
function cacheStorage(room = Number.POSITIVE_INFINITY): CacheStorage {
  const all = new Map<string, Map<string, ArrayBuffer>>();
  const held: Map<string, ArrayBuffer>[] = [];
  const taken = () =>
    [...all.values(), ...held].flatMap((one) => [...one.values()]).reduce((sum, it) => sum + it.byteLength, 0);
  const open = (name: string) => {
    const entries = all.get(name) ?? new Map<string, ArrayBuffer>();
    all.set(name, entries);
    return {
      async match(key: string) {
        const body = entries.get(key);
        return body && new Response(body);
      },
      async put(key: string, response: Response) {
        const body = await response.arrayBuffer();
        if (taken() + body.byteLength > room) throw new DOMException('full', 'QuotaExceededError');
        entries.set(key, body);
      },
      keys: async () => [...entries.keys()],
      delete: async (key: string) => entries.delete(key),
    };
  };
  return {
    open: async (name: string) => open(name),
    has: async (name: string) => all.has(name),
    keys: async () => [...all.keys()],
    delete: async (name: string) => {
      held.push(all.get(name) ?? new Map());
      return all.delete(name);
    },
  } as unknown as CacheStorage;
}

type Texts = Readonly<Record<string, string>>;

async function listingOf(version: string, texts: Texts, more: Partial<Listing> = {}): Promise<Listing> {
  const files = await Promise.all(
    Object.entries(texts).map(async ([path, text]) => {
      const bytes = new TextEncoder().encode(text);
      return { path, bytes: bytes.length, digest: await digestOf(bytes) };
    }),
  );
  return { version, grounds: 'g', calls: { light: '1' }, files, ...more };
}

const OLD: Texts = { 'index.html': 'old page', 'assets/a-1.js': 'a', 'assets/b-1.js': 'b', 'icon.png': 'icon' };
const NEW: Texts = { 'index.html': 'new page', 'assets/a-1.js': 'a', 'assets/b-2.js': 'bb', 'icon.png': 'icon' };

describe('keeping a version', () => {
  let caches: CacheStorage;
  let asked: string[];
  beforeEach(() => {
    caches = cacheStorage();
    asked = [];
  });
  const hostOf = (texts: Texts): typeof fetch =>
    (async (address: string) => {
      const path = address.slice(BASE.length);
      asked.push(path);
      const text = texts[path];
      if (text === 'GONE') throw new TypeError('no network');
      return new Response(text ?? 'no such file', {
        status: text === undefined ? 404 : 200,
        headers: { vary: 'Origin' },
      });
    }) as unknown as typeof fetch;
  const keep = (
    listing: Listing,
    texts: Texts,
    older: readonly string[] = [],
    onBytes = (_done: number, _of: number) => {},
  ) => keepVersion({ caches, fetch: hostOf(texts), base: BASE }, listing, listing.version, older, onBytes);
  const why = (kept: Promise<void>) =>
    kept.then(
      () => 'kept',
      (error: NotKept) => error.why,
    );

  it('fetches every file, and tells how far it is to the last byte', async () => {
    const told: string[] = [];
    const listing = await listingOf('v1', OLD);
    await keep(listing, OLD, [], (done, of) => told.push(`${done}/${of}`));
    expect(asked.sort()).toEqual(Object.keys(OLD).sort());
    expect(told.at(-1)).toBe('14/14');
    expect(await isWhole(caches, listing, 'v1')).toBe(true);
    expect(await isWhole(caches, listing, 'v2')).toBe(false);
  });

  it('takes from an older version what is the same, and fetches only the rest', async () => {
    await keep(await listingOf('v1', OLD), OLD);
    asked = [];
    await keep(await listingOf('v2', NEW), NEW, ['v1']);
    expect(asked.sort()).toEqual(['assets/b-2.js', 'index.html']);
    expect(await (await (await caches.open('v2')).match(`${BASE}icon.png`))?.text()).toBe('icon');
    expect(await (await (await caches.open('v1')).match(`${BASE}index.html`))?.text()).toBe('old page');
  });

  it('goes on where it broke off', async () => {
    const listing = await listingOf('v1', OLD);
    expect(await why(keep(listing, { ...OLD, 'assets/b-1.js': 'GONE' }))).toBe('network');
    const before = asked.filter((path) => path !== 'assets/b-1.js');
    asked = [];
    await keep(listing, OLD);
    expect(asked).toContain('assets/b-1.js');
    expect(asked.filter((path) => before.includes(path))).toEqual([]);
  });

  it('keeps nothing but the files that were built: not an error page in place of one, nor a newer one of the same name', async () => {
    const listing = await listingOf('v1', OLD);
    const { 'icon.png': _, ...without } = OLD;
    const served = [{ ...OLD, 'assets/a-1.js': '<!doctype html>' }, { ...OLD, 'index.html': 'new page' }, without];
    for (const texts of served) {
      caches = cacheStorage();
      expect(await why(keep(listing, texts))).toBe('changed');
    }
  });

  it('gives all its room back where there is not enough, for records need it more', async () => {
    caches = cacheStorage(9);
    expect(await why(keep(await listingOf('v1', OLD), OLD))).toBe('full');
    expect(await caches.keys()).toEqual([]);
    const another = await caches.open('another');
    await another.put('nine', new Response('123456789'));
    expect(await another.match('nine')).toBeDefined();
  });
});

describe('which version is shown', () => {
  let caches: CacheStorage;
  let open: string[];
  let left: readonly string[] | undefined;
  let another: boolean;
  beforeEach(() => {
    caches = cacheStorage();
    open = [];
    left = [];
    another = false;
  });
  async function versionOf(version: string, more: Partial<Listing> = {}, scope = '/place/') {
    const versions = createVersions(await listingOf(version, {}, more), {
      caches,
      scope,
      open: async () => open,
      another: () => another,
      halfWay: async () => left,
    });
    await caches.open(versions.own);
    return versions;
  }

  it('is the first one there is', async () => {
    const first = await versionOf('1');
    expect(await first.shown()).toBeUndefined();
    await first.takeIfHarmless();
    expect(await first.shown()).toBe(first.own);
  });

  it.each([
    ['nothing was left half way', { grounds: 'other' }, [], []],
    ['the call that was left is the same on the same grounds', {}, ['light'], []],
    ['another call is otherwise', { calls: { light: '1', storm: '2' } }, ['light'], []],
    ['the call that was left is otherwise', { calls: { light: '2' } }, ['light'], ['light']],
    ['the call that was left does not ship any more', { calls: {} }, ['light'], ['light']],
    ['a call that was brought stands on the same grounds', { calls: { light: '2' } }, ['brought'], []],
    ['the engine is another', { grounds: 'other' }, ['brought', 'round'], ['brought', 'round']],
    ['nobody can tell what was left', { grounds: 'other' }, undefined, ['unknown']],
  ] as const)('changes by itself unless something is lost by it: %s', async (_, more, halfWay, ends) => {
    const first = await versionOf('1');
    await first.takeIfHarmless();
    left = halfWay;
    const second = await versionOf('2', more);
    expect(await second.ends()).toEqual(ends);
    await second.takeIfHarmless();
    expect(await second.shown()).toBe(ends.length === 0 ? second.own : first.own);
    // The person decides.
    await second.take();
    expect(await second.shown()).toBe(second.own);
    expect(await second.ends()).toEqual([]);
  });

  it('goes away once no window is left that may use it, and not while another comes', async () => {
    const first = await versionOf('1');
    await first.takeIfHarmless();
    open = ['tab in a call'];
    const second = await versionOf('2');
    await second.take();
    await second.tidy();
    expect(await second.others()).toEqual([first.own]);
    open = ['a later tab'];
    another = true;
    await second.tidy();
    expect(await second.others()).toEqual([first.own]);
    another = false;
    await second.tidy();
    expect(await second.others()).toEqual([]);
    expect(await second.shown()).toBe(second.own);
  });

  it('is not put away while it is the one that is shown, though a newer one runs', async () => {
    const first = await versionOf('1');
    await first.takeIfHarmless();
    left = ['round'];
    const second = await versionOf('2', { grounds: 'other' });
    await second.takeIfHarmless();
    await second.tidy();
    expect(await second.shown()).toBe(first.own);
  });

  it('is its own on each place of a host', async () => {
    const here = await versionOf('1');
    const there = await versionOf('1', {}, '/place/inner/');
    await here.takeIfHarmless();
    expect(await there.shown()).toBeUndefined();
    expect(await there.others()).toEqual([]);
    await there.takeIfHarmless();
    await here.tidy();
    expect(await there.shown()).toBe(there.own);
  });
});

describe('a request', () => {
  const listing = { files: [{ path: 'icons/icon.png', bytes: 1, digest: '' }] };
  const asked = (path: string, mode: RequestMode = 'cors', method = 'GET') =>
    askedFor({ url: BASE + path, mode, method }, BASE, listing);

  it('for the page is answered with its one document, whatever stands behind it', () => {
    for (const path of ['', 'index.html', '?from=mail', '#/call/storm-light', 'index.html?a#/quiz']) {
      expect([path, asked(path, 'navigate')]).toEqual([path, 'index.html']);
    }
  });

  it('for one of its files is answered, also for one of an older version', () => {
    expect(asked('icons/icon.png')).toBe('icons/icon.png');
    expect(asked('assets/older-1.js')).toBe('assets/older-1.js');
  });

  it('for anything else on the host is left alone', () => {
    expect(asked('courses/other.html', 'navigate')).toBeUndefined();
    expect(asked('icons/icon.png', 'navigate')).toBeUndefined();
    expect(asked('data.json')).toBeUndefined();
    expect(asked('icons/icon.png?x')).toBeUndefined();
    expect(asked('assets/older-1.js', 'cors', 'POST')).toBeUndefined();
    expect(askedFor({ url: 'https://host.example/', mode: 'navigate', method: 'GET' }, BASE, listing)).toBeUndefined();
  });
});
