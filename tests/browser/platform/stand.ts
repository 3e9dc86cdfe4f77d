import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { findBrowser, LAUNCH_ARGS } from '../../../src/tools/browser.ts';
import { buildPage } from '../../../src/tools/build-page.ts';
import type { Served } from './serve.ts';

export interface Machine {
  readonly page: Page;
  /** What went wrong in the page so far. */
  readonly errors: string[];
  close(): Promise<void>;
}

export interface Stand {
  /** A machine that has nothing of this learner yet. `isFine`: errors of the console that are none. */
  machine(isFine?: (text: string) => boolean): Promise<Machine>;
  /** What is put here is closed after the tests. */
  readonly served: Served[];
}

/** The built page, and a browser for platforms of the test's own. Called within a `describe`. */
export function stand(): Stand {
  let browser: Browser;
  const served: Served[] = [];
  beforeAll(async () => {
    if (!process.env.UNDERLAWN_BUILT) buildPage();
    browser = await chromium.launch({ executablePath: findBrowser() ?? '', args: LAUNCH_ARGS });
  });
  afterAll(async () => {
    await browser.close();
    for (const one of served) await one.close();
  });
  async function machine(isFine: (text: string) => boolean = () => false): Promise<Machine> {
    const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, reducedMotion: 'reduce' });
    const page = await context.newPage();
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(String(error)));
    page.on('console', (message) => {
      if (message.type() === 'error' && !isFine(message.text())) errors.push(message.text());
    });
    return { page, errors, close: () => context.close() };
  }
  return { machine, served };
}
