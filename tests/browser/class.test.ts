import { readFileSync } from 'node:fs';
import { beforeAll, expect, it } from 'vitest';
import { makeRecord, play, prepareCall, shippedCalls } from '../../src/calls/index.ts';
import type { CallRecord } from '../../src/calls/schema.ts';
import { inBrowser, openApp, runAxe } from './page.ts';

const DESK = { width: 1440, height: 900 };
/** Every cause is lived through first: seconds on a machine that does nothing else. */
const PATIENCE = { timeout: 200_000 };
const PHONE = { width: 390, height: 844, touch: true };

inBrowser('the sheet of a class', () => {
  let good: CallRecord;
  let poor: CallRecord;
  beforeAll(() => {
    const call = shippedCalls().find(({ id }) => id === 'sunny-line');
    if (call === undefined) throw new Error('the call does not ship');
    good = makeRecord(play(prepareCall(call), 'solution'));
    poor = makeRecord(play(prepareCall(call), 'reset-only'));
  });

  const file = (name: string, record: unknown) => ({
    name,
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(record)),
  });
  const files = () => [
    file('K.M..json', good),
    file('17.json', poor),
    file('J.P..json', { ...poor, claims: { ...poor.claims, passed: true, score: 100 } }),
    file('A.B..json', { ...good, engine: '3' }),
  ];

  it('is replayed, shows who passed and what does not count, takes names, opens debriefs and is taken along', async () => {
    const { page, errors, close } = await openApp(DESK);
    await page.locator('.door a[href="#/class"]').click();
    await page.getByRole('heading', { name: 'Class', level: 1 }).waitFor();
    expect(await runAxe(page)).toEqual([]);
    await page.locator('[data-choose="files"]').setInputFiles(files());
    await page.getByText('4 records replayed. On the sheet: 2 that count, 2 that do not.').waitFor();
    const rows = page.locator('.class-sheet tbody tr');
    expect(await rows.locator('input').evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value))).toEqual(
      ['17', 'K.M.'],
    );
    expect(await rows.nth(0).textContent()).toMatch(/^Not passed.*flag.*0 of 1$/);
    expect(await rows.nth(1).textContent()).toMatch(/^Passed.*1 of 1$/);
    const refused = await page.locator('.class-refused li').allTextContents();
    expect(refused).toEqual([
      expect.stringMatching(/^J\.P\..*The record claims/),
      expect.stringMatching(/^A\.B\..*made with engine 3/),
    ]);
    expect(await page.locator('.class-missed').allTextContents()).toEqual([
      expect.stringContaining('Decision by phone'),
      expect.stringContaining('closed by phone'),
    ]);
    await page.locator('.class-records summary').click();
    await page.locator('.class-list').waitFor();
    expect(await page.locator('.class-list tbody tr').count()).toBe(4);
    expect(await runAxe(page)).toEqual([]);

    await rows.nth(0).locator('input').fill('=B2');
    await rows.nth(0).locator('input').press('Enter');
    // The row has another place now, and still the focus.
    await page.waitForFunction(() => (document.activeElement as HTMLInputElement | null)?.value === '=B2');
    const [download] = await Promise.all([page.waitForEvent('download'), page.locator('[data-csv]').click()]);
    const csv = readFileSync(await download.path(), 'utf8').split('\r\n');
    expect(csv[0]).toMatch(/,regret_min$/);
    expect(csv.map((line) => line.split(',').slice(0, 4).join(','))).toEqual([
      '\uFEFFwho,call,state,passed',
      "'=B2,sunny-line,counts,false",
      'K.M.,sunny-line,counts,true',
      'A.B.,sunny-line,other engine,',
      'J.P.,sunny-line,refused,',
      '',
    ]);

    await rows.nth(1).locator('.class-verdict').click();
    await page.locator('.verdict-head').waitFor();
    expect(await page.locator('.subtitle').textContent()).toContain('Handed in by K.M.');
    expect(await runAxe(page)).toEqual([]);
    await page.getByRole('link', { name: 'To the sheet' }).click();
    await rows.first().waitFor();
    expect(await rows.count()).toBe(2);
    // It lives in the page alone, and is on nobody's shelf.
    await page.reload();
    await page.getByRole('heading', { name: 'Class', level: 1 }).waitFor();
    expect(await rows.count()).toBe(0);
    await page.locator('.brand').click();
    await page.locator('.call-card').first().waitFor();
    expect(await page.locator('.call-card', { hasText: /best/ }).count()).toBe(0);
    expect(errors).toEqual([]);
    await close();
  });

  it('gets the regret of each record by and by, can be stopped and go on, and knows a record again', async () => {
    const { page, errors, close } = await openApp({ ...DESK, query: '#/class' });
    const experts: string[] = [];
    page.on('worker', (worker) => void (/expert/.test(worker.url()) && experts.push(worker.url())));
    const rows = page.locator('.class-sheet tbody tr');
    const button = page.locator('.class-regret button');
    const choose = () => page.locator('[data-choose="files"]').setInputFiles(files());
    await choose();
    await button.press('Enter');
    expect(await button.textContent()).toBe('Go on');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Go on');
    expect(await page.locator('.class-progress').textContent()).toContain('Stopped. Regret of 0 of 2');
    expect(await runAxe(page)).toEqual([]);

    // What its debrief works out, the sheet has too.
    await rows.nth(0).locator('.class-verdict').click();
    await page.locator('.steps-total').waitFor(PATIENCE);
    await page.getByRole('link', { name: 'To the sheet' }).click();
    await page.locator('.class-progress', { hasText: 'Stopped. Regret of 1 of 2' }).waitFor();
    expect(await rows.nth(0).textContent()).toMatch(/regret 0\smin/);
    await button.press('Enter');
    await page.getByText('The regret of every record that counts is known.').waitFor(PATIENCE);
    const regret = /regret (\d+\smin)/.exec((await rows.nth(1).textContent()) ?? '')?.[1];
    expect(regret).toBeDefined();
    expect(await page.locator('.class-missed').last().textContent()).toMatch(/^\d+\smin/);
    expect(await runAxe(page)).toEqual([]);

    // What the sheet worked out, its debrief has at once; and a record that is chosen again is known.
    const before = experts.length;
    expect(before).toBeGreaterThan(0);
    await rows.nth(1).locator('.class-verdict').click();
    await page.locator('.steps-total').waitFor();
    expect(await page.locator('.steps-total').textContent()).toBe(`Regret in all: ${regret}`);
    await page.getByRole('link', { name: 'To the sheet' }).click();
    await page.getByRole('button', { name: 'Empty the sheet' }).click();
    await choose();
    await page.getByText('The regret of every record that counts is known.').waitFor();
    expect(await rows.nth(1).textContent()).toContain(regret);
    expect(experts.length).toBe(before);
    expect(errors).toEqual([]);
    await close();
  }, 400_000);

  it('can be read on a phone, and in Spanish', async () => {
    const { page, errors, close } = await openApp({ ...PHONE, query: '#/class', locale: 'es-MX' });
    await page.locator('[data-choose="files"]').setInputFiles(files());
    await page.getByText('4 registros repetidos.').waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    expect(await runAxe(page)).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });
});
