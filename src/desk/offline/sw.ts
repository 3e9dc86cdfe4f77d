/**
 * The service worker: keeps a copy of the page, all of it, and answers from it. It is bundled by itself, with the listing
 * of its version before it (`tools/offline.ts`).
 */
import { askedFor } from './asked-for.ts';
import { leftHalfWay } from './half-way.ts';
import { isWhole, keepVersion, NotKept } from './keeping.ts';
import type { Asked, Standing, Told } from './line.ts';
import { DOCUMENT, type Listing, sizeOf } from './listing.ts';
import { createVersions } from './versions.ts';
import type { WorkerScope } from './worker-scope.ts';

declare const LISTING: Listing;

const scope = self as unknown as WorkerScope;
const base = scope.registration.scope;
const windowsAnd = (type: 'window' | 'all') => scope.clients.matchAll({ includeUncontrolled: true, type });
/** What is open of this page: others on the host have folders of their own. */
const open = async (type: 'window' | 'all') => (await windowsAnd(type)).filter(({ url }) => url.startsWith(base));

const versions = createVersions(LISTING, {
  caches,
  scope: new URL(base).pathname,
  open: async () => (await open('all')).map(({ id }) => id),
  another: () => scope.registration.installing !== null || scope.registration.waiting !== null,
  halfWay: leftHalfWay,
});

async function tell(told: Told): Promise<void> {
  for (const client of await open('window')) client.postMessage(told);
}

async function keep(): Promise<void> {
  try {
    const around = { caches, fetch: fetch.bind(self), base };
    await keepVersion(around, LISTING, versions.own, await versions.others(), (done, of) => {
      void tell({ kind: 'kept', done, of });
    });
  } catch (error) {
    await tell({ kind: 'broke-off', why: error instanceof NotKept ? error.why : 'denied' });
    throw error;
  }
}

/** Whichever version has the file: a window that runs an older one still finds what it comes to want. */
async function answer(path: string, request: Request): Promise<Response> {
  try {
    const shown = await versions.shown();
    const names = [shown, versions.own, ...(await versions.others())];
    for (const name of new Set(path === DOCUMENT ? [shown ?? versions.own] : names)) {
      const kept = name && (await (await caches.open(name)).match(base + path));
      if (kept) return kept;
    }
  } catch (error) {
    console.error(error);
  }
  return fetch(request);
}

/** Before a window opens that is the only one, a version that waits comes to be shown where nothing is lost by it. */
async function openDocument(request: Request): Promise<Response> {
  if ((await open('window')).length === 0) await versions.takeIfHarmless().catch(console.error);
  return answer(DOCUMENT, request);
}

async function standing(): Promise<Standing> {
  const [whole, shown, ends] = await Promise.all([
    isWhole(caches, LISTING, versions.own),
    versions.shown(),
    versions.ends(),
  ]);
  return { bytes: sizeOf(LISTING), whole, waits: shown !== undefined && shown !== versions.own, ends };
}

async function takeUp(): Promise<true> {
  await versions.take();
  await scope.skipWaiting();
  return true;
}

scope.addEventListener('install', (event) => event.waitUntil(keep()));

scope.addEventListener('activate', (event) => {
  const begin = async () => {
    await versions.takeIfHarmless();
    await scope.clients.claim();
    await versions.tidy();
  };
  event.waitUntil(begin());
});

scope.addEventListener('fetch', (event) => {
  const path = askedFor(event.request, base, LISTING);
  if (path === undefined) return;
  event.respondWith(path === DOCUMENT ? openDocument(event.request) : answer(path, event.request));
});

scope.addEventListener('message', (event) => {
  const { kind } = event.data as Asked;
  const reply = async () => event.ports[0]?.postMessage(await (kind === 'how' ? standing() : takeUp()));
  const mend = async () => {
    await reply();
    if (kind !== 'how') return;
    await versions.tidy();
    if (!(await isWhole(caches, LISTING, versions.own))) await keep().catch(() => {});
  };
  event.waitUntil(mend());
});
