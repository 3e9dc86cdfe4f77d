import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { inBrowser, openApp, runAxe } from './page.ts';

const PHONE = { width: 360, height: 780, touch: true };

/** Opens the round from the first screen by keyboard, and waits until it is known whose phone rings first. */
async function openRound(page: Page): Promise<void> {
  await page.locator('.round-link a').focus();
  await page.keyboard.press('Enter');
  await page.waitForSelector('.lot');
  await page.waitForSelector('.lot.rings', { timeout: 240_000 });
}

inBrowser('the round', () => {
  it('lives to the first ring, takes that call by keyboard, keeps it, and is there again after a reload', async () => {
    const { page, errors, close } = await openApp(PHONE);
    await openRound(page);
    expect(await page.locator('.lot').count()).toBe(12);
    expect(await page.locator('.week').count()).toBe(53);
    expect(await page.locator('.lot.rings').count()).toBe(1);
    expect(await runAxe(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(PHONE.width);
    const now = await page.locator('.round-now').textContent();
    await page.reload();
    await page.waitForSelector('.lot.rings');
    expect(await page.locator('.round-now').textContent()).toBe(now);
    const callId = await page.locator('[data-call]').getAttribute('data-call');
    await page.locator('[data-call]').focus();
    await page.keyboard.press('Enter');
    await page.waitForURL(new RegExp(`#/call/${callId}$`));
    await page.waitForSelector('[data-action="ask-danger"], .part-strip');
    expect(await runAxe(page)).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  }, 400_000);
});
