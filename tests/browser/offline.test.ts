import { cpSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { allShipped, type CallFile } from '../../src/calls/index.ts';
import { packageOf } from '../../src/cli/pack.ts';
import { findBrowser, LAUNCH_ARGS } from '../../src/tools/browser.ts';
import { buildPage, PAGE } from '../../src/tools/build-page.ts';
import { doStep, takeCall, withPointer } from '../../src/tools/people.ts';
import { type NextVersion, nextVersion } from './next-version.ts';
import { inBrowser, runAxe } from './page.ts';
import { type StaticHost, staticHost } from './static-host.ts';

const CALL = 'storm-light';
/** As `desk/quiet.ts`. */
const QUIET_ms = 2000;
/** What the next version says otherwise, in the texts that the first screen shows. */
const [OLD, NEW] = ['Language, units and colors', 'Colors, units and language'];
const NEW_TEXT = { stem: 'en', from: OLD, to: NEW };
const NEWER = 'A new version is ready';

function shipped(id: string): CallFile {
  const call = allShipped().find((one) => one.id === id);
  if (call === undefined) throw new Error(`${id} does not ship`);
  return call;
}

interface Manifest {
  readonly start_url: string;
  readonly scope: string;
  readonly theme_color: string;
  readonly icons: readonly {
    readonly src: string;
    readonly sizes: string;
    readonly type: string;
    readonly purpose: string;
  }[];
}

interface Visitor {
  readonly context: BrowserContext;
  readonly page: Page;
  /** What went wrong so far: thrown errors, what the policy forbade, requests to any other host. */
  readonly errors: readonly string[];
}

const settings = (page: Page) => page.locator('.settings-card .offline-copy');
const ready = (page: Page) =>
  settings(page)
    .getByText(/Ready to work without a network/)
    .waitFor();
const notes = (page: Page) => page.locator('.notebook tbody tr').allTextContents();

/** Answers the question of a drill, rightly or not. */
async function answerSomehow(page: Page): Promise<void> {
  const answer = page.locator('.drill-option, .number-answer input, .confirm-order').first();
  await answer.waitFor();
  if (await answer.evaluate((one) => one instanceof HTMLInputElement)) {
    await answer.fill('1');
    await answer.press('Enter');
  } else await answer.click();
}

/** Names of the caches there are. */
const cached = (page: Page) => page.evaluate(async () => (await caches.keys()).sort());

/** Asks the host for a newer version, as a load of the page does, until it is there and waits. */
async function newerComes(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    while (registration.waiting === null) await new Promise((later) => setTimeout(later, 50));
  });
}

let browser: Browser;
let host: StaticHost;
const versions: NextVersion[] = [];
const contexts: BrowserContext[] = [];

beforeAll(async () => {
  if (findBrowser() === undefined) return;
  if (!process.env.UNDERLAWN_BUILT) buildPage();
  browser = await chromium.launch({ executablePath: findBrowser() ?? '', args: LAUNCH_ARGS });
});
beforeEach(async () => {
  host = await staticHost(PAGE);
});
afterEach(async () => {
  for (const context of contexts.splice(0)) await context.close();
  for (const version of versions.splice(0)) version.remove();
  await host.stop();
});
afterAll(() => browser?.close());

function next(...how: Parameters<typeof nextVersion>): NextVersion {
  const version = nextVersion(...how);
  versions.push(version);
  return version;
}

async function visit(before?: (page: Page) => Promise<unknown>, hash = '', locale = 'en-US'): Promise<Visitor> {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 800 },
    reducedMotion: 'reduce',
    locale,
  });
  contexts.push(context);
  const errors: string[] = [];
  context.on('request', (request) => {
    const url = new URL(request.url());
    if (url.protocol.startsWith('http') && !url.href.startsWith(host.url)) errors.push(`elsewhere: ${url.href}`);
  });
  const page = await watched(context, errors);
  await before?.(page);
  await page.goto(host.url + hash);
  await page.waitForSelector('html[data-ready]');
  return { context, page, errors };
}

