/** Pages that hold one yard and nothing else, for tests of what is drawn. */
import { createHash } from 'node:crypto';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { findBrowser, LAUNCH_ARGS } from '../../../src/tools/browser.ts';
import type { SceneName } from '../fixtures/index.ts';
import type { Harness } from './harness.ts';
import { type Served, serveHarness } from './serve.ts';

declare global {
  interface Window {
    harness: Harness;
    violations: string[];
  }
}

export interface Ask {
  readonly scene: SceneName;
  readonly renderer?: 'canvas' | 'webgl';
  readonly still?: boolean;
  readonly width?: number;
  readonly height?: number;
}

export interface DrawnPage {
  readonly page: Page;
  readonly errors: readonly string[];
}

/** Serves the harness to the tests of a block; gives the way to open a page of it. */
export function drawnPages(): (ask: Ask) => Promise<DrawnPage> {
  let served: Served;
  let browser: Browser;

  beforeAll(async () => {
    served = await serveHarness();
    browser = await chromium.launch({ executablePath: findBrowser() ?? '', args: LAUNCH_ARGS });
  });
  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });

  return async ({ scene, renderer = 'canvas', still = false, width = 1280, height = 800 }: Ask): Promise<DrawnPage> => {
    const page = await browser.newPage({ viewport: { width, height }, deviceScaleFactor: 1 });
    const errors: string[] = [];
    page.on('pageerror', (e) => errors.push(String(e)));
    page.on('console', (m) => m.type() === 'error' && errors.push(m.text()));
    await page.addInitScript(() => {
      window.violations = [];
      document.addEventListener('securitypolicyviolation', (e) =>
        window.violations.push(`${e.violatedDirective} ${e.blockedURI}`),
      );
    });
    await page.goto(`${served.url}?scene=${scene}&renderer=${renderer}${still ? '&still' : ''}`);
    await page.waitForSelector('html[data-ready]');
    return { page, errors };
  };
}

/** Waits until nothing moves. */
export const quiet = (page: Page) => page.waitForFunction(() => !window.harness.yard.moving);

/** Digest of what is to be seen once nothing moves. */
export const picture = async (page: Page) => {
  await quiet(page);
  return createHash('sha256')
    .update(await page.screenshot({ animations: 'disabled' }))
    .digest('hex');
};
