/**
 * Frame times of the drawn yard at 1280 x 800 on the canvas renderer, against the same renderer with an empty stage.
 * `run()` prints one JSON line per scene: milliseconds between frames and milliseconds of work in a frame.
 */
import { chromium, type Page } from 'playwright-core';
import { findBrowser, howToGetBrowser, LAUNCH_ARGS } from '../../src/tools/browser.ts';
import { serveHarness } from '../browser/harness/serve.ts';

interface Frames {
  readonly between: readonly number[];
  readonly work: readonly number[];
}

interface Line {
  readonly bench: 'yard-frames';
  readonly scene: string;
  readonly betweenMs: { readonly p50: number; readonly p95: number };
  readonly workMs: { readonly p50: number; readonly p95: number };
  readonly ratioToEmpty: { readonly between: number; readonly work: number };
}

const FRAMES = 240;

/** Measures the scenes and returns the lines, which it also prints. */
export async function run(print: (line: string) => void = console.log): Promise<readonly Line[]> {
  const executablePath = findBrowser();
  if (executablePath === undefined) throw new Error(howToGetBrowser());
  const served = await serveHarness();
  const browser = await chromium.launch({ executablePath, args: LAUNCH_ARGS });
  const lines: Line[] = [];
  try {
    let empty: Line | undefined;
    for (const scene of ['empty', 'idleDay', 'nightAlarm', 'stormNight', 'moonSpray']) {
      const page = await browser.newPage({ viewport: { width: 1280, height: 800 }, deviceScaleFactor: 1 });
      await page.addInitScript(countFrames, FRAMES);
      await page.goto(`${served.url}?renderer=canvas&scene=${scene}${scene === 'empty' ? '&empty' : ''}`);
      const line = summary(scene, await frames(page), empty);
      empty ??= line;
      lines.push(line);
      print(JSON.stringify(line));
      await page.close();
    }
  } finally {
    await browser.close();
    await served.close();
  }
  return lines;
}

/** Runs in the page: wraps the frame request so that each callback is timed. */
function countFrames(wanted: number): void {
  const at: number[] = [];
  const work: number[] = [];
  const ask = window.requestAnimationFrame.bind(window);
  window.requestAnimationFrame = (callback) =>
    ask((now) => {
      const from = performance.now();
      callback(now);
      at.push(now);
      work.push(performance.now() - from);
    });
  Object.assign(window, {
    counted: () => (at.length < wanted + 60 ? null : { at: at.slice(60), work: work.slice(60) }),
  });
}

async function frames(page: Page): Promise<Frames> {
  const handle = await page.waitForFunction(() => (window as unknown as { counted(): unknown }).counted(), undefined, {
    timeout: 120_000,
    // Not once a frame, which would be counted.
    polling: 500,
  });
  const { at, work } = (await handle.jsonValue()) as { at: number[]; work: number[] };
  return { between: at.slice(1).map((t, i) => t - (at[i] ?? t)), work };
}

function summary(scene: string, f: Frames, empty: Line | undefined): Line {
  const betweenMs = { p50: share(f.between, 0.5), p95: share(f.between, 0.95) };
  const workMs = { p50: share(f.work, 0.5), p95: share(f.work, 0.95) };
  return {
    bench: 'yard-frames',
    scene,
    betweenMs,
    workMs,
    ratioToEmpty: {
      between: round(betweenMs.p50 / (empty?.betweenMs.p50 ?? betweenMs.p50)),
      work: round(workMs.p50 / (empty?.workMs.p50 ?? workMs.p50)),
    },
  };
}

function share(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return round(sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))] ?? 0);
}

const round = (x: number): number => Math.round(x * 100) / 100;
