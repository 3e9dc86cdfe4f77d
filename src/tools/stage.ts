/**
 * The built page in a headless browser: `vite preview` on a free port and one Chromium, for browser tests, pictures
 * and frame times. Every page collects what went wrong in it.
 */
import { type Browser, chromium, type Page } from 'playwright-core';
import { type PreviewServer, preview } from 'vite';
import { findBrowser, howToGetBrowser, LAUNCH_ARGS } from './browser.ts';
import { buildPage } from './build-page.ts';

export interface AppOptions {
  /** Size of the window, CSS pixels. */
  readonly width: number;
  readonly height: number;
  /** What follows the address, with its `?` or `#`. */
  readonly query?: string;
  /** A finger instead of a mouse. */
  readonly touch?: boolean;
  /** Language the browser asks for; `en-US` unless said. */
  readonly locale?: string;
  /** What the page's calendar and clock stand at, such as `2031-05-14T10:00`; now unless said. */
  readonly now?: string;
  /** `reduce` unless said. */
  readonly motion?: 'reduce' | 'no-preference';
  /** Which colours the device asks for; `light` unless said. */
  readonly scheme?: 'light' | 'dark';
}

export interface OpenApp {
  readonly page: Page;
  readonly url: string;
  /** Thrown errors, console errors, content policy violations and requests to any other host, as they come. */
  readonly errors: readonly string[];
  readonly close: () => Promise<void>;
}

export interface Stage {
  readonly openApp: (options: AppOptions) => Promise<OpenApp>;
  readonly close: () => Promise<void>;
}

/** Starts the server and the browser; builds the page first where it is older than its sources. */
export async function openStage(): Promise<Stage> {
  const executablePath = findBrowser();
  if (executablePath === undefined) throw new Error(howToGetBrowser());
  // `npm test` has just built and says so; a rebuild then could change files under a page that is open.
  if (!process.env.UNDERLAWN_BUILT) buildPage();
  const server = await preview({ preview: { port: 0, strictPort: false, open: false }, logLevel: 'silent' });
  const browser = await chromium.launch({ executablePath, args: LAUNCH_ARGS });
  return {
    openApp: (options) => openApp(browser, address(server), options),
    close: async () => {
      await browser.close();
      await server.close();
    },
  };
}

function address(server: PreviewServer): string {
  const url = server.resolvedUrls?.local[0];
  if (url === undefined) throw new Error('the preview server has no address');
  return url;
}

async function openApp(browser: Browser, base: string, options: AppOptions): Promise<OpenApp> {
  const context = await browser.newContext({
    viewport: { width: options.width, height: options.height },
    deviceScaleFactor: 1,
    hasTouch: options.touch ?? false,
    locale: options.locale ?? 'en-US',
    timezoneId: 'America/Chicago',
    reducedMotion: options.motion ?? 'reduce',
    colorScheme: options.scheme ?? 'light',
    // What a service worker fetches in the background, and answers after a reload, is for its own tests to look at.
    serviceWorkers: 'block',
  });
  if (options.now !== undefined) await context.clock.setFixedTime(new Date(`${options.now}-06:00`));
  const page = await context.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  const { origin } = new URL(base);
  page.on('request', (request) => {
    const url = new URL(request.url());
    if (url.protocol.startsWith('http') && url.origin !== origin) errors.push(`request to another host: ${url.href}`);
  });
  const url = `${base}${options.query ?? ''}`;
  await page.goto(url);
  return { page, url, errors, close: () => context.close() };
}
