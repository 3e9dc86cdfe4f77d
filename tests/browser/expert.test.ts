import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { doStep, type PersonAtPage, withKeyboard, withPointer } from '../../src/tools/people.ts';
import { inBrowser, openApp, runAxe } from './page.ts';

const DESK = { width: 1280, height: 800 };
const PHONE = { width: 360, height: 780, touch: true };
/** Every cause is lived through first: seconds on a machine that does nothing else. */
const PATIENCE = { timeout: 200_000 };

/** Takes "Red light, dry week" to a wrong end: a needless repair, and a cause that the readings speak against. */
async function goAstray(page: Page): Promise<void> {
  const person = withPointer(page);
  await page.waitForSelector('.call-card button');
  await person.press('[data-call="sunny-line"]');
  await page.waitForSelector('.part-chip');
  const steps: [string, Readonly<Record<string, string | readonly string[]>>?][] = [
    ['ask-danger'],
    ['ask-hum'],
    ['decide-visit', { urgency: 'now', load: ['diaphragm-kit'] }],
    ['make-safe'],
    ['lock-out:compressorBreaker'],
    ['renew-diaphragms'],
    ['tee-pressure'],
    ['state-cause', { cause: ['timer-misset'] }],
    ['leave-site'],
  ];
  for (const [id, fill] of steps) await doStep(page, person, id, fill ?? {});
  await person.press('dialog[open] button[aria-disabled="false"]');
  await page.waitForSelector('.verdict-head');
}

/** Waits until the coach has its next hint ready, and asks for it. */
async function askForHint(page: Page, person: PersonAtPage): Promise<string> {
  const shown = await page.locator('.coach-hint').count();
  await page.waitForSelector('[data-coach="hint"][aria-disabled="false"]', PATIENCE);
  await person.press('[data-coach="hint"]');
  await page.waitForFunction((n) => document.querySelectorAll('.coach-hint').length > n, shown);
  return (await page.locator('.coach-hint').first().textContent()) ?? '';
}

inBrowser('the expert', () => {
  it('works out what each step of a call was worth, shows it whole on any screen, and keeps it', async () => {
    const { page, close, errors } = await openApp(DESK);
    await goAstray(page);
    await page.waitForSelector('.steps progress', PATIENCE);
    await page.waitForSelector('.steps-total', PATIENCE);
    const rows = page.locator('.steps .step');
    const rowOf = (label: string) => rows.filter({ has: page.locator('summary', { hasText: label }) });
    expect(await rows.locator('.step-label').allTextContents()).toEqual([
      'Ask whether it hums',
      // The lamp was seen on arrival.
      'Make the site safe',
      'Renew the diaphragms',
      'Pressure at the tee',
      'State the cause',
    ]);
    // The step that cost most stands open, with its minutes, its causes before and after, and the best there was.
    const mend = rowOf('Renew the diaphragms');
    expect(await mend.getAttribute('open')).not.toBeNull();
    expect(await mend.textContent()).toMatch(/Too early\s*regret \d+\smin/);
    expect(await mend.locator('.step-causes td').first().textContent()).toMatch(/^\d+% to \d+%$/);
    expect(await rowOf('State the cause').textContent()).toContain('Against the readings');
    expect(await page.locator('.steps-total').textContent()).toMatch(/\d+\smin$/);
    expect(await page.locator('.timeline .flagged').count()).toBeGreaterThan(0);
    await rowOf('Pressure at the tee').locator('summary').press('Enter');
    expect(await rowOf('Pressure at the tee').locator('.step-body').isVisible()).toBe(true);
    expect(await runAxe(page)).toEqual([]);
    await rowOf('Pressure at the tee').getByRole('button', { name: 'Show it in the replay' }).press('Enter');
    expect(await page.locator('.replay-now').textContent()).toContain('Pressure at the tee');
    expect(await page.evaluate(() => document.activeElement?.matches('.scrubber'))).toBe(true);

    await page.setViewportSize(PHONE);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(PHONE.width);
    expect(await runAxe(page)).toEqual([]);

    const fetched: string[] = [];
    page.on('request', (request) => fetched.push(request.url()));
    await page.reload();
    await page.waitForSelector('.steps-total');
    expect(await rows.count()).toBe(5);
    expect(fetched.filter((url) => url.includes('expert-worker'))).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  }, 300_000);

  it('says so where it cannot be fetched, and goes to work when asked again', async () => {
    const { page, close } = await openApp(DESK);
    await page.route('**/expert-worker*', (route) => route.abort());
    await goAstray(page);
    await page.waitForSelector('.steps-failed');
    expect(await page.locator('.steps-failed').textContent()).toContain('The score does not depend on it');
    expect(await runAxe(page)).toEqual([]);
    await page.unroute('**/expert-worker*');
    await page.getByRole('button', { name: 'Try again' }).click();
    await page.waitForSelector('.steps progress');
    await close();
  }, 120_000);
});

