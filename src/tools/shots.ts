/**
 * `npm run shots`: the pictures of README and docs, taken from the real page by working it as a person would. Still
 * motion, one pixel a pixel and the shipped font make them the same each time on one machine.
 */
import { mkdirSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { allShipped, type CallFile } from '../calls/index.ts';
import { doStep, type PersonAtPage, takeCall, withPointer } from './people.ts';
import { type AppOptions, type OpenApp, openStage, type Stage } from './stage.ts';

const FOLDER = 'docs/pictures';
const DESK = { width: 1440, height: 900 };
/** The call of the day is another one each day. */
const ON_A_DAY = { ...DESK, now: '2031-05-14T10:00' };
const PHONE = { width: 390, height: 844, touch: true };

function shipped(id: string): CallFile {
  const call = allShipped().find((c) => c.id === id);
  if (!call) throw new Error(`no call ${id}`);
  return call;
}

const sunny = shipped('sunny-line');
const washDay = shipped('wash-day-light');

type Shot = (app: OpenApp, person: PersonAtPage) => Promise<void>;

/** Each picture: its file, its window, and the way there. */
const SHOTS: readonly (readonly [string, AppOptions, Shot])[] = [
  ['call-list', ON_A_DAY, async ({ page }) => void (await page.waitForSelector('.call-card'))],
  [
    'call-day',
    DESK,
    async ({ page }, person) => {
      await takeCall(page, person, sunny, 8);
      for (const id of ['make-safe', 'open-lid:aeration', 'look-into-aeration', 'listen-compressor', 'tee-pressure']) {
        await doStep(page, person, id, {});
      }
      await doStep(page, person, 'follow-air-line', {});
    },
  ],
  [
    'call-night',
    DESK,
    async ({ page }, person) => {
      await takeCall(page, person, washDay, 9);
      await letPass(page, 4.2);
      await person.goTo('panel');
    },
  ],
  [
    'panel',
    DESK,
    async ({ page }, person) => {
      await takeCall(page, person, sunny, 8);
      for (const id of ['make-safe', 'read-panel', 'read-timer', 'read-counters']) await doStep(page, person, id, {});
      await page.locator('.close-up-button').click();
    },
  ],
  [
    'floats',
    DESK,
    async ({ page }, person) => {
      await takeCall(page, person, washDay, 13);
      await page.locator('.close-up-button').click();
    },
  ],
  [
    'debrief',
    DESK,
    async ({ page }, person) => {
      await takeCall(page, person, sunny);
      await person.press('dialog[open] button[aria-disabled="false"]');
      await page.waitForSelector('.verdict-head');
    },
  ],
  [
    'build',
    DESK,
    async ({ page }) => {
      await page.goto(`${page.url().split('#')[0]}#/build`);
      await page.locator('#from-call').selectOption('soft-lawn');
      await page.locator('.from-call button').click();
      await page.locator('[data-step="faults"]').click();
      await page.waitForSelector('.curve-drawing');
      await page.locator('[data-prove]').click();
      await page.waitForSelector('.stamp', { timeout: 300_000 });
    },
  ],
  [
    'compressor',
    DESK,
    async ({ page }) => {
      await page.goto(`${page.url().split('#')[0]}#/home`);
      await page.locator('.view-choice select').selectOption('compressor');
    },
  ],
  ['call-phone', PHONE, ({ page }, person) => takeCall(page, person, sunny, 1)],
];

/** Lets hours of the call go by at an hour a second, then holds the clock. */
async function letPass(page: Page, seconds: number): Promise<void> {
  await page.locator('.rates button').nth(3).click();
  await page.waitForTimeout(seconds * 1000);
  await page.locator('.rates .icon-pill').click();
}

const SETTLE_ms = 1500;

async function take(stage: Stage, name: string, window: AppOptions, way: Shot): Promise<void> {
  const app = await stage.openApp(window);
  await way(app, withPointer(app.page));
  const pause = app.page.locator('.rates .icon-pill[aria-pressed="false"]');
  if (await pause.count()) await pause.click();
  await app.page.evaluate(() => {
    scrollTo(0, 0);
    for (const card of document.querySelectorAll('.card')) card.scrollTop = 0;
    (document.activeElement as HTMLElement | null)?.blur();
  });
  await app.page.evaluate(() => document.fonts.ready.then(() => undefined));
  await app.page.waitForTimeout(SETTLE_ms);
  await app.page.screenshot({ path: `${FOLDER}/${name}.png`, animations: 'disabled', caret: 'hide' });
  if (app.errors.length > 0) throw new Error(`${name}: ${app.errors.join('; ')}`);
  await app.close();
  console.log(`${FOLDER}/${name}.png`);
}

/** Takes all pictures, or those named. */
export async function main(only: readonly string[]): Promise<number> {
  mkdirSync(FOLDER, { recursive: true });
  const stage = await openStage();
  try {
    for (const [name, window, way] of SHOTS) {
      if (only.length === 0 || only.includes(name)) await take(stage, name, window, way);
    }
  } finally {
    await stage.close();
  }
  return 0;
}
