import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { inBrowser, openApp } from './page.ts';
import { goTo, leave, leftBehind, SCREENS } from './screens.ts';

const DESK = { width: 1440, height: 900 };

/** Ground of the page, and the colour that the head gives the browser's own frame. */
const worn = (page: Page) =>
  page.evaluate(() => ({
    ground: getComputedStyle(document.body).backgroundColor,
    frame: [...document.querySelectorAll<HTMLMetaElement>('meta[name="theme-color"]')]
      .filter(({ media }) => matchMedia(media).matches)
      .map(({ content }) => content),
    bar: getComputedStyle(document.querySelector('.bar') as Element).backgroundColor,
    scheme: document.documentElement.dataset.theme,
  }));

const LIGHT = { ground: 'rgb(246, 240, 225)', frame: ['#2b2a26'], bar: 'rgb(43, 42, 38)' };
const DARK = { ground: 'rgb(26, 22, 17)', frame: ['#100d0a'], bar: 'rgb(16, 13, 10)' };

inBrowser('light and dark colours', () => {
  it('follow the device until one is chosen, which is kept; what an earlier Underlawn kept is kept too', async () => {
    const { page, errors, close } = await openApp({ ...DESK, scheme: 'dark' });
    // Settings of an earlier Underlawn, which knew of no colours to choose.
    await leave(page, leftBehind({ units: 'si', still: true }).slice(0, 1));
    await page.waitForSelector('.call-card');
    expect(await worn(page)).toEqual(DARK);
    expect(await page.getByRole('radio', { name: 'Auto' }).isChecked()).toBe(true);
    await page.emulateMedia({ colorScheme: 'light' });
    expect(await worn(page)).toEqual(LIGHT);
    await page.getByRole('radio', { name: 'Dark' }).check();
    expect(await worn(page)).toEqual({ ...DARK, scheme: 'dark' });
    await page.waitForTimeout(200);
    await page.reload();
    await page.waitForSelector('.call-card');
    expect(await worn(page)).toEqual({ ...DARK, scheme: 'dark' });
    expect(await page.getByRole('radio', { name: 'L, cm, kPa' }).isChecked()).toBe(true);
    await page.emulateMedia({ colorScheme: 'dark' });
    await page.getByRole('radio', { name: 'Light' }).check();
    expect(await worn(page)).toEqual({ ...LIGHT, scheme: 'light' });
    await page.getByRole('radio', { name: 'Auto' }).check();
    expect(await worn(page)).toEqual(DARK);
    expect(errors).toEqual([]);
    await close();
  });

  it('are light on paper, whatever the screen has', async () => {
    const { page, errors, close } = await openApp({ ...DESK, scheme: 'dark', query: '#/sheet/sunny-line/trainee' });
    await page.waitForSelector('.paper');
    await page.evaluate(() => {
      document.documentElement.dataset.theme = 'dark';
    });
    await page.emulateMedia({ media: 'print' });
    const printed = await page.evaluate(() => ({
      ground: getComputedStyle(document.body).backgroundColor,
      sheet: getComputedStyle(document.querySelector('.paper') as Element).backgroundColor,
      ink: getComputedStyle(document.querySelector('.paper h1') as Element).color,
    }));
    expect(printed).toEqual({ ground: 'rgb(255, 255, 255)', sheet: 'rgb(255, 255, 255)', ink: 'rgb(43, 42, 38)' });
    expect(errors).toEqual([]);
    await close();
  });

  it('give way to the colours that a reader has forced: what is chosen, done or in focus is still seen', async () => {
    const { page, errors, close } = await openApp(DESK);
    await leave(page, leftBehind());
    await page.emulateMedia({ forcedColors: 'active' });
    const call = SCREENS.find(({ name }) => name === 'call-site');
    if (call === undefined) throw new Error('no such screen');
    await goTo(page, call);
    // The edge or the ground of what is chosen differs from that of what is not.
    const looks = (selector: string) =>
      page
        .locator(selector)
        .first()
        .evaluate((one) => {
          const { backgroundColor, borderTopColor, outlineStyle } = getComputedStyle(one);
          return [backgroundColor, borderTopColor, outlineStyle].join(' ');
        });
    expect(await looks('.part-chip[aria-current="true"]')).not.toBe(
      await looks('.part-chip:not([aria-current="true"])'),
    );
    expect(await looks('.rates [aria-pressed="true"]')).not.toBe(await looks('.rates [aria-pressed="false"]'));
    expect(await looks('.stages .done .stage-mark')).not.toBe(await looks('.stages .todo .stage-mark'));
    await page.locator('.part-chip').first().focus();
    await page.keyboard.press('ArrowRight');
    expect(await looks('.part-chip:focus-visible')).toMatch(/solid$/);
    await goTo(page, SCREENS[0] as (typeof SCREENS)[number]);
    expect(await looks('.choice input:checked + span')).not.toBe(await looks('.choice input:not(:checked) + span'));
    expect(await looks('.switch input:checked + .knob')).not.toBe(await looks('.switch input:not(:checked) + .knob'));
    expect(errors).toEqual([]);
    await close();
  });
});
