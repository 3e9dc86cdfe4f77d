import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { type CallFile, shippedCalls } from '../../src/calls/index.ts';
import { takeCall, withPointer } from '../../src/tools/people.ts';
import { inBrowser, openApp, runAxe } from './page.ts';

const DESK = { width: 1280, height: 800 };
const PHONE = { width: 390, height: 844, touch: true };
const CALL = '#/call/storm-light';

function storm(): CallFile {
  const call = shippedCalls().find(({ id }) => id === 'storm-light');
  if (call === undefined) throw new Error('the call does not ship');
  return call;
}

/** Takes the call by so many steps, and stops its clock. */
async function takeSteps(page: Page, steps: number): Promise<readonly string[]> {
  await takeCall(page, withPointer(page), storm(), steps);
  await page.locator('.rates .icon-pill').click();
  return notesOf(page);
}

async function notesOf(page: Page): Promise<readonly string[]> {
  await page.waitForSelector('.notebook tbody tr');
  return page.locator('.notebook tbody tr').allTextContents();
}

/** A second tab on the same store. */
async function secondTab(page: Page, hash: string): Promise<Page> {
  const tab = await page.context().newPage();
  await tab.goto(new URL(`./${hash}`, page.url()).href);
  return tab;
}

const asked = (page: Page) => page.locator('[data-action="ask-smell"]').click();

/** All that the page keeps, out of the file it hands over. */
async function copyOf(page: Page): Promise<{ readonly path: string; readonly copy: Record<string, unknown[]> }> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: /Keep a copy|Guardar una copia/ }).click();
  const path = await (await download).path();
  return { path, copy: JSON.parse(readFileSync(path, 'utf8')) };
}

/** Makes a store as its n-th version made it, with one entry on each shelf. Runs in the page, before its own code. */
function leaveVersion(version: number): void {
  indexedDB.deleteDatabase('underlawn');
  const opening = indexedDB.open('underlawn', version);
  opening.onupgradeneeded = () => {
    const db = opening.result;
    for (const shelf of ['settings', 'progress', 'lines']) db.createObjectStore(shelf);
    for (const shelf of ['finished', 'unread']) db.createObjectStore(shelf, { autoIncrement: true });
    if (version > 1) db.createObjectStore('drills', { autoIncrement: true });
    if (version > 2) db.createObjectStore('round');
    if (version > 3) db.createObjectStore('brought');
    if (version > 4) db.createObjectStore('holders');
    if (version > 5) db.createObjectStore('drafts', { autoIncrement: true });
    if (version > 6) db.createObjectStore('moments', { autoIncrement: true });
    const at = (shelf: string) => opening.transaction?.objectStore(shelf);
    const title = { en: 'Night', es: 'Noche' };
    const saved = { version: 1, callId: 'storm-light', mode: 'practice', record: { engine: '1' }, now_ms: 0, title };
    const clock = { year: 2031, month: 5, day: 14, weekday: 2, secondOfDay: 0 };
    const settings = { version: 1, language: 'es', units: 'si', sound: false, still: true };
    at('settings')?.put(settings, 'settings');
    at('progress')?.put({ version: 1, callId: 'storm-light', savedAt: 1, stage: 'ask', clock, saved }, 'storm-light');
    at('finished')?.put({ version: 1, callId: 'storm-light', finishedAt: 1, score: 70, passed: false, saved });
    at('lines')?.put({ version: 1, callId: 'storm-light', toldMost: '', costMost: '', nextTime: 'x' }, 'storm-light');
    if (version > 1) {
      at('drills')?.put({ version: 1, skill: 'jar', finishedAt: 1, asked: 3, right: 2, median_s: 4 });
    }
    const round = { engine: '1', lots: [] };
    if (version > 2) at('round')?.put(version > 4 ? { version: 1, savedAt: 0, kept: round } : round, 'round');
    if (version > 3) {
      const card = { id: 'my-call', title, summary: title, kind: 'alarm', unit: 'u1', lot: title, minutes: 9 };
      const starts = { secondOfDay: 1, month: 1 };
      at('brought')?.put({ version: 1, card: { ...card, starts }, text: '{}', from: 'link', broughtAt: 1 }, 'my-call');
    }
    if (version > 5) at('drafts')?.put({ version: 1, savedAt: 1, draft: {} });
    const from = { version: 1, callId: 'storm-light', savedAt: 1, stage: 'ask', clock, saved };
    if (version > 6) at('moments')?.put({ version: 1, name: 'here', keptAt: 1, from });
  };
  opening.onsuccess = () => opening.result.close();
}

/** Opens the store as a page of a later version would, and tells what lies on a shelf of it. */
function openNewer(page: Page): Promise<{ version: number; settings: unknown }> {
  return page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('underlawn', 99);
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const asked = db.transaction('settings').objectStore('settings').get('settings');
          asked.onsuccess = () => {
            resolve({ version: db.version, settings: asked.result });
            db.close();
          };
        };
      }),
  );
}

