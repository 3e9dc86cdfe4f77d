import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { type CallFile, shippedCalls } from '../../src/calls/index.ts';
import { takeCall, withPointer } from '../../src/tools/people.ts';
import { inBrowser, openApp } from './page.ts';

/** By then one stands in the yard and hears the buzzer. */
const STEPS_TO_SITE = 8;

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

/** Takes a call as far as the site and returns all scripts fetched until then, with those that play the sounds. */
async function scriptsUntilHeard(page: Page): Promise<readonly string[]> {
  await takeCall(page, withPointer(page), sunnyLine(), STEPS_TO_SITE);
  await page.waitForSelector('canvas');
  await page.waitForFunction(() => performance.getEntriesByType('resource').some(({ name }) => /player/.test(name)));
  await page.waitForLoadState('networkidle');
  const names = await page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name));
  const page0 = await page.evaluate(() => [...document.scripts].map(({ src }) => src));
  return [...new Set([...page0, ...names])].filter((name) => name.endsWith('.js'));
}

inBrowser('the built page', () => {
  it.each([
    { graphics: 'without a graphics chip', chip: false, renderer: 'CanvasRenderer', other: 'WebGLRenderer' },
    { graphics: 'with a graphics chip', chip: true, renderer: 'WebGLRenderer', other: 'CanvasRenderer' },
  ])(
    'draws and sounds a call $graphics, fetching one renderer and at most 260 kB',
    async ({ chip, renderer, other }) => {
      const { page, errors, close, url } = await openApp({ width: 1280, height: 800 });
      if (chip) {
        await page.addInitScript(pretendGraphicsChip);
        await page.goto(url);
        await page.reload();
      }
      const scripts = await scriptsUntilHeard(page);
      expect(scripts.some((name) => name.includes(renderer))).toBe(true);
      expect(scripts.filter((name) => name.includes(other) || name.includes('WebGPU'))).toEqual([]);
      const bodies = await Promise.all(scripts.map(async (name) => (await page.request.get(name)).body()));
      const gzip_kB = bodies.reduce((sum, body) => sum + gzipSync(body).length / 1000, 0);
      expect(gzip_kB).toBeLessThan(260);
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
