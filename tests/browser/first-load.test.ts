import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { type CallFile, shippedCalls } from '../../src/calls/index.ts';
import { takeCall, withPointer } from '../../src/tools/people.ts';
import { inBrowser, openApp } from './page.ts';

/** By then one stands in the yard and hears the buzzer. */
const STEPS_TO_SITE = 8;

/** What nobody needs before a call is opened. */
const DRAWING = /drawing|sheets|yard|Renderer/;
/**
 * What nobody needs before a call is over, left and come back to, brought, looked at closely, coached, drilled for, lived
 * with at home, handed in to a trainer, or launched by a course platform.
 */
const LATER =
  /after-call|openAir|waters|rareParts|picture-tools|poster|glass|answering|bubbles|spray|class|extras|home|hood|instructor|open-desk|resume|debrief|drills|quiz|later|Closeup|closeUps|[pP]late|closer|coach|caution|guide|expert|brought|printed|screens|share|take|launch|course|cmi5/;

/** What is fetched once the page is quiet: `offline.test.ts` holds that it does not come before. */
const IN_THE_BACKGROUND = /\/(?:offline|own-words)-/;

/** Names of the data files among scripts, without what the bundler adds to tell versions apart. */
function dataOf(scripts: readonly string[]): readonly string[] {
  const names = scripts.flatMap((name) => /\/((?:calls|households|units)-.+)-.{8}\.js$/.exec(name)?.[1] ?? []);
  return names.sort();
}

/** Makes the software graphics of a test machine look like a graphics chip, so that the page draws with WebGL. */
function pretendGraphicsChip(): void {
  const ask = WebGL2RenderingContext.prototype.getParameter;
  WebGL2RenderingContext.prototype.getParameter = function (name: number) {
    return name === 0x9246 ? 'a graphics chip' : ask.call(this, name);
  };
}

function sunnyLine(): CallFile {
  const call = shippedCalls().find(({ id }) => id === 'sunny-line');
  if (call === undefined) throw new Error('the call does not ship');
  return call;
}

/** Every script that is fetched from now on, by the page and by its worker. */
function scriptsOf(page: Page): ReadonlySet<string> {
  const scripts = new Set<string>();
  page.on('request', (request) => {
    if (request.url().endsWith('.js')) scripts.add(request.url());
  });
  return scripts;
}

/** Takes a call as far as the site, until all is there that draws and sounds it. */
async function takeUntilHeard(page: Page): Promise<void> {
  await takeCall(page, withPointer(page), sunnyLine(), STEPS_TO_SITE);
  await page.waitForSelector('canvas');
  await page.waitForFunction(() => performance.getEntriesByType('resource').some(({ name }) => /player/.test(name)));
  await page.waitForLoadState('networkidle');
}

inBrowser('the built page', () => {
  it.each([
    { graphics: 'without a graphics chip', chip: false, renderer: 'CanvasRenderer', other: 'WebGLRenderer' },
    { graphics: 'with a graphics chip', chip: true, renderer: 'WebGLRenderer', other: 'CanvasRenderer' },
  ])(
    'draws and sounds a call $graphics, fetching one renderer and at most 265 kB',
    async ({ chip, renderer, other }) => {
      const { page, errors, close } = await openApp({ width: 1280, height: 800 });
      if (chip) await page.addInitScript(pretendGraphicsChip);
      const fetched = scriptsOf(page);
      await page.reload();
      await page.waitForSelector('.call-card');
      await page.waitForLoadState('networkidle');
      expect([...fetched].filter((name) => DRAWING.test(name))).toEqual([]);
      await takeUntilHeard(page);
      // Whenever nothing else is to be fetched for a while, the page begins to see to work without a network.
      const scripts = [...fetched].filter((name) => !IN_THE_BACKGROUND.test(name));
      expect(scripts.some((name) => name.includes(renderer))).toBe(true);
      expect(scripts.filter((name) => name.includes(other) || name.includes('WebGPU'))).toEqual([]);
      // The worker's own files are seen too, and of the data only this call's.
      expect(dataOf(scripts)).toEqual(['calls-sunny-line', 'households-family-4', 'units-u1']);
      expect(scripts.filter((name) => LATER.test(name))).toEqual([]);
      const bodies = await Promise.all(scripts.map(async (name) => (await page.request.get(name)).body()));
      const gzip_kB = bodies.reduce((sum, body) => sum + gzipSync(body).length / 1000, 0);
      expect(gzip_kB).toBeLessThan(265);
      // A page built for development is larger and names the files it was made from.
      expect(bodies.filter((body) => body.includes('.tsx'))).toEqual([]);
      // An empty picture packs into a few hundred bytes.
      const picture = await page.locator('canvas').screenshot();
      expect(picture.length).toBeGreaterThan(20_000);
      expect(errors).toEqual([]);
      await close();
    },
  );
});