inBrowser('the store of the browser', () => {
  it.each([1, 2, 3, 4, 6, 7])('of version %i is taken over with all that lay in it', async (version) => {
    const { page, errors, close } = await openApp(DESK);
    await page.addInitScript(leaveVersion, version);
    await page.reload();
    await page.waitForSelector('html[lang="es"] .call-card');
    const { copy } = await copyOf(page);
    expect(copy.settings).toMatchObject([{ language: 'es', units: 'si', sound: false, still: true }]);
    expect(copy.progress).toMatchObject([{ callId: 'storm-light', savedAt: 1 }]);
    expect(copy.finished).toMatchObject([{ score: 70 }]);
    expect(copy.lines).toMatchObject([{ nextTime: 'x' }]);
    expect(copy.drills).toHaveLength(version > 1 ? 1 : 0);
    expect(copy.round).toEqual(version > 2 ? [{ version: 1, savedAt: 0, kept: { engine: '1', lots: [] } }] : []);
    expect(copy.brought).toHaveLength(version > 3 ? 1 : 0);
    expect(copy.drafts).toHaveLength(version > 5 ? 1 : 0);
    expect(copy.moments).toHaveLength(version > 6 ? 1 : 0);
    expect([copy.cards, copy.exam]).toEqual([[], []]);
    expect(copy.unread).toEqual([]);
    expect(await page.locator('.troubles').count()).toBe(0);
    expect(errors).toEqual([]);
    await close();
  });

  it('keeps a call of another engine, and says why it cannot go on with it', async () => {
    const { page, close } = await openApp(DESK);
    await page.addInitScript(leaveVersion, 4);
    await page.reload();
    await page.locator('[data-call="storm-light"]').click();
    await page.getByText(/Underlawn más antiguo/).waitFor();
    await page.waitForSelector('.left-off');
    expect((await copyOf(page)).copy.progress).toHaveLength(1);
    await close();
  });

  it('of a newer page is not touched, and the page can be used without it', async () => {
    const { page, errors, close } = await openApp(DESK);
    await page.waitForSelector('.call-card');
    await page.getByRole('radio', { name: 'L, cm, kPa' }).check();
    await openNewer(page);
    await page.reload();
    await page.getByText(/holds data of a newer Underlawn/).waitFor();
    await page.getByRole('radio', { name: 'Español' }).check();
    await takeSteps(page, 2);
    expect(await openNewer(page)).toMatchObject({ version: 99, settings: { language: 'en', units: 'si' } });
    expect(errors).toEqual([]);
    await close();
  });

  it('is let go of when a newer page is opened beside, with a word, and the screen does not go empty', async () => {
    const { page, errors, close } = await openApp(DESK);
    await takeSteps(page, 2);
    await openNewer(page);
    await page.getByText(/Reload this tab/).waitFor();
    await asked(page);
    await page.waitForFunction(() => document.querySelectorAll('.notebook tbody tr').length === 3);
    await page.locator('.brand').click();
    await page.waitForSelector('.left-off');
    expect(errors).toEqual([]);
    await close();
  });

  it('that an older tab does not let go of is not waited for, and left as it is', async () => {
    const { page, errors, close } = await openApp(DESK);
    await page.addInitScript(() => {
      indexedDB.deleteDatabase('underlawn');
      indexedDB.open('underlawn', 1);
    });
    await page.reload();
    await page.getByText(/store did not open/).waitFor();
    await takeSteps(page, 1);
    expect(errors).toEqual([]);
    await close();
  });

  it('says when the disk is full, goes on, and keeps all of it once there is room', async () => {
    const { page, errors, close } = await openApp(DESK);
    await page.waitForSelector('.call-card');
    const devtools = await page.context().newCDPSession(page);
    const { origin } = new URL(page.url());
    await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
    await takeSteps(page, 2);
    await page.getByText(/refused to keep the latest state/).waitFor();
    await devtools.send('Storage.overrideQuotaForOrigin', { origin });
    await asked(page);
    await page.waitForFunction(() => document.querySelectorAll('.notebook tbody tr').length === 3);
    await page.waitForFunction(() => document.querySelector('.troubles') === null);
    const before = await notesOf(page);
    await page.reload();
    expect(await notesOf(page)).toEqual(before);
    expect(errors).toEqual([]);
    await close();
  });
});

