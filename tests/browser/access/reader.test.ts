/** What a screen reader says, in order, from the page's own tree; and a call taken by nothing else. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { type CallFile, shippedCalls } from '../../../src/calls/index.ts';
import { ENGLISH, SPANISH } from '../../unit/spoken.ts';
import { inBrowser, openApp } from '../page.ts';
import { listen, type Reader } from './reader.ts';

const DESK = { width: 1440, height: 900 };
const STORM = shippedCalls().find(({ id }) => id === 'storm-light') as CallFile;

/** Does a step of a call by what is said alone. */
async function doByEar(page: Page, reader: Reader, step: CallFile['solution'][number]): Promise<string[]> {
  const before = await page.locator('.notebook tbody tr').count();
  const label = await page.locator(`[data-action="${step.do}"] .action-label`).textContent();
  await reader.press(`button, ${label}`);
  for (const value of Object.values(step.fill ?? {}).flat()) {
    await page.waitForSelector(`input[value="${value}"]`);
    const option = (
      await page.locator('.option', { has: page.locator(`input[value="${value}"]`) }).textContent()
    )?.trim();
    await reader.press(new RegExp(`^(radio|checkbox), ${option}`));
  }
  if (step.fill) await reader.press('button, Do it');
  await page.waitForFunction(
    (n) => document.querySelectorAll('.notebook tbody tr').length > n || document.querySelector('dialog[open]'),
    before,
  );
  return reader.told();
}

/** What is spoken between two phrases, without the marks of where something ends. */
function between(phrases: readonly string[], from: RegExp, to: RegExp): string[] {
  const first = phrases.findIndex((one) => from.test(one));
  const last = phrases.findIndex((one, i) => i > first && to.test(one));
  expect([first >= 0, last >= 0]).toEqual([true, true]);
  return phrases.slice(first, last).filter((one) => !one.startsWith('end of '));
}

/** Phrases that begin like this, in the order in which they are spoken, without the beginning. */
function named(phrases: readonly string[], kind: RegExp): string[] {
  return phrases.flatMap((one) => (kind.test(one) ? one.replace(kind, '') : []));
}

/** From the house to the field, then the dry parts. */
const IN_FLOW = [
  ...['House', 'Clean-out', 'Trash tank', 'Aeration chamber', 'Clarifier', 'Disinfection', 'Pump tank', 'Disc filter'],
  ...['Spray field', 'Panel', 'Compressor and air line'],
];

/** Texts of the page that are English and nothing else. */
const ONLY_ENGLISH = (() => {
  const spanish = new Set(Object.values(SPANISH.texts));
  // The name of the language itself stays as it is.
  return new Set(
    Object.values(ENGLISH.texts).filter(
      (text) => ![...'{}'].some((sign) => text.includes(sign)) && !spanish.has(text) && text !== 'English',
    ),
  );
})();

/** What the page has spoken, without the words that the reader itself has for what something is. */
function itsOwn(phrases: readonly string[]): string[] {
  return phrases.map((one) =>
    one.replace(/^(end of )?[a-z ]+, /, '').replace(/(, (not )?[a-z]+| level \d| position \d+)+$/, ''),
  );
}

