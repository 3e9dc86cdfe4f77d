import { expect, it } from 'vitest';
import { type CallFile, shippedCalls } from '../../src/calls/index.ts';
import { fileText, linkOf } from '../../src/share/index.ts';
import { doStep, takeCall, withPointer } from '../../src/tools/people.ts';
import { inBrowser, openApp, runAxe } from './page.ts';

const DESK = { width: 1280, height: 800 };
const PHONE = { width: 390, height: 844, touch: true };

const shipped = shippedCalls().find((c) => c.id === 'storm-light') as CallFile;
const call: CallFile = { ...shipped, id: 'my-storm', title: { en: 'My storm', es: 'Mi tormenta' } };

async function fragmentOf(file: CallFile): Promise<string> {
  const link = await linkOf(file);
  if (!link.ok) throw new Error('too long');
  return link.fragment;
}

const file = (text: string) => ({ name: 'call.json', mimeType: 'application/json', buffer: Buffer.from(text) });

inBrowser('a call from elsewhere', () => {
  it('is taken from its link, goes on after a reload, and comes to its debrief and its record', async () => {
    const { page, url, close, errors } = await openApp({ ...DESK, query: await fragmentOf(call) });
    await page.getByText('1 call is ready to be taken.').waitFor();
    expect(await page.locator('.call-card h3').allTextContents()).toEqual(['My storm']);
    expect(await runAxe(page)).toEqual([]);
    const person = withPointer(page);
    await takeCall(page, person, call, 3);
    await page.waitForTimeout(200);
    await page.reload();
    await page.waitForSelector('.part-chip');
    expect(await page.locator('.subtitle').textContent()).toBe('My storm');
    expect(await page.locator('.notebook tbody tr').count()).toBeGreaterThanOrEqual(3);
    for (const step of call.solution.slice(3)) await doStep(page, person, step.do, step.fill ?? {});
    await page.locator('dialog[open] button[aria-disabled="false"]').click();
    await page.waitForSelector('.verdict-head');
    await page.reload();
    await page.waitForSelector('.verdict-head');
    const [download] = await Promise.all([page.waitForEvent('download'), page.locator('[data-keep-record]').click()]);
    expect(download.suggestedFilename()).toBe('my-storm.record.json');
    await page.locator('.brand').click();
    const card = page.locator('.brought-calls .call-card');
    await card.waitFor();
    expect(await card.textContent()).toMatch(/Passed, best \d+.*From a link/);
    expect(await runAxe(page)).toEqual([]);
    // Another edition under the same id waits for a word, and begins with a clean sheet.
    await page.goto(`${url.split('#')[0]}#/take`);
    await page.locator('input[type="file"]').setInputFiles(file(fileText({ ...call, pass: 80 })));
    await page.locator('.other-edition .primary').click();
    await page.waitForSelector('.other-edition', { state: 'detached' });
    expect(await card.textContent()).toMatch(/Not taken yet.*From a file/);
    await card.getByRole('button', { name: 'Take off the list' }).click();
    await page.locator('[data-drop]').click();
    await card.waitFor({ state: 'detached' });
    expect(errors).toEqual([]);
    await close();
  });

  it('is refused with what is wrong with it and a way on', async () => {
    const fragment = await fragmentOf(call);
    const { page, close, errors } = await openApp({ ...PHONE, query: `${fragment.slice(0, -40)}` });
    await page.locator('.refused').waitFor();
    expect(await page.locator('.refused').textContent()).toMatch(/damaged: it was cut off/);
    const bad = { ...call, story: { en: '<img src=x onerror="window.hit=1">', es: 'x' }, household: 7 };
    await page.locator('input[type="file"]').setInputFiles(file(JSON.stringify(bad)));
    await page.getByText('What to mend in it').waitFor();
    expect(await page.locator('.refused li').allTextContents()).toEqual([
      expect.stringMatching(/^story\.en .*angle bracket/),
      expect.stringMatching(/^household .*write a string/),
    ]);
    expect(await runAxe(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await page.getByRole('link', { name: 'To all calls' }).click();
    await page.waitForSelector('.start .call-card');
    expect(errors).toEqual([]);
    await close();
  });

  it('has a sheet for the trainee, and one for the trainer behind a warning, each on one page', async () => {
    const { page, url, close, errors } = await openApp({ ...DESK, query: '#/sheet/storm-light/trainee' });
    const pages = async () => (await page.pdf({ format: 'Letter' })).toString('latin1').match(/\/Type\s*\/Page\b/g);
    await page.waitForSelector('.paper.trainee');
    expect(await runAxe(page)).toEqual([]);
    expect(await pages()).toHaveLength(1);
    await page.goto(`${url.split('#')[0]}#/sheet/storm-light/trainer`);
    await page.getByRole('heading', { name: 'This shows the cause' }).waitFor();
    expect(await page.locator('main').textContent()).not.toContain(shipped.story.en);
    expect(await runAxe(page)).toEqual([]);
    await page.locator('[data-reveal]').click();
    await page.waitForSelector('.paper.trainer');
    expect(await page.locator('main').textContent()).toContain(shipped.story.en);
    expect(await runAxe(page)).toEqual([]);
    expect(await pages()).toHaveLength(1);
    expect(errors).toEqual([]);
    await close();
  });
});
