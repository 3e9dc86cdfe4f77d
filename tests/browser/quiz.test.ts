import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { shippedLibrary } from '../../src/calls/index.ts';
import { loadAnswers } from '../../src/quiz/answers.ts';
import { checked, type Drill } from '../../src/quiz/drill.ts';
import { formOf } from '../../src/quiz/exam.ts';
import { drill } from '../../src/quiz/index.ts';
import { rightAnswer } from '../../src/quiz/right.ts';
import { readSheet } from '../../src/records/angoff-sheet.ts';
import { speak } from '../../src/words/speak.ts';
import { answerTo, MOCK, sat } from '../unit/quiz/sat.ts';
import { ENGLISH } from '../unit/spoken.ts';
import { inBrowser, openApp, runAxe } from './page.ts';

const FORM = 41;
const DESK = { width: 1280, height: 800, query: `#/quiz/${FORM}` };
const PHONE = { width: 360, height: 740, touch: true, query: `#/quiz/${FORM}` };
const say = speak(ENGLISH, 'us', true);

const unit = shippedLibrary().units.get('u1');
if (unit === undefined) throw new Error('u1 does not ship');
/** The questions of the form, and which of them a person gets right. */
const QUESTIONS = formOf(MOCK, FORM).map(({ skill, seed }) => drill(skill, seed, unit));

