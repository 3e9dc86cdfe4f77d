import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { type CallFile, shippedVisits } from '../../src/calls/index.ts';
import { doStep, takeCall, withKeyboard } from '../../src/tools/people.ts';
import { inBrowser, openApp, runAxe } from './page.ts';

const visit = shippedVisits().find(({ id }) => id === 'three-years-on') as CallFile;
const DESK = { width: 1280, height: 900 };

/** The visit's own solution with other answers in its record. */
function writing(other: Readonly<Record<string, string>>): CallFile {
  const solution = visit.solution.map((step) =>
    step.do === 'write-record' ? { do: step.do, fill: { ...step.fill, ...other } } : step,
  );
  return { ...visit, solution };
}

inBrowser('a routine visit', () => {
  it('is made by keyboard to a right record, which prints on one page and is saved as JSON and as CSV', async () => {
    const app = await openApp(DESK);
    const { page } = app;
    const person = withKeyboard(page);
    const record = visit.solution.findIndex((step) => step.do === 'write-record');
    await takeCall(page, person, visit, record);
    expect(await page.locator('.checklist li:not(.done)').count()).toBe(0);
    expect(await runAxe(page)).toEqual([]);
    for (const step of visit.solution.slice(record)) await doStep(page, person, step.do, step.fill ?? {});
    await person.press('dialog[open] button[aria-disabled="false"]');
    await page.waitForSelector('.decisions');
    expect(await page.locator('.verdict-head').textContent()).toMatch(/A visit well made/);
    expect(await page.locator('.decisions .bad').count()).toBe(0);
    expect(await runAxe(page)).toEqual([]);
    await person.press('.decisions a');
    await page.waitForSelector('.service-record');
    expect(await page.locator('.service-record .not-taken').count()).toBe(0);
    expect(await runAxe(page)).toEqual([]);
    for (const format of ['Letter', 'A4']) {
      const paper = (await page.pdf({ format })).toString('latin1');
      expect(paper.match(/\/Type \/Page[^s]/g)).toHaveLength(1);
    }
    const saved = async (kind: string) => {
      const download = page.waitForEvent('download');
      await person.press(`[data-save="${kind}"]`);
      return readFileSync(await (await download).path(), 'utf8');
    };
    expect(JSON.parse(await saved('json')).record['due-trash']).toEqual(['due.before-next']);
    expect(await saved('csv')).toContain('record,due-trash,,,due.before-next,\r\n');
    expect(app.errors).toEqual([]);
    await app.close();
  });

  it('is made by keyboard to a wrong record, and told which decision was wrong and why', async () => {
    const app = await openApp(DESK);
    const { page } = app;
    const person = withKeyboard(page);
    await takeCall(page, person, writing({ 'due-trash': 'no' }));
    await person.press('dialog[open] button[aria-disabled="false"]');
    await page.waitForSelector('.decisions');
    expect(await page.locator('.verdict-head').textContent()).toMatch(/decided wrongly/);
    const wrong = page.locator('.decisions li', { has: page.locator('.bad') });
    expect(await wrong.count()).toBe(1);
    expect(await wrong.textContent()).toMatch(/Pump out the trash tank.*left alone, 11\d% in four months/);
    expect(app.errors).toEqual([]);
    await app.close();
  });

  it('fits a phone, from its card to its record', async () => {
    const app = await openApp({ width: 390, height: 844, touch: true, locale: 'es-US' });
    const { page } = app;
    await page.locator(`[data-call="${visit.id}"]`).click();
    await page.locator('.tabs button').first().click();
    await page.waitForSelector('.checklist');
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    expect(await runAxe(page)).toEqual([]);
    expect(app.errors).toEqual([]);
    await app.close();
  });
});
