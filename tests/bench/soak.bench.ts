/**
 * A call left running at a minute a second with its picture moving, for half an hour (`SOAK_min` asks for less): what the
 * page's heap, its nodes and listeners, and the memory of its process come to each minute, and how steeply the heap rises
 * over the second half: in the first it gets dark, and what draws the night is fetched. The engine keeps the call's history,
 * which grows by its own nature, in a worker of the same process: the heap is the page's alone.
 */
import { readFileSync } from 'node:fs';
import { type CDPSession, chromium } from 'playwright-core';
import { shippedCalls } from '../../src/calls/index.ts';
import { findBrowser, howToGetBrowser, LAUNCH_ARGS } from '../../src/tools/browser.ts';
import { takeCall, withPointer } from '../../src/tools/people.ts';
import { staticHost } from '../browser/static-host.ts';
import { buildWith } from './built-with.ts';

const MINUTES = Number(process.env.SOAK_min ?? 30);
/** Collections before a heap is read: one alone leaves half a megabyte more or less. */
const COLLECTIONS = 4;
const STEPS_TO_SITE = 8;
const PAGE_BYTES = 4096;

interface Minute {
  readonly minute: number;
  readonly heap_MB: number;
  readonly nodes: number;
  readonly listeners: number;
  readonly process_MB: number | null;
}

export async function run(print: (line: string) => void): Promise<void> {
  const executablePath = findBrowser();
  if (executablePath === undefined) throw new Error(howToGetBrowser());
  const call = shippedCalls().find(({ id }) => id === 'sunny-line');
  if (call === undefined) throw new Error('the call does not ship');
  const built = buildWith([]);
  const host = await staticHost(built.page);
  const browser = await chromium.launch({ executablePath, args: LAUNCH_ARGS });
  try {
    const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
    const page = await context.newPage();
    await page.goto(host.url);
    await takeCall(page, withPointer(page), call, STEPS_TO_SITE);
    await page.waitForSelector('.picture-host canvas');
    await page.getByRole('button', { name: '1 min/s' }).click();
    const line = await context.newCDPSession(page);
    await line.send('Performance.enable');
    const all = await browser.newBrowserCDPSession();
    const minutes: Minute[] = [];
    for (let minute = 0; minute <= MINUTES; minute++) {
      if (minute > 0) await page.waitForTimeout(60_000);
      const now = await measured(line, all, minute);
      minutes.push(now);
      print(JSON.stringify({ bench: 'soak', ...now }));
    }
    const settled = minutes.filter(({ minute }) => minute >= MINUTES / 2);
    const slope = slopeOf(settled.map(({ minute, heap_MB }) => [minute, heap_MB]));
    const heaps = settled.map(({ heap_MB }) => heap_MB);
    print(
      JSON.stringify({
        ...{ bench: 'soak', minutes: MINUTES, heapRises_kB_min: round(1000 * slope) },
        ...{ leastHeap_MB: Math.min(...heaps), mostHeap_MB: Math.max(...heaps) },
        clock: await page.locator('.clock').first().textContent(),
      }),
    );
  } finally {
    await browser.close();
    await host.stop();
    built.remove();
  }
}

async function measured(line: CDPSession, all: CDPSession, minute: number): Promise<Minute> {
  for (let i = 0; i < COLLECTIONS; i++) await line.send('HeapProfiler.collectGarbage');
  const { metrics } = await line.send('Performance.getMetrics');
  const metric = (name: string) => metrics.find((one) => one.name === name)?.value ?? Number.NaN;
  const { processInfo } = await all.send('SystemInfo.getProcessInfo');
  const pages = processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => resident_MB(id));
  return {
    ...{ minute, heap_MB: round(metric('JSHeapUsedSize') / 1e6) },
    ...{ nodes: metric('Nodes'), listeners: metric('JSEventListeners') },
    process_MB: pages.some((one) => one === null) ? null : Math.max(0, ...pages.flatMap((one) => one ?? [])),
  };
}

/** Of a process, where the system tells it as Linux does. */
function resident_MB(pid: number): number | null {
  try {
    const pages = Number(readFileSync(`/proc/${pid}/statm`, 'utf8').split(' ')[1]);
    return round((pages * PAGE_BYTES) / 1e6);
  } catch {
    return null;
  }
}

/** Of the straight line that fits best. */
function slopeOf(points: readonly (readonly [number, number])[]): number {
  const mean = (of: (p: readonly [number, number]) => number) =>
    points.reduce((sum, p) => sum + of(p), 0) / points.length;
  const [mx, my] = [mean(([x]) => x), mean(([, y]) => y)];
  return mean(([x, y]) => (x - mx) * (y - my)) / mean(([x]) => (x - mx) ** 2);
}

const round = (x: number): number => Math.round(x * 100) / 100;
