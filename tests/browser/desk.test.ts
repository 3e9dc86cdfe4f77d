import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { shippedCalls } from '../../src/calls/index.ts';
import { takeCall, withKeyboard, withPointer } from '../../src/tools/people.ts';
import { inBrowser, openApp, runAxe } from './page.ts';

const call = shippedCalls().find((c) => c.id === 'storm-light');
if (!call) throw new Error('the call does not ship');

const DESK = { width: 1280, height: 800 };
const PHONE = { width: 390, height: 844, touch: true };

/** Puts values into the browser's store the way an earlier visit, or a stranger, might have left them. */
function leave(page: Page, shelf: string, key: string, value: unknown): Promise<void> {
  return page.evaluate(
    ([shelf, key, value]) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('underlawn');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const tx = opening.result.transaction(shelf, 'readwrite');
          tx.objectStore(shelf).put(value, key);
          tx.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    [shelf, key, value] as const,
  );
}

async function finishStorm(page: Page) {
  if (!call) return;
  await takeCall(page, withPointer(page), call);
  await page.locator('dialog[open] button[aria-disabled="false"]').click();
  await page.waitForSelector('.verdict-head');
}

inBrowser('the desk', () => {
  it('switches language and units everywhere, and keeps both through a reload', async () => {
    const { page, close, errors } = await openApp(DESK);
    await page.getByRole('radio', { name: 'Español' }).check();
    await page.getByRole('radio', { name: 'L, cm, kPa' }).check();
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toMatch(/^Practique/);
    await page.waitForTimeout(200);
    await page.reload();
    await page.waitForSelector('html[lang="es"] .call-card');
    expect(await page.locator('.call-card h3').first().textContent()).toBe(shippedCalls()[0]?.title.es);
    expect(await page.locator('.bar-options .pill').first().textContent()).toContain('L · cm');
    expect(errors).toEqual([]);
    await close();
  });

  it('keeps a finished call: debrief by address, best result and next-time line on the list, text version', async () => {
    const { page, close, errors } = await openApp(DESK);
    await finishStorm(page);
    const verdict = await page.locator('.verdict-head h1').textContent();
    await page.getByLabel('What comes first next time?').fill('<img src=x onerror="window.hit=1">Read the levers');
    await page.getByRole('button', { name: 'Keep this line' }).click();
    await page.getByText('Kept.', { exact: true }).waitFor();
    await page.reload();
    await page.waitForSelector('.verdict-head');
    expect(await page.locator('.verdict-head h1').textContent()).toBe(verdict);
    await page.getByRole('button', { name: 'Text version' }).click();
    expect(await page.locator('.text-version tbody tr').count()).toBeGreaterThan(10);
    expect(await runAxe(page)).toEqual([]);
    await page.locator('.brand').click();
    await page.waitForSelector('.call-card');
    const card = page.locator('.call-card', { has: page.locator('[data-call="storm-light"]') });
    expect(await card.textContent()).toMatch(/Passed, best \d+/);
    expect(await card.locator('.next-time').textContent()).toContain(
      '<img src=x onerror="window.hit=1">Read the levers',
    );
    expect(await page.evaluate(() => (window as unknown as { hit?: number }).hit)).toBeUndefined();
    expect(errors).toEqual([]);
    await close();
  });

  it('puts the notebook of a finished call on paper, with a sketch of what was seen and no more', async () => {
    const { page, close, errors } = await openApp(DESK);
    await finishStorm(page);
    await page.getByRole('link', { name: 'Print the notebook' }).press('Enter');
    const sketch = page.locator('.notebook-sketch img');
    await sketch.waitFor();
    const lines = await page.locator('.notebook-paper tbody tr').count();
    expect(lines).toBeGreaterThan(5);
    expect(await sketch.evaluate((one) => (one as HTMLImageElement).naturalWidth)).toBeGreaterThan(0);
    const english = await sketch.getAttribute('src');
    await page.locator('button[lang="es"]').click();
    await page.getByRole('button', { name: 'Imprimir' }).waitFor();
    // Its names are drawn into it: in another language it is drawn anew.
    await sketch.waitFor();
    expect(await sketch.getAttribute('src')).not.toBe(english);
    await page.reload();
    await sketch.waitFor();
    expect(await page.locator('.notebook-paper tbody tr').count()).toBe(lines);
    expect(await runAxe(page)).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });

  it('moves the replay by keyboard, and has nothing that axe finds on a phone', async () => {
    const { page, close, errors } = await openApp(PHONE);
    await page.waitForSelector('.call-card button');
    await page.goto(`${page.url()}#/call/storm-light`);
    await page.waitForSelector('.part-chip');
    for (const step of call.solution) {
      const action = page.locator(`[data-action="${step.do}"]`);
      const group = await action.evaluate((e) => e.closest('.group')?.getAttribute('data-group'));
      await page.locator(`.group-tabs [data-group="${group}"]`).click();
      await action.click();
      for (const value of Object.values(step.fill ?? {}).flat()) await page.locator(`input[value="${value}"]`).check();
      if (step.fill) await page.locator('.action-form [type="submit"]').click();
      await page.waitForFunction(
        () => !document.querySelector('.action[aria-disabled="true"]:not([aria-describedby])'),
      );
    }
    await page.locator('dialog[open] button[aria-disabled="false"]').click();
    await page.waitForSelector('.verdict-head');
    const handle = page.getByRole('slider');
    const before = await handle.getAttribute('aria-valuetext');
    await handle.press('ArrowRight');
    await handle.press('ArrowRight');
    expect(await handle.getAttribute('aria-valuetext')).not.toBe(before);
    const air = page.locator('[data-why="air"]');
    await air.locator('summary').press('Enter');
    expect(await air.locator('tr').allTextContents()).toEqual([
      expect.stringMatching(/^ ?water over the diffusers/),
      expect.stringContaining('opening of the diffusers'),
      expect.stringContaining('flow through the diffusers'),
      expect.stringContaining('Air pressure in the line'),
    ]);
    expect(await runAxe(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    expect(errors).toEqual([]);
    await close();
  });

  it('shows text of a stored title as text', async () => {
    const { page, close, errors } = await openApp(DESK);
    await page.waitForSelector('.call-card');
    const title = '<img src=x onerror="window.hit=1">';
    await leave(page, 'progress', 'storm-light', {
      version: 1,
      callId: 'storm-light',
      savedAt: 1,
      stage: 'ask',
      clock: { year: 2031, month: 5, day: 14, weekday: 2, secondOfDay: 0 },
      saved: {
        version: 1,
        callId: 'storm-light',
        mode: 'practice',
        record: {},
        now_ms: 0,
        title: { en: title, es: title },
      },
    });
    await page.reload();
    expect(await page.locator('.left-off h2').textContent()).toBe(title);
    expect(await page.evaluate(() => (window as unknown as { hit?: number }).hit)).toBeUndefined();
    expect(errors).toEqual([]);
    await close();
  });

  it('says what it could not read and goes on without it', async () => {
    const { page, close, errors } = await openApp(DESK);
    await page.waitForSelector('.call-card');
    await leave(page, 'settings', 'settings', { version: 7, language: 'tlh' });
    await leave(page, 'progress', 'storm-light', 'nonsense');
    await page.reload();
    await page.waitForSelector('.call-card');
    expect(await page.locator('.troubles').textContent()).toContain('could not be read');
    await page.getByRole('button', { name: 'Put this message away' }).click();
    expect(await page.locator('.troubles').count()).toBe(0);
    await page.reload();
    await page.waitForSelector('.call-card');
    expect(await page.locator('.troubles').count()).toBe(0);
    expect(errors).toEqual([]);
    await close();
  });

  it('works where the browser keeps nothing, and says so', async () => {
    const { page, close, errors } = await openApp(DESK);
    await page.addInitScript(() => Object.defineProperty(window, 'indexedDB', { value: undefined }));
    await page.reload();
    await page.waitForSelector('.call-card');
    expect(await page.locator('.troubles').textContent()).toContain('keeps nothing');
    await page.getByRole('button', { name: 'Put this message away' }).click();
    await finishStorm(page);
    expect(errors).toEqual([]);
    await close();
  });

  it('stops at a breach of life safety, says why at once, and leads to a debrief that failed', async () => {
    const { page, close, errors } = await openApp(DESK);
    await page.waitForSelector('.call-card button');
    await page.locator('[data-call="storm-light"]').click();
    await page.locator('[data-action="tell-open-panel"]').click();
    const dialog = page.getByRole('dialog');
    await dialog.waitFor();
    expect(await dialog.getByRole('alert').textContent()).toMatch(/panel|cover/i);
    expect(await runAxe(page)).toEqual([]);
    await dialog.locator('button[aria-disabled="false"]').click();
    await page.waitForSelector('.verdict-head');
    expect(await page.locator('.tag.bad').textContent()).toContain('Broken');
    expect(errors).toEqual([]);
    await close();
  });

  it('offers Silence beside the alarm by phone, but not before danger was asked about', async () => {
    const { page, close, errors } = await openApp(PHONE);
    const person = withKeyboard(page);
    await page.waitForSelector('.call-card button');
    await page.locator('[data-call="wash-day-light"]').click();
    await page.locator('[data-action="ask-lamp"]').click();
    await page.waitForSelector('.alarm-band');
    expect(await page.locator('.alarm-silence').count()).toBe(0);
    expect(await page.locator('[role="alert"]').textContent()).toMatch(/buzzer sounding/);
    await page.locator('[data-action="ask-danger"]').click();
    await person.press('.alarm-silence');
    await page.waitForFunction(() => !document.querySelector('.alarm-silence'));
    expect(await page.locator('.alarm-band').textContent()).toMatch(/buzzer silent/);
    expect(await page.locator('.news [role="status"]').textContent()).toMatch(/buzzer silent/);
    expect(await page.evaluate(() => document.activeElement?.closest('.alarm-band') !== null)).toBe(true);
    expect(await page.getByRole('dialog').count()).toBe(0);
    expect(await runAxe(page)).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });

  it('opens the choice of a control by keyboard, and gives the focus back at Escape', async () => {
    const { page, close, errors } = await openApp(DESK);
    await page.waitForSelector('.call-card button');
    await page.locator('[data-call="storm-light"]').click();
    await page.locator('#part-panel').click();
    await page.locator('.close-up-button').click();
    const control = page.locator('.hotspot.control[aria-haspopup="dialog"]').first();
    await control.focus();
    await page.keyboard.press('Enter');
    // The focus goes in, and back, after the frame that shows it.
    await page.waitForFunction(() => document.activeElement?.closest('.control-menu') != null);
    expect(await runAxe(page)).toEqual([]);
    await page.keyboard.press('Escape');
    const asked = await control.elementHandle();
    await page.waitForFunction((e) => !document.querySelector('.control-menu') && e === document.activeElement, asked);
    expect(errors).toEqual([]);
    await close();
  });

  it('reaches every part and every action of it by keyboard', async () => {
    const { page, close } = await openApp(DESK);
    const person = withKeyboard(page);
    await page.waitForSelector('.call-card button');
    await person.press('[data-call="storm-light"]');
    await page.waitForSelector('.part-chip');
    for (const id of ['phone', 'house', 'pump-tank', 'panel', 'compressor']) {
      await person.goTo(id);
      const wanted = await page.locator('.hand [data-action]').count();
      expect(wanted).toBeGreaterThan(0);
      const reached = new Set<string>();
      for (let i = 0; i < wanted + 12; i++) {
        await page.keyboard.press('Tab');
        reached.add(await page.evaluate(() => document.activeElement?.getAttribute('data-action') ?? ''));
      }
      reached.delete('');
      expect([id, reached.size]).toEqual([id, new Set(await actionIds(page)).size]);
      await page.locator(`#part-${id}`).focus();
    }
    await close();
  });

  it('stops and starts the clock with the space bar where no control has the focus', async () => {
    const { page, close } = await openApp(DESK);
    await page.waitForSelector('.call-card button');
    await page.locator('[data-call="storm-light"]').click();
    await page.waitForSelector('.part-chip');
    const pause = page.locator('.rates .icon-pill');
    expect(await pause.getAttribute('aria-pressed')).toBe('false');
    await page.locator('h1').focus();
    await page.keyboard.press('Space');
    expect(await pause.getAttribute('aria-pressed')).toBe('true');
    const at = await page.locator('.clock time').textContent();
    await page.waitForTimeout(1300);
    expect(await page.locator('.clock time').textContent()).toBe(at);
    await page.getByRole('button', { name: '1 min/s' }).click();
    await page.waitForFunction(
      (before) => document.querySelector('.clock time')?.textContent !== before?.slice(0, 5),
      at,
    );
    await close();
  });
});

function actionIds(page: Page): Promise<string[]> {
  return page.locator('.hand [data-action]').evaluateAll((all) => all.map((e) => e.getAttribute('data-action') ?? ''));
}