async function watched(context: BrowserContext, errors: string[]): Promise<Page> {
  const page = await context.newPage();
  page.on('pageerror', (error) => errors.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  return page;
}

async function cutOff({ context }: Visitor): Promise<void> {
  await context.setOffline(true);
  await host.stop();
}

inBrowser('the page without a network', () => {
  it('plays a call to its end, asks questions, begins and works a visit, reloads and opens a link to a screen', async () => {
    const visitor = await visit();
    const { page, errors } = visitor;
    await ready(page);
    expect(await runAxe(page)).toEqual([]);
    const { bytes } = await page.evaluate(async () => {
      const names = (await caches.keys()).filter((name) => / \w{16}$/.test(name));
      const cache = await caches.open(names[0] ?? '');
      const all = await Promise.all((await cache.keys()).map(async (key) => (await cache.match(key))?.arrayBuffer()));
      return { bytes: all.reduce((sum, one) => sum + (one?.byteLength ?? 0), 0) };
    });
    // The size that is said is the size that is kept.
    expect(await settings(page).textContent()).toContain(`${(bytes / 1e6).toFixed(1)} MB`);
    // Nothing went over the line twice.
    const files = host.sent.filter(({ status, path }) => status === 200 && path.startsWith('assets/'));
    expect(files.length).toBe(new Set(files.map(({ path }) => path)).size);
    await cutOff(visitor);

    const person = withPointer(page);
    await takeCall(page, person, shipped(CALL));
    await page.locator('dialog[open] button[aria-disabled="false"]').first().click();
    await page.waitForSelector('.verdict-head');

    await page.goto(`${host.url}#/drills/7`);
    await page.locator('[data-skill="jar"]').click();
    for (let asked = 0; asked < 2; asked++) {
      await answerSomehow(page);
      await page.waitForSelector('.told');
      await page.locator('.next-question').click();
    }

    const call = shipped('cloudy-corner');
    await page.goto(`${host.url}#/call/${call.id}`);
    await page.waitForSelector('.part-chip');
    for (const step of call.solution.slice(0, 4)) await doStep(page, person, step.do, step.fill ?? {});
    const before = await notes(page);
    await page.reload();
    await page.waitForSelector('.notebook tbody tr');
    expect(await notes(page)).toEqual(before);

    // Both renderers, the instruments and everything else that a screen comes to want.
    for (const hash of ['#/quiz', '#/round', '#/build', '#/class', '#/instructor', '#/home/card', '#/take']) {
      await page.goto(host.url + hash);
      await page.reload();
      await page.waitForSelector('html[data-ready]');
      await page.waitForFunction(() => document.querySelector('.waiting') === null);
      expect(await page.locator('.troubles').count()).toBe(0);
    }
    expect(errors).toEqual([]);
  });

  it('is fetched for later only once a call can be played', async () => {
    const letGo = host.hold(/calls-storm-light/);
    const { page } = await visit(undefined, `#/call/${CALL}`);
    await page.waitForTimeout(3 * QUIET_ms);
    expect(host.sent.filter(({ path }) => /sw\.js|offline/.test(path))).toEqual([]);
    letGo();
    await page.waitForSelector('.part-chip');
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    const order = host.sent.map(({ path }) => path);
    const first = order.findIndex((path) => /sw\.js|offline/.test(path));
    for (const wanted of [/calls-storm-light/, /households-/, /units-/, /yard-/, /CanvasRenderer-/]) {
      const at = order.findIndex((path) => wanted.test(path));
      expect([wanted, at >= 0 && at < first]).toEqual([wanted, true]);
    }
  });

  it('says how far it is while it is fetched, why it broke off, and goes on from there', async () => {
    const letGo = host.hold(/es-drills/);
    const { page, errors } = await visit();
    await settings(page)
      .getByText(/Being made ready to work without a network: \d\.\d of \d\.\d MB/)
      .waitFor();
    expect(await settings(page).locator('progress').getAttribute('max')).toMatch(/^\d{7}$/);
    await host.stop();
    letGo();
    await settings(page)
      .getByText(/fetching broke off/)
      .waitFor();
    expect(await runAxe(page)).toEqual([]);
    const before = host.sent.filter(({ status }) => status === 200).map(({ path }) => path);
    host.sent.length = 0;
    await host.start();
    await settings(page).getByRole('button', { name: 'Try again' }).click();
    await ready(page);
    const again = host.sent.filter(({ path, status }) => status === 200 && path.startsWith('assets/'));
    expect(again.filter(({ path }) => before.includes(path) && !path.includes('es-drills'))).toEqual([]);
    expect(errors.filter((error) => !/ERR_|Failed to/.test(error))).toEqual([]);
  });

  it('gives way to records where there is no room, says so, and is kept once there is', async () => {
    const { page, context } = await visit(async (fresh) => {
      const devtools = await fresh.context().newCDPSession(fresh);
      const { origin } = new URL(host.url);
      await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1_500_000 });
    });
    await settings(page)
      .getByText(/There is no room to keep the page/)
      .waitFor();
    expect(await cached(page)).toEqual([]);
    const used = await page.evaluate(async () => (await navigator.storage.estimate()).usage ?? 0);
    expect(used).toBeLessThan(500_000);
    await takeCall(page, withPointer(page), shipped(CALL), 2);
    expect(await page.locator('.troubles').count()).toBe(0);
    await page.locator('.brand').click();
    const devtools = await context.newCDPSession(page);
    await devtools.send('Storage.overrideQuotaForOrigin', { origin: new URL(host.url).origin });
    await settings(page).getByRole('button', { name: 'Try again' }).click();
    await ready(page);
  });

  it('is not kept where the browser has no service workers, nor where the host serves other files than were built', async () => {
    const { page, errors } = await visit((fresh) =>
      fresh.addInitScript(() => Object.defineProperty(Navigator.prototype, 'serviceWorker', { value: undefined })),
    );
    await settings(page)
      .getByText(/This browser does not keep the page here/)
      .waitFor();
    expect(errors).toEqual([]);
    const spoilt = next(NEW_TEXT);
    writeFileSync(join(spoilt.folder, 'icons/icon-512.png'), 'an error page');
    host.serve(spoilt.folder);
    const other = await visit(undefined, '', 'es-MX');
    await settings(other.page)
      .getByText(/El servidor no entrega la página tal como se hizo/)
      .waitFor();
    expect(other.errors).toEqual([]);
  });

  it('of a course platform registers none', async () => {
    const packed = next(NEW_TEXT);
    const files = packageOf([shipped(CALL)], { platform: 'scorm12', mode: 'graded', language: 'en', page: PAGE });
    const entry = [...files].find(([name]) => name.endsWith('.html'));
    writeFileSync(join(packed.folder, 'index.html'), entry?.[1] ?? '');
    expect([...files.keys()].filter((name) => /sw\.js|webmanifest|icons/.test(name))).toEqual([]);
    expect(String(entry?.[1])).not.toContain('manifest');
    cpSync(PAGE, packed.folder, { recursive: true, filter: (name) => !name.endsWith('index.html') });
    host.serve(packed.folder);
    const { page } = await visit();
    await page.waitForSelector('.part-chip');
    await page.waitForTimeout(3 * QUIET_ms);
    expect(await page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length)).toBe(0);
    expect(host.sent.filter(({ path }) => path === 'sw.js')).toEqual([]);
  });
});

