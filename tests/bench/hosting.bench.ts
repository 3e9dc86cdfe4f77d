/**
 * What a learner costs a host, in bytes that went over the line from a static host with gzip and the headers of
 * `docs/hosting.md` to a real browser: the first screen, a first call until it can be played and heard, all of it for work
 * without a network, and updates by what was changed. Bodies only, without headers. A record's size is
 * that of a shipped call's solution, as a file.
 */
import { type Browser, chromium, type Page } from 'playwright-core';
import { allShipped, type CallFile, makeRecord, playSolution, prepareCall } from '../../src/calls/index.ts';
import { findBrowser, howToGetBrowser, LAUNCH_ARGS } from '../../src/tools/browser.ts';
import { takeCall, withPointer } from '../../src/tools/people.ts';
import { type StaticHost, staticHost } from '../browser/static-host.ts';
import { buildWith, type Edit } from './built-with.ts';

const CALL = 'sunny-line';
/** By then one stands in the yard and hears the buzzer. */
const STEPS_TO_SITE = 8;
const UPDATES_A_YEAR = 12;

const TEXT: Edit = { file: 'src/words/en/desk.ts', from: 'Language and units', to: 'Units and language' };
const CALL_FILE: Edit = { file: `scenarios/calls/${CALL}.json`, from: '"seed": ', to: '"seed": 1' };
const ENGINE: Edit = { file: 'src/calls/engine-version.ts', from: "'", to: "'1" };
const UPDATES: readonly (readonly [what: string, edits: readonly Edit[]])[] = [
  ['one call', [CALL_FILE]],
  ['one text', [TEXT]],
  ['the engine', [ENGINE]],
  ['a call, a text and the engine', [CALL_FILE, TEXT, ENGINE]],
];

export async function run(print: (line: string) => void): Promise<void> {
  const executablePath = findBrowser();
  if (executablePath === undefined) throw new Error(howToGetBrowser());
  const show = (what: string, bytes: number, more: object = {}) =>
    print(JSON.stringify({ bench: 'hosting', what, bytes, ...more }));
  // Built beside its updates, so that nothing differs but what was changed.
  const base = buildWith([]);
  const host = await staticHost(base.page);
  const browser = await chromium.launch({ executablePath, args: LAUNCH_ARGS });
  try {
    await firstLoad(browser, host, show);
    await wholeCopy(browser, host, show);
    for (const [what, edits] of UPDATES) {
      const bytes = await update(browser, host, base.page, edits);
      show(`update: ${what}`, bytes);
      if (edits.length === 3) show(`updates of a year, each of ${what}`, bytes * UPDATES_A_YEAR, { UPDATES_A_YEAR });
    }
  } finally {
    await browser.close();
    await host.stop();
    base.remove();
  }
  const records = allShipped()
    .map((call) => recordSize(call))
    .sort((a, b) => a - b);
  show('a record, the middle one of the shipped calls', records[Math.floor(records.length / 2)] ?? 0, {
    least: records[0],
    most: records.at(-1),
  });
}

type Show = (what: string, bytes: number, more?: object) => void;

/** Without a service worker: what the page fetches by itself. */
async function firstLoad(browser: Browser, host: StaticHost, show: Show): Promise<void> {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  const bytes = counted(host);
  await page.goto(host.url);
  await page.waitForSelector('.call-card');
  await page.waitForLoadState('networkidle');
  show('first screen', bytes());
  await takeCall(page, withPointer(page), callBy(CALL), STEPS_TO_SITE);
  await page.waitForSelector('canvas');
  await page.waitForFunction(() => performance.getEntriesByType('resource').some(({ name }) => /sprite/.test(name)));
  await page.waitForLoadState('networkidle');
  show('first screen and a call until it is played and heard', bytes(), { call: CALL });
  await context.close();
}

async function wholeCopy(browser: Browser, host: StaticHost, show: Show): Promise<void> {
  const context = await browser.newContext();
  const page = await context.newPage();
  const bytes = counted(host);
  await page.goto(host.url);
  await whole(page);
  const kept = await page.evaluate(async () => {
    const name = (await caches.keys()).find((one) => / \w{16}$/.test(one)) ?? '';
    const cache = await caches.open(name);
    const sizes = (await cache.keys()).map(async (key) => (await (await cache.match(key))?.arrayBuffer())?.byteLength);
    return (await Promise.all(sizes)).reduce<number>((sum, size) => sum + (size ?? 0), 0);
  });
  show('all of it, the first screen among it', bytes(), { kept_in_the_browser: kept });
  await context.close();
}

async function update(browser: Browser, host: StaticHost, base: string, edits: readonly Edit[]): Promise<number> {
  const context = await browser.newContext();
  const page = await context.newPage();
  host.serve(base);
  await page.goto(host.url);
  await whole(page);
  const version = buildWith(edits);
  host.serve(version.page);
  const bytes = counted(host);
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    while (registration.waiting === null) await new Promise((later) => setTimeout(later, 50));
  });
  const fetched = bytes();
  await context.close();
  version.remove();
  return fetched;
}

/** Tells what was sent since. */
function counted(host: StaticHost): () => number {
  host.sent.length = 0;
  return () => host.sent.reduce((sum, { bytes }) => sum + bytes, 0);
}

async function whole(page: Page): Promise<void> {
  await page.locator('.offline-copy .good').waitFor({ timeout: 120_000 });
}

function callBy(id: string): CallFile {
  const call = allShipped().find((one) => one.id === id);
  if (call === undefined) throw new Error(`${id} does not ship`);
  return call;
}

function recordSize(call: CallFile): number {
  return JSON.stringify(makeRecord(playSolution(prepareCall(call)))).length;
}
