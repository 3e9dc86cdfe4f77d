import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { callOfDay } from '../../src/calls/day-call.ts';
import { allShipped, shippedCalls } from '../../src/calls/index.ts';
import { takeCall, withKeyboard, withPointer } from '../../src/tools/people.ts';
import { inBrowser, openApp, runAxe } from './page.ts';

const WIDE = { width: 1440, height: 900 };
const TABLET = { width: 820, height: 1180, touch: true };
const PHONE = { width: 390, height: 844, touch: true };

const storm = shippedCalls().find(({ id }) => id === 'storm-light');
if (!storm) throw new Error('the call does not ship');

const isFocused = (page: Page, selector: string) =>
  page.evaluate((s) => document.activeElement?.matches(s) === true, selector);

inBrowser('the first screen', () => {
  describe.each([
    { language: 'English', locale: 'en-US' },
    { language: 'Spanish', locale: 'es-MX' },
  ])('in $language', ({ locale }) => {
    it.each([WIDE, TABLET, PHONE])('has nothing that axe finds and nothing sideways, $width wide', async (window) => {
      const { page, errors, close } = await openApp({ ...window, locale });
      await page.waitForSelector('.door .primary');
      await page.waitForSelector('[data-day]:not([disabled])');
      expect(await runAxe(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(window.width);
      expect(errors).toEqual([]);
      await close();
    });

    it('shows the way in of the first door on a phone without scrolling', async () => {
      const { page, close } = await openApp({ ...PHONE, locale });
      const way = await page.locator('.door-apprentice .door-go').boundingBox();
      expect((way?.y ?? 1000) + (way?.height ?? 0)).toBeLessThanOrEqual(PHONE.height);
      await close();
    });
  });

  it.each([
    ['apprentice', '.part-chip'],
    ['trainer', '.build-list h1'],
    ['course', '.quiz h1'],
    ['household', '.home h1'],
    ['instructor', '.instructor h1'],
  ])('has a door for the %s that is gone through by keyboard', async (door, there) => {
    const { page, errors, close } = await openApp(WIDE);
    const person = withKeyboard(page);
    await page.waitForSelector('.door .primary');
    await person.press(`.door-${door} .door-go`);
    await page.waitForSelector(there);
    expect(errors).toEqual([]);
    await close();
  });

  it('leads on from the doors to all else that there is', async () => {
    const { page, errors, close } = await openApp(WIDE);
    await page.waitForSelector('.door .primary');
    const ways = await page
      .locator('.doors a, .start-row a')
      .evaluateAll((all) => all.map((a) => a.getAttribute('href')));
    expect(ways.sort()).toEqual(
      [
        '#/call/storm-light/led-whole',
        ...['#/build', '#/class', '#/take', '#/round', '#/quiz', '#/drills', '#/faults', '#/home', '#/home/card'],
        ...['#/instructor', '#/access'],
      ].sort(),
    );
    await page.getByRole('button', { name: 'Routine visits' }).click();
    expect(await isFocused(page, '#visits-title')).toBe(true);
    expect(await page.locator('#visits-title').evaluate((e) => e.getBoundingClientRect().top < innerHeight)).toBe(true);
    // The building over a door is part of it.
    await page.evaluate(() => scrollTo(0, 0));
    const house = await page.locator('.door-household .door-art').boundingBox();
    await page.mouse.click((house?.x ?? 0) + (house?.width ?? 0) / 2, (house?.y ?? 0) + (house?.height ?? 0) - 20);
    await page.waitForSelector('.home h1');
    expect(errors).toEqual([]);
    await close();
  });

  it('tells in three lines how a call goes, until that is put away, and then no more', async () => {
    const { page, errors, close } = await openApp(WIDE);
    await page.waitForSelector('.first-run');
    expect(await page.locator('.first-run li').count()).toBe(3);
    await withKeyboard(page).press('[data-how-read]');
    expect(await page.locator('.first-run').count()).toBe(0);
    expect(await isFocused(page, 'h1')).toBe(true);
    await page.waitForTimeout(200);
    await page.reload();
    await page.waitForSelector('.door .primary');
    expect(await page.locator('.first-run').count()).toBe(0);
    expect(errors).toEqual([]);
    await close();
  });
});

inBrowser('the search', () => {
  it('is reached by one key, finds calls and faults, says how many, and is left by Escape', async () => {
    const { page, errors, close } = await openApp(WIDE);
    await page.waitForSelector('.call-card');
    await page.keyboard.press('/');
    expect(await isFocused(page, '.find input')).toBe(true);
    await page.keyboard.type('smell');
    await page.waitForSelector('.found .call-card');
    expect(await page.locator('.doors').count()).toBe(0);
    expect(await page.locator('.fault-cards li').count()).toBeGreaterThan(1);
    await page.waitForFunction(() =>
      /^\d+ calls, \d+ visits?, \d+ faults for “smell”$/.test(
        document.querySelector('.found [role="status"]')?.textContent ?? '',
      ),
    );
    expect(await runAxe(page)).toEqual([]);
    // A single letter finds much: what is shown of it at once does not hold up the typing.
    await page.locator('.find input').fill('s');
    await page.locator('[data-find-more]').click();
    expect(await page.locator('.fault-cards li').count()).toBeGreaterThan(20);
    await page.locator('.find input').fill('smell');
    expect(await page.locator('[data-find-more]').count()).toBe(0);
    await page.locator('.find input').focus();
    await page.keyboard.press('Enter');
    expect(await isFocused(page, '#found-title')).toBe(true);
    // In a field the key is a letter like all others.
    await page.keyboard.press('/');
    await page.keyboard.press('End');
    await page.keyboard.type('/');
    expect(await page.locator('.find input').inputValue()).toBe('smell/');
    await page.keyboard.press('Escape');
    await page.waitForSelector('.doors');
    expect(await isFocused(page, '.find input')).toBe(true);
    await page.keyboard.press('Escape');
    expect(await isFocused(page, '.find input')).toBe(false);
    expect(errors).toEqual([]);
    await close();
  });

  it('leads to what a fault shows, and back to what was found', async () => {
    const { page, errors, close } = await openApp(PHONE);
    await page.locator('.find input').fill('air LINE split');
    await page.getByRole('link', { name: 'Air line split' }).click();
    await page.getByRole('heading', { name: 'Air line split', level: 1 }).waitFor();
    expect(await page.locator('.fault-card').textContent()).toContain('soap foams on the tube wall');
    expect(await page.locator('.caution-card').textContent()).toContain('Live parts');
    expect(await runAxe(page)).toEqual([]);
    await page.goBack();
    await page.waitForSelector('.fault-cards');
    expect(await page.locator('.find input').inputValue()).toBe('air LINE split');
    await page.locator('.brand').click();
    await page.waitForSelector('.doors');
    expect(await page.locator('.find input').inputValue()).toBe('');
    expect(errors).toEqual([]);
    await close();
  });

  it('says when nothing is found, with ways out', async () => {
    const { page, errors, close } = await openApp({ ...PHONE, locale: 'es-MX' });
    await page.locator('.find input').fill('xyzzy');
    await page.getByText('Nada responde aquí a «xyzzy».').first().waitFor();
    expect(await runAxe(page)).toEqual([]);
    expect(await page.locator('.found-none a[href="#/faults"]').count()).toBe(1);
    await page.locator('[data-find-back]').click();
    await page.waitForSelector('.doors');
    expect(await isFocused(page, 'h1')).toBe(true);
    expect(errors).toEqual([]);
    await close();
  });

  it('narrows the list', async () => {
    const { page, errors, close } = await openApp(WIDE);
    await page.locator('[data-narrow]').click();
    await page.waitForSelector('.find-filters');
    const all = await page.locator('.call-card').count();
    expect(all).toBe(allShipped().length);
    await page.locator('.find-filters select[name="kind"]').selectOption('complaint');
    await page.locator('.find-filters select[name="season"]').selectOption('summer');
    const few = await page.locator('.call-card').count();
    expect(few).toBeGreaterThan(0);
    expect(few).toBeLessThan(all / 2);
    await page.locator('.find-filters select[name="passed"]').selectOption('yes');
    await page.getByText('No call fits all of that.').first().waitFor();
    expect(await runAxe(page)).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });

  it('leaves the key alone where one has it so, and has it so after a reload', async () => {
    const { page, errors, close } = await openApp(WIDE);
    await page.getByRole('switch', { name: /^Key \/ / }).click();
    await page.waitForTimeout(200);
    await page.reload();
    await page.waitForSelector('.call-card');
    await page.keyboard.press('/');
    expect(await isFocused(page, '.find input')).toBe(false);
    expect(errors).toEqual([]);
    await close();
  });

  it('lists all faults, and says so where there is none of a name', async () => {
    const { page, errors, close } = await openApp({ ...WIDE, query: '#/faults/no-such' });
    await page.getByText('There is no fault of that name here.').waitFor();
    expect(await page.locator('.fault-links a').count()).toBeGreaterThan(80);
    expect(await runAxe(page)).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });
});

/** The first day of the year on which it is this call's turn. */
function dayOfCall(id: string): string {
  for (let at = Date.UTC(2031, 0, 1); ; at += 86_400_000) {
    if (callOfDay(at / 86_400_000, allShipped()) === id) return new Date(at).toISOString().slice(0, 10);
  }
}

inBrowser('the call of the day', () => {
  it('is taken like any other, and leaves a line to pass on that tells no cause', async () => {
    const { page, errors, close } = await openApp({ ...WIDE, now: `${dayOfCall(storm.id)}T23:00` });
    await page.addInitScript(() => {
      Object.defineProperty(navigator, 'clipboard', {
        value: { writeText: async (text: string) => Object.assign(window, { copied: text }) },
      });
    });
    await page.reload();
    await page.waitForSelector('[data-day]:not([disabled])');
    expect(await page.locator('.day-call').textContent()).toContain(storm.title.en);
    await page.locator('[data-day]').click();
    await page.waitForSelector('.part-chip');
    await page.goto(`${page.url().split('#')[0]}#/`);
    await takeCall(page, withPointer(page), storm);
    await page.locator('dialog[open] button[aria-disabled="false"]').click();
    await page.waitForSelector('.day-line');
    const line = await page.locator('.day-line textarea').inputValue();
    expect(line).toMatch(
      /^Underlawn, call of the day \d+ \w+ 2031: “Light on after the storm”\. Passed, \d+ of 100, \d+ min, alone\.$/,
    );
    expect(line).not.toMatch(/surge|latch|relay/i);
    await page.locator('[data-copy-line]').click();
    await page.getByText('Copied.', { exact: true }).waitFor();
    expect(await page.evaluate(() => (window as unknown as { copied: string }).copied)).toBe(line);
    expect(await runAxe(page)).toEqual([]);
    await page.locator('.brand').click();
    await page.waitForSelector('[data-day-line]');
    expect(await page.locator('.day-card').textContent()).toMatch(/Passed, best \d+/);
    await page.locator('[data-day-line]').click();
    await page.waitForSelector('.day-line');
    expect(errors).toEqual([]);
    await close();
  });

  it('selects the line where a page may not copy, and says so', async () => {
    const { page, errors, close } = await openApp({ ...WIDE, now: `${dayOfCall(storm.id)}T09:00` });
    await page.addInitScript(() => Object.defineProperty(navigator, 'clipboard', { value: undefined }));
    await page.reload();
    await takeCall(page, withPointer(page), storm);
    await page.locator('dialog[open] button[aria-disabled="false"]').click();
    await page.waitForSelector('.day-line');
    await page.locator('[data-copy-line]').click();
    await page.getByText('Could not be copied here').waitFor();
    expect(await page.evaluate(() => getSelection()?.toString())).toMatch(/^Underlawn, call of the day/);
    expect(errors).toEqual([]);
    await close();
  });

  it('leaves no line after any other call', async () => {
    const { page, errors, close } = await openApp({ ...WIDE, now: `${dayOfCall('sunny-line')}T09:00` });
    await takeCall(page, withPointer(page), storm);
    await page.locator('dialog[open] button[aria-disabled="false"]').click();
    await page.waitForSelector('.prompts');
    expect(await page.locator('.day-line').count()).toBe(0);
    expect(errors).toEqual([]);
    await close();
  });
});
