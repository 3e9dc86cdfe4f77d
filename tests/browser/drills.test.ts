import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { shippedLibrary } from '../../src/calls/index.ts';
import type { Answer, Skill } from '../../src/quiz/drill.ts';
import { drill } from '../../src/quiz/index.ts';
import { inBrowser, openApp, runAxe } from './page.ts';

const SEED = 3;
const DESK = { width: 1280, height: 800, query: `#/drills/${SEED}` };
const PHONE = { width: 360, height: 740, touch: true, query: `#/drills/${SEED}` };

const units = [...shippedLibrary().units.values()].sort((a, b) => (a.id < b.id ? -1 : 1));

/** One skill of each kind of asking and of each kind of figure. */
const SKILLS: readonly Skill[] = [
  'floats',
  'air-line',
  'jar',
  'panel',
  'meter',
  'rising',
  'place',
  'chlorine',
  'limits',
];

/** Right answer of the n-th question of the set with the seed, from 0. */
function rightAnswer(skill: Skill, n: number): Answer {
  const unit = units[(SEED + n) % units.length];
  if (!unit) throw new Error('no units ship');
  const { ask } = drill(skill, SEED + n, unit);
  return ask.kind === 'number' ? Number(ask.value.toFixed(ask.decimals)) : ask.right;
}

