/** Every screen with its texts a third longer, at some widths: the narrowest phone in each run, the rest in the deep one. */
import { expect, it } from 'vitest';
import type { AppOptions } from '../../src/tools/stage.ts';
import { broken, lengthen } from './longer-text.ts';
import { inBrowser, openApp } from './page.ts';
import { goTo, leave, leftBehind, SCREENS } from './screens.ts';

const PATIENCE = 600_000;

export function holdLongerText(windows: readonly AppOptions[]): void {
  inBrowser('texts a third longer, spaced as WCAG 2.2 (1.4.12) has it', () => {
    it.each(windows)(
      'run nowhere off the page, out of a button or over each other at $width px',
      async (window) => {
        const { page, errors, close } = await openApp(window);
        await leave(page, leftBehind());
        const all: string[] = [];
        for (const screen of SCREENS) {
          await goTo(page, screen);
          await page.evaluate(lengthen);
          for (const one of await page.evaluate(broken)) all.push(`${screen.name}: ${one}`);
          await page.evaluate(() => {
            document.adoptedStyleSheets = [];
          });
        }
        expect(all).toEqual([]);
        expect(errors).toEqual([]);
        await close();
      },
      PATIENCE,
    );
  });
}
