import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { inBrowser, openApp, runAxe } from './page.ts';

const DESK = { width: 1280, height: 800 };
const PHONE = { width: 360, height: 780, touch: true };

/** Opens the round from the first screen by keyboard, and waits until it is known whose phone rings first. */
async function openRound(page: Page): Promise<void> {
  await page.locator('.door a[href="#/round"]').focus();
  await page.keyboard.press('Enter');
  await page.waitForSelector('.lot');
  await page.waitForSelector('.lot.rings', { timeout: 240_000 });
}

/** Leaves the store as its first version made it, with a reader of Spanish. Runs in the page, before the page's own code. */
function leaveFirstStore(): void {
  indexedDB.deleteDatabase('underlawn');
  const opening = indexedDB.open('underlawn', 1);
  opening.onupgradeneeded = () => {
    const db = opening.result;
    for (const shelf of ['settings', 'progress', 'lines']) db.createObjectStore(shelf);
    for (const shelf of ['finished', 'unread']) db.createObjectStore(shelf, { autoIncrement: true });
    const settings = { version: 1, language: 'es', units: 'si', sound: false, still: true };
    opening.transaction?.objectStore('settings').put(settings, 'settings');
  };
  opening.onsuccess = () => opening.result.close();
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
    expect(errors).toEqual([]);
    await close();
  }, 400_000);

  it('folds a call closed by phone into the lot: a line in its book, and the same trouble rings a week later', async () => {
    const { page, errors, close } = await openApp(DESK);
    await openRound(page);
    const callId = (await page.locator('[data-call]').getAttribute('data-call')) ?? '';
    const [, lot] = /^round-(\d+)-0$/.exec(callId) ?? [];
    await page.locator('[data-call]').click();
    await page.waitForSelector('.part-chip');
    await page.locator('#part-phone').click();
    await page.locator('[data-action="ask-danger"]').click();
    await page.locator('[data-action="decide-close"]').click();
    await page.locator('.action-form .primary').click();
    await page.locator('dialog[open] button[aria-disabled="false"]').first().click({ timeout: 240_000 });
    await page.waitForSelector('.verdict-head');
    await page.reload();
    await page.waitForSelector('.verdict-head', { timeout: 240_000 });
    await page.locator('a[href="#/round"]').click();
    await page.waitForSelector('.lot.rings', { timeout: 240_000 });
    const card = page.locator('.lot', { has: page.locator(`#lot-${lot}`) });
    await card.locator('summary').click();
    expect(await card.locator('.lot-book li').count()).toBe(1);
    expect(await card.locator('.lot-book').textContent()).toContain('Closed by phone.');
    expect(await page.locator('[data-call]').getAttribute('data-call')).toBe(`round-${lot}-1`);
    expect(await runAxe(page)).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  }, 600_000);

  it('finds room in a browser that kept the store of an earlier version, and keeps what lay there', async () => {
    const { page, errors, close } = await openApp(DESK);
    await page.addInitScript(leaveFirstStore);
    await page.reload();
    await page.waitForSelector('html[lang="es"] .call-card');
    await openRound(page);
    expect(await page.locator('.troubles').count()).toBe(0);
    expect(errors).toEqual([]);
    await close();
  }, 400_000);
});