/** Focuses something by the tabulator alone. */
async function tabTo(page: Page, selector: string): Promise<void> {
  for (let i = 0; i < 60; i++) {
    if (await page.evaluate((s) => document.activeElement?.matches(s) ?? false, selector)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`the tabulator does not reach ${selector}`);
}

/** Moves each thing up to its place, the first one first. */
async function putInOrder(page: Page, ids: readonly string[]): Promise<void> {
  for (const [place, id] of ids.entries()) {
    const button = page.locator(`[data-move="up ${id}"]`);
    await button.focus();
    for (let i = 0; i < ids.length; i++) {
      const at = await button.evaluate((one) =>
        [...document.querySelectorAll('.order-item')].indexOf(one.closest('li') as Element),
      );
      if (at <= place) break;
      await page.keyboard.press('Enter');
      // The focus goes with what moves.
      expect(await button.evaluate((one) => document.activeElement === one)).toBe(true);
    }
  }
  await tabTo(page, '.confirm-order');
}

async function answerByKey(page: Page, answer: Answer): Promise<void> {
  if (typeof answer === 'number') {
    await tabTo(page, '.number-answer input');
    await page.keyboard.type(String(answer));
  } else if (typeof answer === 'object') {
    await putInOrder(page, answer);
  } else {
    await tabTo(page, `[data-option="${answer}"]`);
  }
  await page.keyboard.press('Enter');
  await page.waitForSelector('.told');
}

inBrowser('the drills', () => {
  it('open from the start page, and one is done by keyboard to its count, which is kept', async () => {
    const { page, close, errors } = await openApp({ width: 1280, height: 800 });
    await page.waitForSelector('.call-card');
    await tabTo(page, '.door a[href="#/drills"]');
    await page.keyboard.press('Enter');
    await page.waitForSelector('.skill-card');
    // The same address with a seed gives the questions that the test knows.
    await page.goto(page.url().replace(/#.*/, DESK.query));
    await page.waitForSelector('.skill-card');
    await tabTo(page, '.skill-card [data-skill="panel"]');
    await page.keyboard.press('Enter');
    await page.waitForSelector('#drill-prompt');
    // The question is read first.
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('drill-prompt');
    await answerByKey(page, rightAnswer('panel', 0));
    expect(await page.locator('.told').textContent()).toContain('Right');
    // The way on has the focus; a number among the answers answers too.
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.querySelector('.drill-number')?.textContent?.endsWith('2'));
    await tabTo(page, '.drill-option');
    const wrong = await page
      .locator('.drill-option')
      .evaluateAll(
        (all, right) => all.findIndex((one) => one.getAttribute('data-option') !== right),
        rightAnswer('panel', 1),
      );
    await page.keyboard.press(String(wrong + 1));
    await page.waitForSelector('.told.wrong');
    expect(await page.locator('.drill-option.right').getAttribute('data-option')).toBe(rightAnswer('panel', 1));
    await tabTo(page, '.end-drill');
    await page.keyboard.press('Enter');
    await page.waitForSelector('.end-count');
    expect(await page.locator('h1').textContent()).toBe('1 of 2 right');
    expect(await page.locator('.end-next h2').textContent()).toContain('Read a panel');
    await page.reload();
    await page.waitForSelector('.skill-card');
    const card = page.locator('.skill-card', { has: page.locator('[data-skill="panel"]') });
    await card.getByText('Last: 1 of 2 right').waitFor();
    expect(await card.textContent()).toContain('Next for you');
    expect(errors).toEqual([]);
    await close();
  });

  it.each(SKILLS)(
    '%s: nothing that axe finds, before and after the answer, on a phone and in Spanish',
    async (skill) => {
      const { page, close, errors } = await openApp({ ...PHONE, locale: 'es-MX' });
      await page.waitForSelector('.skill-card');
      expect(await runAxe(page)).toEqual([]);
      await page.locator(`.skill-card [data-skill="${skill}"]`).click();
      await page.waitForSelector('#drill-prompt');
      expect(await runAxe(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
      await answerByKey(page, rightAnswer(skill, 0));
      expect(await page.locator('.told').textContent()).toContain('Correcto');
      expect(await runAxe(page)).toEqual([]);
      await page.locator('.end-drill').click();
      await page.waitForSelector('.end-count');
      expect(await runAxe(page)).toEqual([]);
      expect(errors).toEqual([]);
      await close();
    },
  );

  it('a part is pointed at in the plan too, and a wrong one is told from the right one', async () => {
    const { page, close, errors } = await openApp(DESK);
    await page.waitForSelector('.skill-card');
    await page.locator('[data-skill="place"]').click();
    await page.waitForSelector('.plan-mark');
    const right = String(rightAnswer('place', 0));
    const wrong = right === 'panel' ? 'house' : 'panel';
    await page.locator(`.plan-mark[data-part="${wrong}"]`).click();
    await page.waitForSelector('.told.wrong');
    expect(await page.locator('.plan-mark.right').getAttribute('data-part')).toBe(right);
    expect(await page.locator('.plan-mark.wrong').getAttribute('data-part')).toBe(wrong);
    expect(await page.locator('.drill-option.right').getAttribute('data-option')).toBe(right);
    // What is answered is answered.
    await page.locator(`.plan-mark[data-part="${right}"]`).click();
    expect(await page.locator('.told.wrong').count()).toBe(1);
    expect(errors).toEqual([]);
    await close();
  });

  it('a number shows its tolerance at once, its way and its source only once it is answered', async () => {
    const { page, close, errors } = await openApp(DESK);
    await page.waitForSelector('.skill-card');
    await page.locator('[data-skill="load"]').click();
    await page.waitForSelector('.number-answer');
    expect(await page.locator('.tolerance').textContent()).toMatch(/^Up to [\d.]+ lb\/day off still counts\.$/);
    expect(await page.locator('.worked, .drill-source').count()).toBe(0);
    await answerByKey(page, rightAnswer('load', 0));
    expect(await page.locator('.told').textContent()).toContain('Right');
    expect(await page.locator('.worked li').count()).toBeGreaterThan(0);
    expect(await page.locator('.drill-source').textContent()).toContain('Source: ');
    expect(errors).toEqual([]);
    await close();
  });

  it('the clock runs while a question is open, stands while one reads, ends after the last answer, and may be off', async () => {
    const { page, close } = await openApp(DESK);
    await page.clock.install();
    await page.reload();
    await page.waitForSelector('.skill-card');
    await page.locator('[data-skill="panel"]').click();
    const left = () => page.locator('.time-left').textContent();
    await page.clock.runFor(30_000);
    expect(await left()).toContain('1:30');
    await answerByKey(page, rightAnswer('panel', 0));
    await page.clock.runFor(60_000);
    expect(await left()).toContain('1:30');
    await page.locator('.next-question').click();
    await page.getByRole('switch').uncheck();
    await page.clock.runFor(300_000);
    expect(await page.locator('.time-left').count()).toBe(0);
    await page.getByRole('switch').check();
    expect(await left()).toContain('1:30');
    await page.clock.runFor(100_000);
    expect(await page.locator('.up').textContent()).toContain('Time is up');
    await answerByKey(page, rightAnswer('panel', 1));
    await page.locator('.next-question').click();
    await page.waitForSelector('.end-count');
    expect(await page.locator('h1').textContent()).toBe('2 of 2 right');
    await close();
  });

  it('brings the shelf of the drills to a store of the first version, and loses nothing of it', async () => {
    const { page, url, close, errors } = await openApp({ width: 1280, height: 800 });
    await page.waitForSelector('.call-card');
    const settings = { version: 1, language: 'es', units: 'si', sound: false, still: true };
    const line = { version: 1, callId: 'storm-light', toldMost: '', costMost: '', nextTime: 'Leer las palancas' };
    // On a page of the same origin that has no app in it, the store is made anew as the first version made it.
    const empty = new URL('empty.html', url).href;
    await page.route(empty, (route) => route.fulfill({ contentType: 'text/html', body: '<p>' }));
    await page.goto(empty);
    await page.evaluate(
      ([settings, line]) =>
        new Promise<void>((resolve, reject) => {
          indexedDB.deleteDatabase('underlawn').onsuccess = () => {
            const opening = indexedDB.open('underlawn', 1);
            opening.onerror = () => reject(opening.error);
            opening.onupgradeneeded = () => {
              const db = opening.result;
              for (const shelf of ['settings', 'progress', 'lines']) db.createObjectStore(shelf);
              for (const shelf of ['finished', 'unread']) db.createObjectStore(shelf, { autoIncrement: true });
              opening.transaction?.objectStore('settings').put(settings, 'settings');
              opening.transaction?.objectStore('lines').put(line, 'storm-light');
              opening.transaction?.objectStore('unread').put({ shelf: 'lines', key: 'x', value: 1 });
            };
            opening.onsuccess = () => {
              opening.result.close();
              resolve();
            };
          };
        }),
      [settings, line] as const,
    );
    await page.goto(url);
    await page.waitForSelector('html[lang="es"] .call-card');
    expect(await page.locator('.next-time').textContent()).toContain('Leer las palancas');
    const found = await page.evaluate(
      () =>
        new Promise<{ version: number; shelves: string[]; unread: number }>((resolve) => {
          const opening = indexedDB.open('underlawn');
          opening.onsuccess = () => {
            const db = opening.result;
            const counting = db.transaction('unread').objectStore('unread').count();
            counting.onsuccess = () => {
              resolve({ version: db.version, shelves: [...db.objectStoreNames], unread: counting.result });
              db.close();
            };
          };
        }),
    );
    expect(found.version).toBe(8);
    expect(found.shelves).toEqual([
      'brought',
      'cards',
      'drafts',
      'drills',
      'exam',
      'finished',
      'holders',
      'lines',
      'moments',
      'progress',
      'round',
      'settings',
      'unread',
    ]);
    expect(found.unread).toBe(1);
    expect(await page.locator('.troubles').count()).toBe(0);
    expect(errors).toEqual([]);
    await close();
  });
});
