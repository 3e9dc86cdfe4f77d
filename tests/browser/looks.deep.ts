/**
 * How every screen looks, beside how it looked when a person last looked at it: `tests/browser/looks` keeps the sheets, one
 * for each window with its colours and language. A screen may differ in TOLERANCE of its squares (`gallery.ts`). After a
 * change that is meant, `npm run looks` takes the sheets anew: look at them, then commit them.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { type Gallery, openGallery } from './gallery.ts';
import { inBrowser, openApp } from './page.ts';
import { goTo, leave, leftBehind, SCREENS } from './screens.ts';

const FOLDER = 'tests/browser/looks';
const TOLERANCE = 0.02;
const PATIENCE = 900_000;
/** A day on which nothing else is to be seen than on any other. */
const NOW = '2031-05-14T10:00';

const DESK = { width: 1440, height: 900 };
const TABLET = { width: 820, height: 1180, touch: true };
const PHONE = { width: 390, height: 844, touch: true };
const VIEWS = [
  ['desk-light-en', DESK, 'light', 'en'],
  ['desk-dark-es', DESK, 'dark', 'es'],
  ['tablet-light-es', TABLET, 'light', 'es'],
  ['tablet-dark-en', TABLET, 'dark', 'en'],
  ['phone-light-es', PHONE, 'light', 'es'],
  ['phone-dark-en', PHONE, 'dark', 'en'],
] as const;
type View = (typeof VIEWS)[number];

/** A sheet of all screens as they look now. */
async function take([, window, scheme, language]: View, use: (gallery: Gallery) => Promise<void>): Promise<void> {
  const { page, errors, close } = await openApp({ ...window, scheme, now: NOW });
  await leave(page, leftBehind({ language }));
  const gallery = await openGallery(await page.context().newPage(), window, SCREENS.length);
  for (const screen of SCREENS) {
    await goTo(page, screen);
    await page.waitForLoadState('networkidle');
    await page.evaluate(() => document.fonts.ready);
    // One frame more, so that a picture that came last is on it.
    await page.waitForTimeout(400);
    const png = await page.screenshot({ animations: 'disabled', caret: 'hide' });
    if (process.env.LOOKS_AT)
      writeFileSync(`${process.env.LOOKS_AT}/${window.width}-${scheme}-${screen.name}.png`, png);
    await gallery.hang(png);
  }
  expect(errors).toEqual([]);
  await use(gallery);
  await close();
}

inBrowser('every screen', () => {
  it.each(VIEWS.map((view) => [view[0], view] as const))(
    'looks as it did when a person last looked: %s',
    async (name, view) => {
      const file = `${FOLDER}/${name}.webp`;
      await take(view, async (gallery) => {
        if (process.env.LOOKS === 'take') {
          mkdirSync(FOLDER, { recursive: true });
          writeFileSync(file, await gallery.packed());
        }
        expect(existsSync(file), `${file} is there: npm run looks takes it`).toBe(true);
        const apart = await gallery.apartFrom(readFileSync(file));
        const changed = SCREENS.flatMap((screen, i) => {
          const share = apart[i] ?? 1;
          return share > TOLERANCE ? [`${screen.name}: ${(100 * share).toFixed(1)} % of its squares`] : [];
        });
        expect(changed).toEqual([]);
      });
    },
    PATIENCE,
  );
});
