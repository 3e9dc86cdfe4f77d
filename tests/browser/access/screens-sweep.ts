/**
 * Every screen, in every state: nothing that axe finds, nothing to be moved sideways, targets that can be
 * hit, names that say what is seen, and a focus that is shown wherever Tab goes.
 */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { inBrowser, openApp, runAxe } from '../page.ts';
import { bearings, misnamed, sideways, smallTargets, tabThrough } from './checks.ts';
import { troubles, WALKS } from './screens.ts';

const DESK = { width: 1440, height: 900 };

/** Widths to look at; `closely` is where the keyboard goes through, and axe looks. */
export interface Widths {
  readonly windows: readonly { readonly width: number; readonly height: number }[];
  readonly closely: readonly number[];
}

/** Everything that is wrong with a screen as it stands, with the width at which it is. */
async function faultsOf(page: Page, { windows, closely }: Widths): Promise<string[]> {
  const faults: string[] = (await bearings(page)).concat(await misnamed(page));
  for (const window of windows) {
    await page.setViewportSize(window);
    // Sizes come with the next frame, and what is drawn follows them.
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
    const found = [...(await sideways(page)), ...(window.width < 360 ? [] : await smallTargets(page))];
    if (closely.includes(window.width)) found.push(...(await runAxe(page)), ...(await tabThrough(page)));
    faults.push(...found.map((one) => `at ${window.width}: ${one}`));
  }
  await page.setViewportSize(DESK);
  return faults;
}

export function holdScreens(widths: Widths): void {
  inBrowser('whoever cannot see it, hear it or point at it', () => {
    it.each([...Object.entries(WALKS), ['troubles', troubles] as const])(
      'can use every state of: %s',
      async (_screen, walk) => {
        // Moving, so that what stops it is there too.
        const { page, errors, close } = await openApp({ ...DESK, motion: 'no-preference' });
        const faults: Record<string, string[]> = {};
        for await (const seen of walk(page)) {
          const found = await faultsOf(seen.page ?? page, widths);
          if (found.length > 0) faults[seen.state] = found;
        }
        expect(faults).toEqual({});
        expect(errors).toEqual([]);
        await close();
      },
      400_000,
    );
  });
}
