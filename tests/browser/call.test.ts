import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { loadRecord, prepareCall, replay, shippedCalls } from '../../src/calls/index.ts';
import { type PersonAtPage, takeCall, withKeyboard, withPointer } from '../../src/tools/people.ts';
import { inBrowser, openApp, runAxe } from './page.ts';

const call = shippedCalls().find((c) => c.id === 'sunny-line');
if (!call) throw new Error('the call does not ship');
const prepared = prepareCall(call);

type Opened = Awaited<ReturnType<typeof openApp>>;

/** From the closed call to its debrief, and the record out of it as a file, replayed here in Node. */
async function debriefAndRecord({ page }: Opened, person: PersonAtPage) {
  await person.press('dialog[open] button[aria-disabled="false"]');
  await page.waitForSelector('.verdict-head');
  const download = page.waitForEvent('download');
  await person.press('[data-keep-record]');
  const path = await (await download).path();
  const loaded = loadRecord(readFileSync(path, 'utf8'));
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.problems));
  return replay(prepared, loaded.value);
}

inBrowser('the split air line', () => {
  it('is taken to a pass by keyboard alone, and its record replays in Node to the same digest', async () => {
    const app = await openApp({ width: 1280, height: 800 });
    const person = withKeyboard(app.page);
    await takeCall(app.page, person, call);
    const again = await debriefAndRecord(app, person);
    expect(again.firstDifference).toBeUndefined();
    expect(again.ok).toBe(true);
    expect(await app.page.locator('.verdict-head').textContent()).toMatch(/passed/i);
    expect(again.score).toBeGreaterThanOrEqual(90);
    expect(app.errors).toEqual([]);
    await app.close();
  });

  it('is taken to a pass by pointer on a phone', async () => {
    const app = await openApp({ width: 390, height: 844, touch: true });
    const person = phonePerson(app);
    await takeCall(app.page, person, call);
    const again = await debriefAndRecord(app, person);
    expect(again.firstDifference).toBeUndefined();
    expect(again.score).toBeGreaterThanOrEqual(90);
    expect(app.errors).toEqual([]);
    await app.close();
  });

  it('is taken to a pass by pointer on a desk', async () => {
    const app = await openApp({ width: 1280, height: 800 });
    const person = withPointer(app.page);
    await takeCall(app.page, person, call);
    const again = await debriefAndRecord(app, person);
    expect(again.ok).toBe(true);
    await app.close();
  });

  it('loses nothing by a reload in mid-call', async () => {
    const app = await openApp({ width: 1280, height: 800 });
    const person = withPointer(app.page);
    await takeCall(app.page, person, call, 10);
    const pause = app.page.locator('.rates .icon-pill');
    await pause.click();
    await app.page.waitForTimeout(300);
    const seen = async () => ({
      notes: await app.page.locator('.notebook tbody tr').allTextContents(),
      spent: await app.page.locator('.spent').textContent(),
      stages: await app.page.locator('.stages li').allTextContents(),
    });
    const before = await seen();
    expect(before.notes.length).toBeGreaterThan(8);
    await app.page.reload();
    await app.page.waitForSelector('.notebook tbody tr');
    expect(await seen()).toEqual(before);
    await app.close();
  });
});

inBrowser('each screen', () => {
  for (const size of [
    { width: 1280, height: 800 },
    { width: 390, height: 844, touch: true },
  ]) {
    it(`has nothing that axe finds at ${size.width} pixels`, async () => {
      const app = await openApp(size);
      await app.page.waitForSelector('.call-card button');
      expect(await runAxe(app.page)).toEqual([]);
      const person = size.touch ? phonePerson(app) : withPointer(app.page);
      await takeCall(app.page, person, call, 4);
      expect(await runAxe(app.page)).toEqual([]);
      await person.goTo('panel');
      expect(await runAxe(app.page)).toEqual([]);
      await app.close();
    });
  }
});

/** On a phone the cards are tabs and the groups of actions too: the person opens what is wanted first. */
function phonePerson({ page }: Opened): PersonAtPage {
  const person = withPointer(page);
  return {
    ...person,
    async press(selector) {
      const target = page.locator(selector).first();
      if (await target.isVisible()) return target.click();
      const group = await target.evaluate((e) => e.closest('.group')?.getAttribute('data-group') ?? null);
      if (group !== null) await page.locator(`.group-tabs [data-group="${group}"]`).click();
      await target.click();
    },
  };
}
