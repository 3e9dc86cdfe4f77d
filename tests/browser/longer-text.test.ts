import { expect, it } from 'vitest';
import { broken, lengthen } from './longer-text.ts';
import { inBrowser, openApp } from './page.ts';
import { goTo, leave, leftBehind, SCREENS } from './screens.ts';

const PATIENCE = 600_000;
const WINDOWS = [
  { width: 360, height: 740, touch: true },
  { width: 390, height: 844, touch: true },
  { width: 820, height: 1180, touch: true },
  { width: 1440, height: 900 },
];

inBrowser('texts a third longer, spaced as WCAG 2.2 (1.4.12) has it', () => {
  it.each(WINDOWS)(
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