/** Focuses something by the tabulator alone. */
async function tabTo(page: Page, selector: string): Promise<void> {
  for (let i = 0; i < 120; i++) {
    if (await page.evaluate((s) => document.activeElement?.matches(s) ?? false, selector)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`the tabulator does not reach ${selector}`);
}

async function press(page: Page, selector: string): Promise<void> {
  await tabTo(page, selector);
  await page.keyboard.press('Enter');
}

/** The question at a place, once it is shown; it is read first. */
async function asked(page: Page, at: number, focus = ':focus'): Promise<Drill> {
  const one = QUESTIONS[at];
  if (one === undefined) throw new Error(`no question ${at}`);
  await page.waitForSelector(`#prompt-${one.skill}-${one.seed}${focus}`);
  return one;
}

/** Each thing up to its place, from the first place on. */
async function putInOrder(page: Page, ids: readonly string[]): Promise<void> {
  for (const [place, id] of ids.entries()) {
    const at = () =>
      page.$eval(`[data-move="up ${id}"]`, (one) =>
        [...document.querySelectorAll('.order-item')].indexOf(one.closest('li') as Element),
      );
    for (let from = await at(); from > place; from--) await press(page, `[data-move="up ${id}"]`);
  }
}

async function answer(page: Page, one: Drill, right: boolean): Promise<void> {
  const given = answerTo(one, right);
  if (typeof given === 'number') {
    await tabTo(page, '.number-answer input');
    await page.keyboard.press('Control+A');
    await page.keyboard.type(String(given));
  } else if (typeof given !== 'string') {
    await putInOrder(page, given);
  } else {
    await press(page, `[data-option="${given}"]`);
    await page.waitForSelector(`[data-option="${given}"][aria-pressed="true"]`);
  }
}

/** Answers all questions by keyboard; those at the places of `wrong` wrong. */
async function sitAll(page: Page, wrong: (at: number) => boolean): Promise<void> {
  for (let at = 0; at < QUESTIONS.length; at++) {
    await answer(page, await asked(page, at, at === 0 ? '' : ':focus'), !wrong(at));
    if (at + 1 < QUESTIONS.length) await press(page, '.next-question');
  }
}

async function handIn(page: Page): Promise<void> {
  await press(page, '.hand-in');
  await page.waitForSelector('.quiz-sure');
  await press(page, '[data-hand-in]');
  await page.waitForSelector('.quiz-result');
}

/** All that is told of a question once it is answered: its explanations, and a number that is asked for. */
function secretsOf({ ask, source }: Drill): readonly string[] {
  switch (ask.kind) {
    case 'choice':
    case 'point':
      return [source, ...ask.options.map(({ why }) => why)].map(say);
    case 'order':
      return [source, ask.whole, ...ask.items.map(({ why }) => why)].map(say);
    case 'number': {
      const whys = [source, ask.right, ask.other, ...ask.slips.map(({ why }) => why), ...ask.worked].map(say);
      // A whole number could stand anywhere.
      return Number.isInteger(ask.value) ? whys : [...whys, String(ask.value)];
    }
  }
}

/** The whole page as it stands, its attributes too. */
async function wholePage(page: Page): Promise<string> {
  const html = await page.evaluate(() => document.documentElement.outerHTML);
  const signs = { '&nbsp;': '\u00a0', '&lt;': '<', '&gt;': '>', '&quot;': '"', '&amp;': '&' };
  return Object.entries(signs).reduce((text, [written, sign]) => text.replaceAll(written, sign), html);
}

async function tellsNothing(page: Page): Promise<void> {
  const html = await wholePage(page);
  for (const one of QUESTIONS) for (const secret of secretsOf(one)) expect(html).not.toContain(secret);
  for (const id of ['drills.right', 'drills.wrong', 'drills.wanted']) expect(html).not.toContain(`>${say({ id })}<`);
  expect(await page.locator('.right, .wrong, .told').count()).toBe(0);
}

async function begin(page: Page): Promise<void> {
  await page.waitForSelector('.quiz-choose');
  await press(page, '[data-begin-exam]');
  await asked(page, 0);
}

inBrowser('the quiz', () => {
  it('opens from the start page, and its practice tells each answer at once and brings back what went wrong', async () => {
    const { page, close, errors } = await openApp({ width: 1280, height: 800 });
    await page.waitForSelector('.call-card');
    await press(page, '.door a[href="#/quiz"]');
    await page.waitForSelector('.quiz-choose');
    expect(await runAxe(page)).toEqual([]);
    // The same address with a number gives the questions that the test knows.
    await page.goto(page.url().replace(/#.*/, DESK.query));
    await page.waitForSelector('.quiz-choose');
    await press(page, '[data-practise]');
    const first = drill('floats', FORM, unit);
    await page.waitForSelector(`#prompt-floats-${FORM}:focus`);
    await press(page, `[data-option="${answerTo(first, false)}"]`);
    await page.waitForSelector('.told.wrong');
    expect(await page.locator('.told').textContent()).toContain(say(checked(first, answerTo(first, false)).why));
    expect(await page.locator('.drill-option.right').getAttribute('data-option')).toBe(rightAnswer(first));
    // The way on has the focus.
    await page.keyboard.press('Enter');
    await page.waitForSelector(`#prompt-air-line-${FORM + 1}:focus`);
    const second = drill('air-line', FORM + 1, unit);
    await press(page, `[data-option="${rightAnswer(second)}"]`);
    await page.waitForSelector('.told.right');
    expect(await runAxe(page)).toEqual([]);
    await press(page, '.end-drill');
    await page.waitForSelector('.quiz-end');
    expect(await page.locator('h1').textContent()).toBe('1 of 2 right');
    await press(page, '[data-leave]');
    // What went wrong is known worse, and that is kept.
    await page.reload();
    await page.waitForSelector('.quiz-choose');
    const share = async (topic: string) =>
      Number.parseInt((await page.locator(`[data-topic="${topic}"] .topic-share`).textContent()) ?? '', 10);
    expect(await share('hydraulics')).toBeLessThan(await share('air'));
    expect(await page.locator('[data-topic="solids"] .topic-more').textContent()).toBe('not tried yet');
    expect(errors).toEqual([]);
    await close();
  });

  it('sits an exam by keyboard to a pass: nothing is told before it is handed in, answers can be changed, all is reviewed', async () => {
    const { page, close, errors } = await openApp(DESK);
    await begin(page);
    await tellsNothing(page);
    expect(await runAxe(page)).toEqual([]);
    const first = await asked(page, 0);
    await answer(page, first, false);
    await tellsNothing(page);
    await answer(page, first, true);
    expect(await page.locator('[aria-pressed="true"].drill-option').count()).toBe(first.ask.kind === 'choice' ? 1 : 0);
    await press(page, '.mark-later');
    await page.waitForSelector('.mark-later[aria-pressed="true"]');
    // Nine wrong of thirty pass with 70 %.
    await sitAll(page, (at) => at % 3 === 1 && at < 27);
    await tellsNothing(page);
    await press(page, '.hand-in');
    await page.waitForSelector('.quiz-sure');
    expect(await page.locator('.quiz-sure').textContent()).toContain('1 question is marked for later');
    expect(await page.locator('.quiz-sure').textContent()).toContain('All 30 questions are answered');
    await tellsNothing(page);
    expect(await runAxe(page)).toEqual([]);
    await press(page, '[data-hand-in]');
    await page.waitForSelector('.quiz-result');
    expect(await page.locator('h1').textContent()).toBe('Passed: 21 of 30 right');
    for (const [topic, n] of Object.entries(MOCK.topics)) {
      expect(await page.locator(`[data-topic="${topic}"] .topic-more`).textContent()).toContain(`of ${n}`);
    }
    const second = page.locator('.reviewed').nth(1);
    await second.locator('summary').focus();
    await page.keyboard.press('Enter');
    await second.locator('.told.wrong').waitFor();
    const wrong = QUESTIONS[1];
    if (wrong === undefined) throw new Error('no second question');
    expect(await second.textContent()).toContain(say(checked(wrong, answerTo(wrong, false)).why));
    expect(await second.textContent()).toContain('Source:');
    // What was looked for all along would have been found.
    const html = await wholePage(page);
    expect(secretsOf(wrong).some((secret) => html.includes(secret))).toBe(true);
    expect(await runAxe(page)).toEqual([]);
    const download = page.waitForEvent('download');
    await press(page, '[data-save-answers]');
    const file = await download;
    expect(file.suggestedFilename()).toBe(`mock-${FORM}.answers.json`);
    const saved = loadAnswers(readFileSync(await file.path(), 'utf8'), (id) => (id === 'u1' ? unit : undefined));
    expect(saved.ok && saved.value.items.filter(({ right }) => right).length).toBe(21);
    expect(saved).toMatchObject({
      ok: true,
      value: { exam: 'mock', form: FORM, unit: 'u1', language: 'en', minutes: 60 },
    });
    // It can be looked at again.
    await page.reload();
    await page.waitForSelector('.quiz-choose');
    await press(page, '[data-exam]');
    await page.waitForSelector('.quiz-result');
    expect(errors).toEqual([]);
    await close();
  });

  it('goes on after a reload where it was, to a fail, on a phone and in Spanish', async () => {
    const { page, close, errors } = await openApp({ ...PHONE, locale: 'es-MX' });
    await begin(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    for (const at of [0, 1, 2]) {
      await answer(page, await asked(page, at), true);
      await press(page, '.next-question');
    }
    await asked(page, 3);
    await press(page, '.mark-later');
    await page.waitForSelector('.mark-later[aria-pressed="true"]');
    await page.reload();
    const fourth = await asked(page, 3);
    expect(await page.locator('.place.done').count()).toBe(3);
    expect(await page.locator('.mark-later').getAttribute('aria-pressed')).toBe('true');
    expect(await runAxe(page)).toEqual([]);
    await answer(page, fourth, true);
    await handIn(page);
    expect(await page.locator('h1').textContent()).toBe('No aprobado: 4 de 30 bien');
    // What was left out is explained as well.
    await page.locator('.reviewed').nth(10).locator('summary').click();
    await page.locator('.reviewed').nth(10).locator('.told').waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    expect(await runAxe(page)).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });

  it('has a clock that can be extended or turned off, tells the time left seldom, and ends nothing by itself', async () => {
    const { page, close, errors } = await openApp(DESK);
    await page.clock.install();
    await page.reload();
    await begin(page);
    const left = () => page.locator('.time-left').textContent();
    await page.clock.runFor(29 * 60_000);
    expect(await left()).toContain('31:0');
    expect(await page.locator('.quiz-told').textContent()).toBe('');
    await page.clock.runFor(2 * 60_000);
    expect(await page.locator('.quiz-told').textContent()).toContain('Less than 30 minutes');
    await press(page, '.more-time');
    await page.waitForFunction(() => /3[89]:/.test(document.querySelector('.time-left')?.textContent ?? ''));
    await page.clock.runFor(40 * 60_000);
    // It waits for its person; more can be had, again and again.
    await page.waitForSelector('.quiz-sure');
    expect(await page.locator('h1').textContent()).toBe('The time is up');
    await tellsNothing(page);
    await press(page, '.more-time');
    await page.waitForSelector('.quiz-exam');
    expect(await left()).toContain('10:0');
    await tabTo(page, '.drill-clock input');
    await page.keyboard.press('Space');
    await page.waitForFunction(() => document.querySelector('.time-left') === null);
    await page.clock.runFor(3 * 3_600_000);
    expect(await page.locator('.quiz-exam').count()).toBe(1);
    expect(errors).toEqual([]);
    await close();
  });

  it('is sat in one tab at a time, and can be left for the practice and gone on with', async () => {
    const { page, close } = await openApp(DESK);
    await begin(page);
    await answer(page, await asked(page, 0), true);
    const other = await page.context().newPage();
    await other.goto(page.url());
    await other.getByText('Open in another tab').waitFor();
    await other.getByRole('button', { name: 'Take it over' }).click();
    await other.waitForSelector('.place.done');
    await page.getByText('Taken over in another tab').waitFor();
    await other.locator('[data-leave]').click();
    await other.waitForSelector('.quiz-last');
    expect(await other.locator('.quiz-last').textContent()).toContain('1 of 30 answered');
    await other.locator('[data-exam]').click();
    await other.waitForSelector('.place.done');
    await close();
  });
});

inBrowser('the class screen', () => {
  const file = (name: string, value: unknown) => ({
    name,
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(value)),
  });
  const choose = async (page: Page, files: readonly ReturnType<typeof file>[]) => {
    await page.locator('[data-choose="files"]').setInputFiles([...files]);
  };

  it('tells of dropped answers what the questions are worth, from thirty on, and refuses what does not come out', async () => {
    const { page, close, errors } = await openApp({ width: 1280, height: 800, query: '#/class' });
    await page.waitForSelector('.class-head');
    const people = Array.from({ length: 30 }, (_, n) =>
      file(
        `p${n}.json`,
        sat(FORM, (place) => place < n),
      ),
    );
    await choose(page, people.slice(0, 29));
    await page.getByText('29 of 30 answers').waitFor();
    expect(await page.locator('.question-list').count()).toBe(0);
    const forged = sat(FORM, () => false);
    const claims = { ...forged, items: forged.items.map((item) => ({ ...item, right: true })) };
    await choose(page, [...people.slice(29), file('forged.json', claims)]);
    await page.waitForSelector('.question-list');
    expect(await page.locator('.class-questions').textContent()).toContain('N = 30');
    expect(await page.locator('.question-list tbody tr').count()).toBe(30);
    expect(await page.locator('.question-list tbody tr').first().textContent()).toContain(
      'hardly anybody gets it wrong',
    );
    expect(await page.locator('.question-list tbody tr').last().textContent()).toContain(
      'hardly anybody gets it right',
    );
    expect(await page.locator('.class-questions').textContent()).toContain('license');
    expect(await page.locator('.class-refused').textContent()).toContain('forged');
    expect(await runAxe(page)).toEqual([]);
    const download = page.waitForEvent('download');
    await page.locator('[data-statistics-csv]').click();
    const csv = readFileSync(await (await download).path(), 'utf8');
    expect(csv.trim().split('\r\n').length).toBe(31);
    const judges = page.waitForEvent('download');
    await page.locator(`[data-judges="${FORM}"]`).click();
    const sheet = readSheet(readFileSync(await (await judges).path(), 'utf8').replaceAll(/,(?=\r\n)/g, ',0.7'));
    expect(sheet.ok && sheet.value.items).toEqual(QUESTIONS.map(({ skill, seed }) => `${skill}-${seed}`));
    expect(errors).toEqual([]);
    await close();
  });
});
