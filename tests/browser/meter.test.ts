import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { shippedCalls } from '../../src/calls/index.ts';
import { doStep, type PersonAtPage, takeCall, withKeyboard, withPointer } from '../../src/tools/people.ts';
import { inBrowser, openApp, runAxe } from './page.ts';

const call = shippedCalls().find((c) => c.id === 'sunny-line');
if (!call) throw new Error('the call does not ship');

const DESK = { width: 1440, height: 900 };
const PHONE = { width: 390, height: 844, touch: true };
/** By then one stands in the yard. */
const STEPS_TO_SITE = 8;
/** Target size (minimum) of WCAG 2.2, success criterion 2.5.8, CSS pixels. */
const LEAST_TARGET = 24;

/** Takes the call as far as the panel of a site that was made safe, on a wide window, and shows it in another. */
async function atPanel(page: Page, window: { width: number; height: number }): Promise<PersonAtPage> {
  if (!call) throw new Error('no call');
  const person = withPointer(page);
  await page.setViewportSize(DESK);
  await takeCall(page, person, call, STEPS_TO_SITE);
  await doStep(page, person, 'make-safe', {});
  await page.locator('.rates .icon-pill').click();
  await person.goTo('panel');
  await page.setViewportSize(window);
  return person;
}

async function open(page: Page, action: string): Promise<void> {
  const tab = page.locator('.group-tabs [data-group="measure"]');
  if (await tab.isVisible()) await tab.click();
  await page.locator(`[data-action="${action}"]`).click();
  await page.waitForSelector('.board');
}

const terminal = (id: string) => `[data-terminal="${id}"]`;
const READ = '.action-form [type="submit"]';

/** What the display shows after a press of Read. */
async function display(page: Page): Promise<string> {
  await page.waitForSelector(`${READ}[aria-disabled="false"]`);
  return ((await page.locator('.lcd .digits').textContent()) ?? '').replace(/^[^:]*:\s*/, '');
}

const SUPPLY = /^1(1[6-9]|20)\.\d\sV$/;

inBrowser('the meter at the panel', () => {
  it('reads the volts between two terminals that were chosen by keyboard alone', async () => {
    const { page, close, errors } = await openApp(DESK);
    await atPanel(page, DESK);
    const keys = withKeyboard(page);
    await keys.press('[data-action="meter-volts"]');
    await page.waitForSelector('.board');
    await keys.press(terminal('line'));
    await page.keyboard.press('ArrowRight');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-terminal'))).toBe('neutral');
    await page.keyboard.press('Enter');
    for (const name of ['line in, L, Red probe', 'neutral, N, Black probe']) {
      expect(await page.getByRole('button', { name, exact: true, pressed: true }).count()).toBe(1);
    }
    await keys.press(READ);
    expect(await display(page)).toMatch(SUPPLY);
    expect(await page.locator('.lcd .where').textContent()).toMatch(/line in, L – neutral, N$/);
    expect(await page.locator('.notebook tbody tr').first().textContent()).toMatch(/Volts/);
    // The meter stays in the hand, and the lists say the same as the drawing.
    await keys.press('.meter-lists summary');
    expect(await page.locator('input[name="red"]:checked').getAttribute('value')).toBe('line');
    expect(await runAxe(page)).toEqual([]);
    await keys.press('.action-form .secondary');
    await page.waitForFunction(() => document.activeElement?.getAttribute('data-action') === 'meter-volts');
    expect(errors).toEqual([]);
    await close();
  });

  it('is worked by finger on a phone, with targets that a finger hits, and says why it cannot read', async () => {
    const { page, close, errors } = await openApp(PHONE);
    await atPanel(page, PHONE);
    await open(page, 'meter-volts');
    await page.locator(READ).tap();
    expect(await page.locator('.meter-side [role="alert"]').textContent()).toMatch(/both probes/);
    await page.locator(terminal('pumpBreaker.load')).tap();
    await page.locator(terminal('motor.2')).tap();
    await page.locator(READ).tap();
    expect(await display(page)).toMatch(SUPPLY);
    // Changing over one probe alone: it is told to move next.
    await page.locator('.probe[data-probe="red"]').tap();
    await page.locator(terminal('splice.1')).tap();
    await page.locator(READ).tap();
    await page.waitForSelector('.meter-side .error');
    expect(await page.locator('.meter-side .error').textContent()).toMatch(/pump tank lid/);
    const sizes = await page.locator('[data-terminal]').evaluateAll((all) =>
      all.map((e) => {
        const { width, height } = e.getBoundingClientRect();
        return Math.min(width, height);
      }),
    );
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(LEAST_TARGET);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(PHONE.width);
    expect(await runAxe(page)).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });

  it('closes a clamp by pointer or by its list, and is fetched only when one is wanted', async () => {
    const { page, close, errors } = await openApp(DESK);
    await atPanel(page, DESK);
    const fetched = () =>
      page.evaluate(() => performance.getEntriesByType('resource').filter(({ name }) => /work-/.test(name)).length);
    expect(await fetched()).toBe(0);
    await open(page, 'clamp-amps');
    expect(await fetched()).toBeGreaterThan(0);
    await page.locator(terminal('compressor')).click();
    await page.locator(READ).click();
    // A compressor of some 95 W.
    expect(await display(page)).toMatch(/^(0\.[5-9]|1\.[01])\sA$/);
    await page.locator('.meter-lists summary').click();
    await page.locator('input[name="conductor"][value="control"]').check();
    await page.locator(READ).click();
    await page.waitForFunction(() => /control tap/.test(document.querySelector('.lcd .where')?.textContent ?? ''));
    expect(await runAxe(page)).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });

  it('ends the call where ohms are tried on a circuit that is not locked out', async () => {
    const { page, close, errors } = await openApp(DESK);
    await atPanel(page, DESK);
    await open(page, 'meter-ohms');
    await page.locator(terminal('motor.1')).click();
    await page.locator(terminal('motor.2')).click();
    await page.locator(READ).click();
    const dialog = page.getByRole('dialog');
    await dialog.waitFor();
    expect(await dialog.getByRole('alert').textContent()).toMatch(/locked out/);
    expect(errors).toEqual([]);
    await close();
  });
});