inBrowser('a screen reader', () => {
  it('takes a call by phone from its first word to its debrief, and hears each answer once', async () => {
    const { page, errors, close } = await openApp({ ...DESK, query: '#/call/storm-light' });
    await page.waitForSelector('canvas');
    const reader = await listen(page);
    const screen = await reader.read();
    // Where one is, what can be done there, and what was read, in this order.
    const heads = named(screen, /^heading, /).map((one) => one.replace(/, level/, ''));
    expect(heads).toEqual([
      ...['Light on after the storm 1', 'Call sheet 2', 'Phone 2', 'Look and listen 3', 'Operate 3', 'Say 3'],
      ...['Notebook 2', 'My suspects 2'],
    ]);
    expect(named(between(screen, /^group, In the picture/, /^button, Farther/), /^button, /)).toEqual(
      IN_FLOW.map((part) => `${part}, not pressed`),
    );
    expect(named(between(screen, /^navigation, Parts/, /^status/), /^button, /)).toEqual([
      'Phone here, current item',
      ...IN_FLOW.map((part) => expect.stringMatching(new RegExp(`^(\\d )?${part} , not seen yet, not current item$`))),
    ]);
    expect(screen[screen.indexOf('status') + 1]).toBe('Nothing new.');

    const told: string[] = [];
    for (const step of STORM.solution) {
      const news = await doByEar(page, reader, step);
      // One message for one action; only the alarm breaks in.
      const polite = news.filter((one) => one.startsWith('polite'));
      expect([step.do, polite.length]).toEqual([step.do, 1]);
      for (const one of news) if (one.startsWith('assertive')) expect(one).toBe('assertive: lamp lit, buzzer silent');
      told.push(...polite);
    }
    expect(told).toEqual([
      'polite: Danger: no sewage out, nothing burning or wet, nobody hurt',
      expect.stringMatching(/^polite: What happened: “There was a thunderstorm/),
      'polite: Compressor: hums',
      'polite: Breakers: alarm on, compressor on, pump on',
      'polite: Reset: lamp dark, buzzer silent · alarm lamp goes out',
      'polite: Watched 5 min: lamp dark, buzzer silent',
      'polite: Decision: closed by phone',
    ]);
    await page.waitForSelector('dialog[open] button[aria-disabled="false"]');
    const end = await reader.read('dialog[open]');
    expect(named(end, /^heading, /)).toEqual(['The call is closed, level 2']);
    await reader.press('button, To the debrief');
    await page.waitForSelector('.verdict-head');
    expect(named(await reader.read('main'), /^heading, /)[0]).toBe('The trouble is over, level 1');
    expect(errors).toEqual([]);
    await close();
  });

  it('has the yard in words: each part in the order of the water, what is known of it and when, and the way to it', async () => {
    const { page, errors, close } = await openApp({ ...DESK, query: '#/call/storm-light' });
    await page.waitForSelector('.part-chip');
    const reader = await listen(page);
    for (const step of STORM.solution.slice(0, 4)) await doByEar(page, reader, step);
    await reader.press('button, In words');
    await page.waitForSelector('.yard-words');
    const words = await reader.read('.yard-words');
    expect(named(words, /^heading, (\d )?/)).toEqual([
      'The yard in words, level 2',
      ...IN_FLOW.map((part) => `${part}, level 3`),
    ]);
    expect(words.join(' ')).toMatch(/Sky: \d+% under cloud, .+; (no wind|a .+ from the (east|west), \d+.mph)\./);
    const tank = between(words, /^heading, 1 Trash tank/, /^heading, 2 /);
    expect(tank).toContain('not seen yet');
    expect(named(tank, /^button, /)).toEqual(['0 things to do : Trash tank']);
    const panel = between(words, /^heading, Panel/, /^heading, Compressor/);
    expect(panel.join(' ')).toMatch(/seen or heard now .*Alarm lamp lit\. .*Buzzer silent\. .*Compressor breaker on\./);
    await reader.press('button, 0 things to do : Trash tank');
    await page.waitForFunction(() => document.activeElement?.id === 'hand-title');
    expect(await page.locator('#hand-title').textContent()).toContain('Trash tank');
    expect(errors).toEqual([]);
    await close();
  });

  it('reads a visit: its checklist with what is done and what is open, then what is at hand', async () => {
    const { page, errors, close } = await openApp({ ...DESK, query: '#/call/three-years-on' });
    await page.waitForSelector('.checklist');
    const reader = await listen(page);
    const screen = await reader.read();
    const sheet = between(screen, /^region, Call sheet/, /^region, (House|Phone)/);
    expect(named(sheet, /^listitem, /).length).toBeGreaterThan(10);
    expect(sheet.join(' ')).toMatch(/0 of \d+/);
    expect(screen.findIndex((one) => /^region, Call sheet/.test(one))).toBeLessThan(
      screen.findIndex((one) => /^region, Notebook/.test(one)),
    );
    expect(errors).toEqual([]);
    await close();
  });

  it('asks a question of the quiz with its figure in words and its answers by number, and tells what an answer was worth', async () => {
    const { page, errors, close } = await openApp({ ...DESK, query: '#/quiz/41' });
    await page.waitForSelector('.quiz-choose');
    const reader = await listen(page);
    await reader.press('button, Practise');
    await page.waitForSelector('.drill-option');
    const asked = await reader.read('main');
    const prompt = (await page.locator('[id^="prompt-"]').textContent()) ?? '';
    expect(asked.join(' ')).toContain(prompt);
    // The question, then what is shown, then the answers.
    const figure = asked.findIndex((one) => /^(figure|image|img|table|list)/.test(one));
    const first = asked.findIndex(
      (one) => one.startsWith('button, ') && /level|position|listitem/.test(asked[asked.indexOf(one) - 1] ?? ''),
    );
    expect(figure).toBeGreaterThan(-1);
    expect(first).toBeGreaterThan(-1);
    const option = (await page.locator('.drill-option .option-text').first().textContent()) ?? '';
    await reader.press(`button, ${option}`);
    await page.waitForSelector('.told');
    const why = (await reader.told()).join(' ');
    expect(why).toMatch(/^polite: (Right|Not that one).*\?$/);
    expect(errors).toEqual([]);
    await close();
  });

  it('leads through the first step of Build: the steps, then each field by its name and its help', async () => {
    const { page, errors, close } = await openApp({ ...DESK, query: '#/build' });
    await page.waitForSelector('[data-new]');
    const reader = await listen(page);
    await reader.press(/^button, .*[Nn]ew/);
    await page.waitForSelector('#at-title-en', { timeout: 60_000 });
    const step = await reader.read('main');
    const fields = step.filter((one) => /^(textbox|combobox|spinbutton)/.test(one));
    expect(fields.length).toBeGreaterThan(6);
    // No field without a name.
    for (const field of fields) expect(field).toMatch(/^\w+, \S/);
    expect(errors).toEqual([]);
    await close();
  });

  it('speaks Spanish in Spanish, wherever it goes', async () => {
    const { page, errors, close } = await openApp({ ...DESK, locale: 'es-US' });
    await page.waitForSelector('.call-card');
    const reader = await listen(page);
    const places = [
      '#/',
      '#/call/storm-light',
      '#/build',
      '#/home',
      '#/quiz',
      '#/drills',
      '#/round',
      '#/class',
      '#/access',
    ];
    for (const place of places) {
      await page.evaluate((to) => {
        location.hash = to;
      }, place);
      await page.waitForFunction(() => document.querySelector('main:not(.waiting) h1') !== null);
      expect(await page.evaluate(() => document.documentElement.lang)).toBe('es');
      const spoken = itsOwn(await reader.read());
      expect(spoken.length).toBeGreaterThan(20);
      expect([place, spoken.filter((one) => ONLY_ENGLISH.has(one))]).toEqual([place, []]);
    }
    expect(errors).toEqual([]);
    await close();
  });
});
