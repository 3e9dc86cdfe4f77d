import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { type CallFile, shippedCalls } from '../../src/calls/index.ts';
import { type PersonAtPage, withKeyboard, withPointer } from '../../src/tools/people.ts';
import { inBrowser, openApp, runAxe } from './page.ts';

const DESK = { width: 1280, height: 800 };
const PHONE = { width: 360, height: 780, touch: true };

/** The call that comes second in the course, of the family of the first. */
const SECOND = shippedCalls()[1] as CallFile;

/** What the coach's card says to do, as it reads. */
async function readNext(page: Page) {
  const step = page.locator('.coach-led');
  return {
    label: (await step.locator('.coach-led-step').textContent()) ?? '',
    answers: await step
      .locator('dl > div')
      .evaluateAll((all) => all.flatMap((one) => [...one.querySelectorAll('dd')].map((dd) => dd.textContent ?? ''))),
  };
}

/** Finds what was read among the buttons and answers that are on the page, and does it. */
async function doNext(page: Page, person: PersonAtPage): Promise<void> {
  const { label, answers } = await readNext(page);
  const notes = await page.locator('.notebook tbody tr').count();
  if (await page.locator('.coach-way').count()) await person.press('.coach-way');
  const ids = await page
    .locator('.hand .action')
    .evaluateAll(
      (all, wanted) =>
        all
          .filter((one) => one.querySelector('.action-label')?.textContent === wanted)
          .map((one) => one.getAttribute('data-action')),
      label,
    );
  await person.press(`[data-action="${ids[0]}"]`);
  if (answers.length > 0) {
    await page.waitForSelector('.action-form');
    const fields = await page.locator('.action-form .option').evaluateAll(
      (all, wanted) =>
        all
          .filter((one) => wanted.some((answer) => one.textContent?.trim() === answer))
          .map((one) => ({
            name: one.querySelector('input')?.name ?? '',
            value: one.querySelector('input')?.value ?? '',
          })),
      answers,
    );
    for (const { name, value } of fields) await person.choose(name, value);
    await person.press('.action-form button[type="submit"]');
  }
  await page.waitForFunction(
    (before) =>
      document.querySelectorAll('.notebook tbody tr').length > before || document.querySelector('dialog[open]'),
    notes,
  );
}

/** What was fetched of the expert so far. */
function expertFetched(page: Page): string[] {
  const fetched: string[] = [];
  page.on('request', (request) => {
    if (request.url().includes('expert-worker')) fetched.push(request.url());
  });
  return fetched;
}

const isOver = (page: Page) => page.locator('dialog[open]').isVisible();

inBrowser('a call that one is led through', () => {
  it('is passed by doing what the card says, asks for a thought before a check, and starts no expert', async () => {
    const { page, close, errors } = await openApp(DESK);
    const expert = expertFetched(page);
    const person = withPointer(page);
    await page.waitForSelector('.call-card');
    await page.goto(`${page.url()}#/call/sunny-line/led-whole`);
    await page.waitForSelector('.coach-led');
    expect(await runAxe(page)).toEqual([]);
    const thoughts: string[] = [];
    while (!(await isOver(page))) {
      const { label } = await readNext(page);
      if (await page.locator('.coach-question').count()) thoughts.push(label);
      if (label === 'State the cause') expect(await runAxe(page)).toEqual([]);
      await doNext(page, person);
    }
    expect(thoughts).toEqual(['Listen at the housing', 'Pressure at the tee', 'Follow the air line']);
    expect(expert).toEqual([]);
    await person.press('dialog[open] button[aria-disabled="false"]');
    await page.waitForSelector('.verdict-head');
    expect(await page.locator('.verdict-head').textContent()).toMatch(/Passed\./);
    expect(await page.locator('.tag', { hasText: 'help used' }).textContent()).toMatch(/^Led/);
    expect(await page.locator('.assistance').textContent()).toContain('led through the whole call');
    expect(errors).toEqual([]);
    await close();
  }, 200_000);

  it('is followed by one of its family that is led a stretch less far, and then coached, by keyboard', async () => {
    const { page, close, errors } = await openApp(DESK);
    const expert = expertFetched(page);
    const person = withKeyboard(page);
    await page.waitForSelector('.call-card');
    const next = page.locator('.call-card.next');
    expect(await next.locator('.primary').textContent()).toContain('Walk me through');
    await person.press('.call-card.next .primary');
    await page.waitForSelector('.coach-led');
    while (!(await isOver(page))) await doNext(page, person);
    await person.press('dialog[open] button[aria-disabled="false"]');
    await page.waitForSelector('.verdict-head');
    await page.locator('.brand').click();
    await page.waitForSelector('.call-card');
    expect(await next.locator('h3').textContent()).toBe(SECOND.title.en);
    expect(await next.locator('.primary').textContent()).toContain('Lead me to the cause');
    expert.length = 0;
    await person.press('.call-card.next .primary');
    await page.waitForSelector('.coach-led');
    while (await page.locator('.coach-led').count()) {
      expect(expert).toEqual([]);
      await doNext(page, person);
      await page.waitForFunction(
        () => !document.querySelector('.action[aria-disabled="true"]:not([aria-describedby])'),
      );
    }
    expect(await page.locator('.notebook tbody tr').first().textContent()).toContain('Watched 5');
    expect(await page.locator('.coach [role="status"]').textContent()).toContain('From here on it is yours');
    await page.waitForSelector('.coach-ready progress, [data-coach="hint"]');
    expect(expert).toHaveLength(1);
    // A reload comes back to where the rest is the trainee's.
    await page.reload();
    await page.getByText('From here on it is yours').waitFor();
    expect(errors).toEqual([]);
    await close();
  }, 200_000);

  it('tells the next step over the cards on a phone, and leads to its part', async () => {
    const { page, close, errors } = await openApp(PHONE);
    await page.waitForSelector('.call-card');
    await page.locator('.call-card.next .other-ways summary').click();
    expect(await page.locator('.call-card.next .other-ways a').allTextContents()).toEqual([
      'Lead me to the cause',
      'Lead me on the phone',
      'Take it with a coach',
    ]);
    expect(await runAxe(page)).toEqual([]);
    await page.getByRole('link', { name: 'Lead me on the phone' }).click();
    await page.waitForSelector('.coach-word .led');
    expect(await page.locator('.coach-word .led').textContent()).toBe('Next: Ask about danger (Phone)');
    await page.locator('#part-house').click();
    await page.locator('.tabs button', { hasText: 'Coach' }).click();
    expect(await runAxe(page)).toEqual([]);
    await page.locator('.coach-way', { hasText: 'Go to: Phone' }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('part-phone');
    expect(await page.locator('[data-action="ask-danger"]').isVisible()).toBe(true);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(PHONE.width);
    expect(errors).toEqual([]);
    await close();
  });
});
