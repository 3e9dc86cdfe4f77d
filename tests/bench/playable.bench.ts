/**
 * How long a page takes until a call can be played, on a slow phone: processor four times slower, slow 4G as Lighthouse has
 * it (1.6 Mbit/s, 150 ms there and back), nothing kept from before. Beside it a page that only shows an empty stage of Pixi,
 * and both without the brakes. Playable means an action can be pressed; drawn, that the picture stands. Long tasks are
 * those of the page's own thread, over 50 ms. The brake of the processor holds the page and not its worker.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { build } from 'vite';
import { findBrowser, howToGetBrowser, LAUNCH_ARGS } from '../../src/tools/browser.ts';
import { pixiParts } from '../../src/tools/pixi-parts.ts';
import { staticHost } from '../browser/static-host.ts';
import { buildWith } from './built-with.ts';

const REPEATS = 5;
const PHONE = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true } as const;
const SLOW = { latency: 150, downloadThroughput: 1_600_000 / 8, uploadThroughput: 750_000 / 8 };

/** What has to be there: when it is, the page knows by itself, so that nothing of the asking is measured. */
const MARKS = {
  ready: 'html[data-ready] canvas',
  start: '.call-card',
  playable: '[data-action]:not([aria-disabled="true"]):not(:disabled)',
  drawn: '.picture-host canvas',
} as const;
type Mark = keyof typeof MARKS;

interface Seen {
  readonly at: Partial<Record<Mark, number>>;
  readonly tasks: readonly number[];
}
declare global {
  interface Window {
    seen: { at: Partial<Record<Mark, number>>; tasks: number[] };
  }
}

export async function run(print: (line: string) => void): Promise<void> {
  const executablePath = findBrowser();
  if (executablePath === undefined) throw new Error(howToGetBrowser());
  const page = buildWith([]);
  const empty = await emptyStage();
  const host = await staticHost(page.page);
  const browser = await chromium.launch({ executablePath, args: LAUNCH_ARGS });
  try {
    for (const slow of [false, true]) {
      const taken = async (folder: string, hash: string, until: readonly Mark[]) => {
        host.serve(folder);
        const all: Seen[] = [];
        for (let i = 0; i < REPEATS; i++) all.push(await load(browser, host.url + hash, until, slow));
        return all;
      };
      const bare = await taken(empty, '', ['ready']);
      const first = await taken(page.page, '', ['start']);
      const call = await taken(page.page, '#/call/storm-light', ['playable', 'drawn']);
      const stage_ms = middle(bare.map(({ at }) => at.ready ?? Number.NaN));
      const show = (what: string, all: readonly Seen[], mark: Mark) => {
        const ms = middle(all.map(({ at }) => at[mark] ?? Number.NaN));
        const tasks = all.map((one) => one.tasks);
        print(
          JSON.stringify({
            ...{ bench: 'playable', slow, what, ms, ratioToEmpty: round(ms / stage_ms) },
            longTasks: middle(tasks.map((one) => one.length)),
            longest_ms: middle(tasks.map((one) => Math.max(0, ...one))),
            blocked_ms: middle(tasks.map((one) => one.reduce((sum, task) => sum + task - 50, 0))),
          }),
        );
      };
      show('an empty stage', bare, 'ready');
      show('the first screen', first, 'start');
      show('a call until it can be played', call, 'playable');
      show('a call until it is drawn', call, 'drawn');
    }
  } finally {
    await browser.close();
    await host.stop();
    page.remove();
    rmSync(empty, { recursive: true });
  }
}

async function emptyStage(): Promise<string> {
  const outDir = mkdtempSync(join(tmpdir(), 'empty-stage-'));
  await build({
    ...{ configFile: false, root: 'tests/bench/empty-stage', base: './', publicDir: false, logLevel: 'error' },
    plugins: [pixiParts()],
    build: { outDir, emptyOutDir: true, target: 'es2022', assetsInlineLimit: 0 },
  });
  return outDir;
}

async function load(browser: Browser, url: string, until: readonly Mark[], slow: boolean): Promise<Seen> {
  const context = await browser.newContext({ ...PHONE, serviceWorkers: 'block' });
  const page = await context.newPage();
  if (slow) {
    const line = await context.newCDPSession(page);
    await line.send('Network.emulateNetworkConditions', { offline: false, ...SLOW });
    await line.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  }
  await page.addInitScript((marks) => {
    window.seen = { at: {}, tasks: [] };
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) window.seen.tasks.push(duration);
    }).observe({ type: 'longtask', buffered: true });
    const look = () => {
      for (const [mark, selector] of Object.entries(marks) as [Mark, string][]) {
        const there = document.querySelector<HTMLElement>(selector);
        if (there !== null && there.style.visibility !== 'hidden') window.seen.at[mark] ??= performance.now();
      }
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  }, MARKS);
  await page.goto(url, { waitUntil: 'commit' });
  await page.waitForFunction((marks) => marks.every((mark) => window.seen.at[mark] !== undefined), until, {
    timeout: 120_000,
    polling: 200,
  });
  const seen = await page.evaluate(() => window.seen);
  await context.close();
  return seen;
}

const round = (x: number): number => Math.round(x * 100) / 100;

function middle(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return round(sorted[Math.floor(sorted.length / 2)] ?? Number.NaN);
}