inBrowser('a new version', () => {
  it('comes during a call, which goes on; taken up from the first screen, the call is still there to go on with', async () => {
    const { page, errors } = await visit();
    await ready(page);
    await takeCall(page, withPointer(page), shipped(CALL), 3);
    const before = await notes(page);
    const version = next(NEW_TEXT);
    host.serve(version.folder);
    host.sent.length = 0;
    await newerComes(page);
    // Only what is new went over the line.
    const paths = host.sent.filter(({ status }) => status === 200).map(({ path }) => path);
    expect(paths.filter((path) => !version.fresh.includes(path.replace('assets/', '')))).toEqual([
      'sw.js',
      'index.html',
    ]);
    expect(await page.getByText(NEWER).count()).toBe(0);
    await doStep(page, withPointer(page), shipped(CALL).solution[3]?.do ?? '', shipped(CALL).solution[3]?.fill ?? {});
    expect((await notes(page)).length).toBeGreaterThan(before.length);
    await page.locator('.brand').click();
    const note = page.locator('.update-note');
    await note.getByText(NEWER).waitFor();
    expect(await note.textContent()).toContain('Calls and records stay');
    expect(await page.locator('#settings-title').textContent()).toBe(OLD);
    expect(await runAxe(page)).toEqual([]);
    await note.getByRole('button').click();
    await page.getByRole('heading', { name: NEW }).waitFor();
    await page.locator('.left-off button').click();
    await page.waitForSelector('.notebook tbody tr');
    expect((await notes(page)).slice(-before.length)).toEqual(before);
    await page.locator('.brand').click();
    await ready(page);
    expect(await page.locator('.update-note').count()).toBe(0);
    expect(errors).toEqual([]);
  });

  it('taken up in one window leaves another its call and the files of its version, and puts these away after it', async () => {
    const visitor = await visit();
    const { page, context, errors } = visitor;
    await ready(page);
    const call = shipped(CALL);
    await takeCall(page, withPointer(page), call, 3);
    const version = next(NEW_TEXT);
    host.serve(version.folder);
    const beside = await context.newPage();
    await beside.goto(host.url);
    await beside.waitForSelector('.call-card');
    await newerComes(beside);
    await beside.locator('.update-note button').click();
    await beside.getByRole('heading', { name: NEW }).waitFor();
    await ready(beside);
    host.sent.length = 0;
    // The call is played to its end, and judged by files that the host has no more.
    const person = withPointer(page);
    for (const step of call.solution.slice(3)) await doStep(page, person, step.do, step.fill ?? {});
    await page.locator('dialog[open] button[aria-disabled="false"]').first().click();
    await page.waitForSelector('.verdict-head');
    await page.locator('.brand').click();
    await page.waitForSelector('.call-card');
    expect(await page.locator('#settings-title').textContent()).toBe(OLD);
    expect(host.sent.filter(({ status }) => status === 404)).toEqual([]);
    expect((await cached(page)).length).toBe(3);
    await page.reload();
    await page.getByRole('heading', { name: NEW }).waitFor();
    await ready(page);
    await page.waitForFunction(async () => (await caches.keys()).length === 2);
    expect(errors).toEqual([]);
  });

  it('that could not go on with a call waits for it, whatever is closed, and says which call', async () => {
    const { page, context } = await visit();
    await ready(page);
    await takeCall(page, withPointer(page), shipped(CALL), 3);
    const before = await notes(page);
    host.serve(next(NEW_TEXT, () => ({ grounds: 'another engine' })).folder);
    await newerComes(page);
    await page.goto('about:blank');
    await page.close();
    const later = await context.newPage();
    await later.goto(host.url);
    const note = later.locator('.update-note');
    await note.getByText(/the new version cannot go on with it/).waitFor();
    expect(await note.textContent()).toContain(shipped(CALL).title.en);
    expect(await later.locator('#settings-title').textContent()).toBe(OLD);
    await later.locator('.left-off button').click();
    await later.waitForSelector('.notebook tbody tr');
    expect(await notes(later)).toEqual(before);
    await later.locator('.brand').click();
    await note.getByRole('button').click();
    await later.getByRole('heading', { name: NEW }).waitFor();
  });

  it('comes by itself when all windows were closed and nothing is lost by it', async () => {
    const { page, context } = await visit();
    await ready(page);
    host.serve(next(NEW_TEXT, () => ({ grounds: 'another engine' })).folder);
    await newerComes(page);
    await page.close();
    const later = await context.newPage();
    await later.goto(host.url);
    await later.getByRole('heading', { name: NEW }).waitFor();
    await ready(later);
    expect(await later.locator('.update-note').count()).toBe(0);
  });
});