inBrowser('a coached call', () => {
  it('gives hints by keyboard, one rung at a time, and the likely causes; the debrief tells of the help', async () => {
    const { page, close, errors } = await openApp(DESK);
    const person = withKeyboard(page);
    await page.waitForSelector('.call-card button');
    await page.goto(`${page.url()}#/call/storm-light/coached`);
    const first = await askForHint(page, person);
    expect(first).toContain('Start from what was reported');
    expect(await page.locator('.coach-ask').textContent()).toContain('Try something first');
    await person.press('[data-coach="likely"]');
    const chances = await page.locator('.coach-likely td').allTextContents();
    expect(chances.length).toBeGreaterThan(2);
    expect(chances.every((one) => /^\d+%$/.test(one))).toBe(true);
    expect(await runAxe(page)).toEqual([]);
    await person.press('[data-action="ask-danger"]');
    expect(await askForHint(page, person)).toContain('lies best apart at');
    // The same question twice running: the coach speaks by itself.
    await person.press('[data-action="ask-hum"]');
    await page.waitForSelector('.notebook tbody tr:nth-child(2)');
    await person.press('[data-action="ask-hum"]');
    await page.waitForSelector('.coach-unasked', PATIENCE);
    await person.press('[data-action="decide-close"]');
    await page.waitForSelector('.action-form');
    await person.press('.action-form [type="submit"]');
    await person.press('dialog[open] button[aria-disabled="false"]');
    await page.waitForSelector('.verdict-head');
    expect(await page.locator('.tag', { hasText: 'help used' }).textContent()).toMatch(/^2 \/ 4/);
    expect(await page.locator('.assistance').textContent()).toMatch(/hints up to the second.*likely causes shown/);
    expect(errors).toEqual([]);
    await close();
  }, 300_000);

  it('has a word before an unsafe act, explains a breach, and goes on to a debrief that failed', async () => {
    const { page, close, errors } = await openApp(PHONE);
    const person = withKeyboard(page);
    await page.waitForSelector('.call-card button');
    await page.goto(`${page.url()}#/call/storm-light/coached`);
    await page.waitForSelector('.coach', { state: 'attached' });
    await page.locator('.group-tabs [data-group="operate"]').click();
    await person.press('[data-action="guide-reset"]');
    const dialog = page.getByRole('dialog');
    await dialog.waitFor();
    expect(await dialog.getByRole('alert').textContent()).toContain('Danger has not been asked about yet');
    expect(await runAxe(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.waitForFunction(() => document.activeElement?.matches('[data-action="guide-reset"]'));
    expect(await page.locator('.notebook tbody tr').count()).toBe(0);
    await page.keyboard.press('Enter');
    await person.press('[data-coach="sure"]');
    await page.waitForSelector('dialog.breach[open]');
    expect(await dialog.textContent()).toMatch(/before danger was asked about[\s\S]*counts as failed/);
    expect(await runAxe(page)).toEqual([]);
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.querySelector('dialog[open]') === null);
    await page.reload();
    await page.waitForSelector('.coach', { state: 'attached' });
    expect(await dialog.count()).toBe(0);
    await page.locator('.group-tabs [data-group="look"]').click();
    await person.press('[data-action="ask-danger"]');
    await page.waitForSelector('.notebook tbody tr', { state: 'attached' });
    await page.locator('.group-tabs [data-group="say"]').click();
    await person.press('[data-action="decide-close"]');
    await page.waitForSelector('.action-form');
    await person.press('.action-form [type="submit"]');
    await person.press('dialog[open] button[aria-disabled="false"]');
    await page.waitForSelector('.verdict-head');
    expect(await page.locator('.verdict-head h1').textContent()).toContain('after a skipped life-safety step');
    expect(await page.locator('.tag.bad').textContent()).toContain('Broken');
    expect(await page.locator('.tag', { hasText: 'help used' }).textContent()).toMatch(/^None/);
    expect(errors).toEqual([]);
    await close();
  }, 200_000);
});
