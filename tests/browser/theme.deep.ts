/** Every screen in both themes, as axe sees its colours; every pair of them is held by `tests/unit/desk/contrast.test.ts`. */
import { expect, it } from 'vitest';
import { inBrowser, openApp, runAxe } from './page.ts';
import { goTo, leave, leftBehind, SCREENS } from './screens.ts';

const DESK = { width: 1440, height: 900 };
const PHONE = { width: 390, height: 844, touch: true };
const PATIENCE = 900_000;

inBrowser('light and dark colours', () => {
  it.each([
    ['a desktop', DESK],
    ['a phone', PHONE],
  ] as const)(
    'have on every screen of %s nothing that axe finds too faint',
    async (_, window) => {
      const { page, errors, close } = await openApp(window);
      await leave(page, leftBehind());
      const faint: string[] = [];
      for (const screen of SCREENS) {
        await goTo(page, screen);
        for (const theme of ['light', 'dark']) {
          await page.evaluate((theme) => {
            document.documentElement.dataset.theme = theme;
          }, theme);
          for (const one of await runAxe(page, ['color-contrast'])) faint.push(`${screen.name}, ${theme}: ${one}`);
        }
      }
      expect(faint).toEqual([]);
      expect(errors).toEqual([]);
      await close();
    },
    PATIENCE,
  );
});