inBrowser('the installed page', () => {
  it('has a manifest with all that browsers ask for, and icons that are what it says', async () => {
    const { page } = await visit();
    const address = await page.locator('link[rel="manifest"]').evaluate((link) => (link as HTMLLinkElement).href);
    const devtools = await page.context().newCDPSession(page);
    const { errors, url } = await devtools.send('Page.getAppManifest');
    expect(errors).toEqual([]);
    expect(url).toBe(address);
    const response = await page.request.get(address);
    expect(response.headers()['content-type']).toBe('application/manifest+json');
    const manifest = (await response.json()) as Manifest;
    expect(manifest).toMatchObject({ name: 'Underlawn', short_name: 'Underlawn', display: 'standalone', lang: 'en' });
    expect(new URL(manifest.start_url, address).href).toBe(host.url);
    expect(new URL(manifest.scope, address).href).toBe(host.url);
    expect(manifest.theme_color).toBe(
      await page.locator('meta[name="theme-color"][data-scheme="light"]').getAttribute('content'),
    );
    const shown = await Promise.all(
      manifest.icons.map(async ({ src, sizes, type, purpose }) => {
        const icon = new URL(src, address).href;
        const size = await page.evaluate(async (src_) => {
          const image = new Image();
          image.src = src_;
          await image.decode();
          return `${image.naturalWidth}x${image.naturalHeight}`;
        }, icon);
        const { headers } = { headers: (await page.request.get(icon)).headers() };
        expect([size, headers['content-type']]).toEqual([sizes, type]);
        return `${purpose} ${sizes}`;
      }),
    );
    expect(shown.sort()).toEqual(['any 192x192', 'any 512x512', 'maskable 192x192', 'maskable 512x512']);
    const touch = await page.locator('link[rel="apple-touch-icon"]').evaluate((link) => (link as HTMLLinkElement).href);
    expect((await page.request.get(touch)).ok()).toBe(true);
  });
});
