import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { loadRecord, prepareCall, replay, shippedCalls } from '../../src/calls/index.ts';
import { inBrowser, openApp, runAxe } from './page.ts';

const DESK = { width: 1000, height: 640 };
const PHONE = { width: 390, height: 844, touch: true };
const CALL = 'mower-passed';
const call = shippedCalls().find(({ id }) => id === CALL);
if (!call) throw new Error('the call does not ship');
const prepared = prepareCall(call);

/** A trainer's window beside the trainee's. */
async function trainersWindow(page: Page, errors: string[]): Promise<Page> {
  const desk = await page.context().newPage();
  desk.on('pageerror', (error) => errors.push(String(error)));
  desk.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  await desk.goto(new URL('./#/instructor', page.url()).href);
  await desk.locator('.clock-hand').waitFor();
  return desk;
}

/** Presses an action of the trainee's, also one that answers why it cannot be done. */
async function press(page: Page, id: string): Promise<void> {
  await page.locator(`[data-action="${id}"]`).evaluate((one) => (one as HTMLElement).click());
}

const notes = (page: Page) => page.locator('.notebook tbody tr').count();
const noted = (page: Page, n: number) =>
  page.waitForFunction((n) => document.querySelectorAll('.notebook tbody tr').length === n, n);

inBrowser('an instructor’s desk beside a call', () => {
  it('stops the clock, marks a moment, drops a fault in over hours, goes back, takes it out; the record shows it all', async () => {
    const { page, errors, close } = await openApp({ ...DESK, query: `#/call/${CALL}` });
    const problems = [...errors];
    await page.waitForSelector('[data-action="ask-danger"]');
    const desk = await trainersWindow(page, problems);
    await press(page, 'ask-danger');
    await desk.locator('.deeds li.trainee').waitFor();
    expect(await desk.locator('.last-deed [role="status"]').textContent()).toContain('Ask about danger');
    await desk.locator('.works canvas').waitFor();
    expect(await runAxe(desk)).toEqual([]);

    await desk.locator('[data-hand="freeze"]').click();
    await page.locator('.trainer-band', { hasText: 'stopped the clock' }).waitFor();
    expect(await page.locator('.rates button').first().isDisabled()).toBe(true);
    expect(await page.locator('[data-action="ask-hum"]').getAttribute('aria-disabled')).toBe('true');
    expect(await page.getByText('The trainer has stopped the clock.').first().isVisible()).toBe(true);
    expect(await runAxe(page)).toEqual([]);
    const before = await notes(page);

    await desk.locator('.mark-moment input').fill('by phone');
    await desk.locator('[data-hand="moment"]').click();
    await desk.locator('.moment-list', { hasText: 'by phone' }).waitFor();
    await desk.locator('.seek-fault input').fill('tank leaks');
    await desk.locator('input[value="tank-leaks"]').check();
    await desk.locator('.severity input').fill('80');
    await desk.locator('.drop-in input[value="over"]').check();
    await desk.locator('[data-hours="in"]').fill('2');
    await desk.locator('[data-hand="drop-in"]').click();
    await desk.locator('[data-out="tank-leaks"]').waitFor();
    // Nothing of it is told.
    expect(await page.locator('.news').textContent()).not.toMatch(/leak/i);
    expect(await notes(page)).toBe(before);

    await desk.locator('[data-hand="go"]').click();
    await page.waitForFunction(() => document.querySelector('.rates button')?.matches(':enabled'));
    await press(page, 'ask-hum');
    await noted(page, before + 1);
    await desk.locator('.faults-there', { hasText: /growing to 80/ }).waitFor();
    await desk.locator('[data-back]').click();
    await page.locator('.trainer-band', { hasText: 'taken the call back to' }).waitFor();
    await noted(page, before);
    await desk.locator('.deeds .undone').waitFor();
    expect(await desk.locator('[data-out="tank-leaks"]').count()).toBe(0);

    // Loaded anew in the middle of it, the call is as it was, and is found again.
    await page.reload();
    await page.locator('.trainer-band', { hasText: 'taken the call back to' }).waitFor();
    expect(await notes(page)).toBe(before);
    await desk.locator('[data-out="compressor-unplugged"]').click();
    await desk.locator('.faults-there', { hasText: 'Nothing is broken' }).waitFor();
    await press(page, 'ask-hum');
    await noted(page, before + 1);
    await press(page, 'decide-close');
    for (const box of await page.locator('.action-form input').all()) await box.check();
    await page.locator('.action-form [type="submit"]').click();
    await page.locator('dialog.end[open] button[aria-disabled="false"]').click();
    await page.locator('.taught', { hasText: 'moment “by phone”' }).waitFor();
    await desk.getByText('The call is over.').waitFor();

    const [download] = await Promise.all([page.waitForEvent('download'), page.locator('[data-keep-record]').click()]);
    const record = loadRecord(readFileSync(await download.path(), 'utf8'));
    if (!record.ok) throw new Error('no record');
    const again = replay(prepared, record.value);
    expect(again.firstDifference).toBeUndefined();
    expect(record.value.actions.map((one) => one.do)).toEqual([
      'ask-danger',
      ...['teach-freeze', 'teach-moment', 'teach-fault-in', 'teach-go', 'ask-hum', 'teach-back'],
      ...['teach-fault-out', 'ask-hum', 'decide-close'],
    ]);

    await page.close();
    await desk.getByText('The trainee’s window is gone.').waitFor();
    expect(problems).toEqual([]);
    await close();
  });

  it('begins a call there from a moment that was kept, and stands behind a key in the trainee’s own window', async () => {
    const { page, errors, close } = await openApp({ ...PHONE, query: `#/call/${CALL}`, locale: 'es-MX' });
    await page.waitForSelector('[data-action="ask-danger"]', { state: 'attached' });
    await page.keyboard.press('Alt+Shift+KeyI');
    const sheet = page.locator('.instructor-sheet');
    await sheet.locator('.mark-moment input').fill('al empezar');
    await sheet.locator('[data-hand="moment"]').click();
    await sheet.locator('[data-keep]').click();
    await sheet.locator('[data-take-up]').waitFor();
    expect(await runAxe(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(PHONE.width);
    await page.keyboard.press('Escape');
    await sheet.waitFor({ state: 'detached' });
    await press(page, 'ask-danger');
    await page.waitForFunction(() => document.querySelectorAll('.notebook tbody tr').length > 0);
    await page.keyboard.press('Alt+Shift+KeyI');
    await sheet.locator('[data-take-up]').click();
    await sheet.locator('[data-hand="sure"]').click();
    await page.waitForFunction(() => document.querySelectorAll('.notebook tbody tr').length === 0);
    await page.waitForSelector('[data-action="ask-danger"]', { state: 'attached' });
    // A clock that was stopped does not stand for ever once the trainer is gone.
    await sheet.locator('[data-hand="freeze"]').click();
    await page.locator('.trainer-band', { hasText: 'ha parado el reloj' }).waitFor();
    await page.keyboard.press('Escape');
    await page.locator('.trainer-band button').click();
    await page.waitForFunction(() => document.querySelector('.rates button')?.matches(':enabled'));
    expect(errors).toEqual([]);
    await close();
  });
});