inBrowser('a call in two tabs', () => {
  it('is open in one of them: the other says so, takes it over with all that was done, and it can be taken back', async () => {
    const { page, errors, close } = await openApp(DESK);
    const before = await takeSteps(page, 2);
    const second = await secondTab(page, CALL);
    await second.getByRole('heading', { name: 'Open in another tab' }).waitFor();
    expect(await runAxe(second)).toEqual([]);
    await second.getByRole('button', { name: 'Take it over' }).click();
    expect(await notesOf(second)).toEqual(before);
    await page.getByRole('heading', { name: 'Taken over in another tab' }).waitFor();
    await asked(second);
    await second.waitForFunction(() => document.querySelectorAll('.notebook tbody tr').length === 3);
    const after = await notesOf(second);
    await page.getByRole('button', { name: 'Take it back' }).click();
    expect(await notesOf(page)).toEqual(after);
    await second.getByRole('heading', { name: 'Taken over in another tab' }).waitFor();
    await second.getByRole('link', { name: 'Back to the calls' }).click();
    await second.waitForSelector('.left-off');
    expect(errors).toEqual([]);
    await close();
  });

  it('and so is the round', async () => {
    const { page, errors, close } = await openApp({ ...DESK, query: '#/round' });
    await page.waitForSelector('.lot');
    const second = await secondTab(page, '#/round');
    await second.getByRole('heading', { name: 'Open in another tab' }).waitFor();
    await second.getByRole('button', { name: 'Take it over' }).click();
    await page.getByRole('heading', { name: 'Taken over in another tab' }).waitFor();
    await second.waitForSelector('.lot');
    expect(errors).toEqual([]);
    await close();
  });

  it('is let go of when it is left, or its tab is gone', async () => {
    const { page, errors, close } = await openApp(DESK);
    const before = await takeSteps(page, 2);
    await page.locator('.brand').click();
    await page.waitForSelector('.left-off');
    const second = await secondTab(page, CALL);
    expect(await notesOf(second)).toEqual(before);
    await second.close();
    await page.locator('.left-off button').click();
    expect(await notesOf(page)).toEqual(before);
    expect(errors).toEqual([]);
    await close();
  });

  it('is told to whoever loses it even where the browser has no locks, and nothing that was seen done is lost', async () => {
    const { page, errors, close } = await openApp(DESK);
    await page.context().addInitScript(() => Object.defineProperty(navigator, 'locks', { value: undefined }));
    await page.reload();
    const before = await takeSteps(page, 2);
    const second = await secondTab(page, CALL);
    expect(await notesOf(second)).toEqual(before);
    await asked(page);
    await page.getByRole('heading', { name: 'Taken over in another tab' }).waitFor();
    await asked(second);
    await second.waitForFunction(() => document.querySelectorAll('.notebook tbody tr').length === 3);
    expect(errors).toEqual([]);
    await close();
  });
});

inBrowser('a copy of all that is kept', () => {
  it('is brought back into another browser, where the call goes on as it was left', async () => {
    const from = await openApp(DESK);
    await from.page.getByRole('radio', { name: 'L, cm, kPa' }).check();
    const before = await takeSteps(from.page, 3);
    await from.page.locator('.brand').click();
    await from.page.waitForSelector('.left-off');
    const { path } = await copyOf(from.page);
    await from.page.getByText(/It holds the settings, 1 call left half way/).waitFor();
    const to = await openApp(PHONE);
    await to.page.waitForSelector('.call-card');
    const choose = to.page.locator('.copy-part input[type="file"]');
    const said = to.page.locator('.copy-part [role="status"]');
    await choose.setInputFiles(path);
    await said.getByText(/Brought back: the settings, 1 call left half way/).waitFor();
    expect(await to.page.getByRole('radio', { name: 'L, cm, kPa' }).isChecked()).toBe(true);
    expect(await runAxe(to.page)).toEqual([]);
    expect(await to.page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(PHONE.width);
    await choose.setInputFiles(path);
    await said.getByText(/is here already/).waitFor();
    await to.page.locator('.left-off button').click();
    await to.page.waitForSelector('.notebook tbody tr', { state: 'attached' });
    expect(await to.page.locator('.notebook tbody tr').allTextContents()).toEqual(before);
    expect([...from.errors, ...to.errors]).toEqual([]);
    await from.close();
    await to.close();
  });

  it('that is none is refused by name and place, and changes nothing', async () => {
    const { page, errors, close } = await openApp(DESK);
    await page.waitForSelector('.call-card');
    const choose = page.locator('.copy-part input[type="file"]');
    const file = (value: unknown) => ({
      name: 'mine.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(value)),
    });
    await choose.setInputFiles(file({ kind: 'underlawn-record' }));
    await page.getByText(/mine\.json is not a copy/).waitFor();
    const settings = [{ version: 1, language: 'es', units: 'us', sound: true, still: 'no' }];
    await choose.setInputFiles(file({ kind: 'underlawn-copy', version: 1, settings }));
    await page.getByText(/mine\.json: settings\.0\.still should be true or false/).waitFor();
    expect(await page.locator('html').getAttribute('lang')).toBe('en');
    await page.getByRole('button', { name: 'Keep a copy' }).click();
    await page.getByText('There is nothing to copy yet.').waitFor();
    expect(errors).toEqual([]);
    await close();
  });
});
