/** Every screen, each with the shortest way there: for what has to hold on all of them. */
import type { Page } from 'playwright-core';
import {
  allShipped,
  type CallFile,
  CallSession,
  makeProgress,
  makeRecord,
  type PlayerId,
  play,
  prepareCall,
} from '../../src/calls/index.ts';
import { playSteps } from '../../src/calls/solution.ts';
import { clockAt } from '../../src/calls/viewOf.ts';
import { CLOSE_UPS } from '../../src/desk/picture.ts';
import type { Settings } from '../../src/desk/stored.ts';
import type { Skill } from '../../src/quiz/drill.ts';

export interface ScreenAt {
  readonly name: string;
  /** After the `#`. */
  readonly hash: string;
  /** What is there once the screen is. */
  readonly there: string;
  /** What is to be done once it is there. */
  readonly way?: (page: Page) => Promise<void>;
}

interface Entry {
  readonly shelf: 'progress' | 'finished' | 'settings';
  readonly value: unknown;
  readonly key: string | number;
}

const CALL = 'sunny-line';
const NIGHT = 'wash-day-light';
const VISIT = 'three-years-on';
/** By then one stands in the yard of the call. */
const STEPS_TO_SITE = 8;

function shipped(id: string): CallFile {
  const call = allShipped().find((one) => one.id === id);
  if (call === undefined) throw new Error(`no call ${id}`);
  return call;
}

const keptOf = (session: CallSession, { id, title }: CallFile) => ({
  version: 1,
  callId: id,
  mode: 'practice',
  record: makeProgress(session),
  now_ms: session.now_ms,
  title,
});

/** A call as the browser keeps it once so many steps of its solution are done. */
function left(id: string, steps: number, more: readonly string[] = []): Entry {
  const call = shipped(id);
  const session = new CallSession(prepareCall(call), 'practice');
  playSteps(session, [...call.solution.slice(0, steps), ...more.map((one) => ({ do: one }))]);
  const clock = clockAt(session, session.now_ms / 1000);
  const value = { version: 1, callId: id, savedAt: 1, stage: 'ask', clock, saved: keptOf(session, call) };
  return { shelf: 'progress', value, key: id };
}

/** A call as the browser keeps it once it is over. */
function over(key: number, id: string, as: PlayerId): Entry {
  const call = shipped(id);
  const session = play(prepareCall(call), as);
  const { passed, score } = makeRecord(session).claims;
  const value = { version: 1, callId: id, finishedAt: 1, score, passed, saved: keptOf(session, call) };
  return { shelf: 'finished', value, key };
}

const SEEN = ['make-safe', 'open-lid:aeration', 'look-into-aeration', 'listen-compressor', 'tee-pressure'];

/** A browser in which some calls were begun and some are over, with the settings. */
export function leftBehind(settings: Partial<Settings> = {}): readonly Entry[] {
  const value = { version: 1, language: 'en', units: 'us', sound: false, still: true, ...settings };
  return [
    { shelf: 'settings', value, key: 'settings' },
    left(CALL, STEPS_TO_SITE, SEEN),
    left(NIGHT, 9),
    left(VISIT, shipped(VISIT).solution.length - 3),
    over(1, CALL, 'solution'),
    over(2, CALL, 'reset-only'),
    over(3, VISIT, 'solution'),
  ];
}

/** Puts entries on their shelves and loads the page anew, so that it finds them there. */
export async function leave(page: Page, entries: readonly Entry[]): Promise<void> {
  await page.waitForSelector('html[data-ready]');
  await page.evaluate(
    (entries) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('underlawn');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const tx = opening.result.transaction(['settings', 'progress', 'finished'], 'readwrite');
          for (const { shelf, value, key } of entries) tx.objectStore(shelf).put(value, key);
          tx.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    entries,
  );
  await page.reload();
  await page.waitForSelector('html[data-ready]');
}

/** Goes to a screen by its address, and on from there. */
export async function goTo(page: Page, { hash, there, way }: ScreenAt): Promise<void> {
  await page.goto(`${page.url().split('#')[0]}#/`);
  await page.waitForSelector('.hero');
  if (hash !== '/') await page.goto(`${page.url().split('#')[0]}#${hash}`);
  await page.waitForSelector(there, { state: 'attached' });
  await way?.(page);
}

async function drillOf(page: Page, skill: Skill): Promise<void> {
  await page.locator(`.skill-card [data-skill="${skill}"]`).click();
  await page.waitForSelector('#drill-prompt');
}

/** Answers whatever is asked, right or wrong. */
async function answerAnyhow(page: Page): Promise<void> {
  const option = page.locator('.drill-option, .plan-mark').first();
  if (await option.count()) await option.click();
  else if (await page.locator('.confirm-order').count()) await page.locator('.confirm-order').click();
  else {
    await page.locator('.number-answer input').fill('3');
    await page.locator('.number-answer input').press('Enter');
  }
  await page.waitForSelector('.told');
}

/** One of each kind of asking and of each kind of figure. */
const FIGURES: readonly Skill[] = [
  ...(['floats', 'air-line', 'jar', 'panel', 'meter'] as const),
  ...(['rising', 'place', 'chlorine', 'limits'] as const),
];

const drills = FIGURES.map(
  (skill): ScreenAt => ({
    name: `drill-${skill}`,
    hash: '/drills/3',
    there: '.skill-card',
    way: async (page) => {
      await drillOf(page, skill);
      await answerAnyhow(page);
    },
  }),
);

/** On a narrow screen an action lies under the tab of its group, and what the engine tells may turn the tabs over. */
async function toFront(page: Page, action: string): Promise<void> {
  await page.waitForFunction((id) => {
    const at = document.querySelector(`[data-action="${id}"]`);
    if (at?.checkVisibility()) return true;
    const group = at?.closest('.group')?.getAttribute('data-group');
    document.querySelector<HTMLElement>(`.group-tabs [data-group="${group}"]`)?.click();
    return false;
  }, action);
}

async function atPart(page: Page, part: string): Promise<void> {
  await page.locator(`#part-${part}`).click();
}

/** Every close-up, with everything open. */
const closeUps = Object.values(CLOSE_UPS).map(
  (view): ScreenAt => ({
    name: `home-${view}`,
    hash: '/home',
    there: '.view-choice',
    way: async (page) => {
      await page.locator('.view-choice select').selectOption(view);
      await page.locator('.home-stage').scrollIntoViewIfNeeded();
    },
  }),
);

export const SCREENS: readonly ScreenAt[] = [
  { name: 'start', hash: '/', there: '.call-card' },
  { name: 'call-phone', hash: '/call/storm-light', there: '.part-chip' },
  {
    name: 'call-breach',
    hash: '/call/hot-wall',
    there: '.part-chip',
    way: async (page) => {
      await toFront(page, 'tell-open-panel');
      await page.locator('[data-action="tell-open-panel"]').click();
      await page.waitForSelector('dialog[open]');
    },
  },
  { name: 'call-coached', hash: '/call/soft-lawn/guided', there: '.part-chip' },
  { name: 'call-site', hash: `/call/${CALL}`, there: '.notebook tbody tr' },
  {
    name: 'call-close-up',
    hash: `/call/${CALL}`,
    there: '.notebook tbody tr',
    way: async (page) => {
      await atPart(page, 'panel');
      await page.locator('.close-up-button').click();
      await page.waitForSelector('.call.close-up');
    },
  },
  {
    name: 'call-compressor',
    hash: `/call/${CALL}`,
    there: '.notebook tbody tr',
    way: async (page) => {
      await atPart(page, 'compressor');
      await page.locator('.close-up-button').click();
      await page.waitForSelector('.call.close-up');
    },
  },
  {
    name: 'call-meter',
    hash: `/call/${CALL}`,
    there: '.notebook tbody tr',
    way: async (page) => {
      await atPart(page, 'panel');
      await toFront(page, 'meter-volts');
      await page.locator('[data-action="meter-volts"]').click();
      await page.waitForSelector('.board');
    },
  },
  { name: 'call-night', hash: `/call/${NIGHT}`, there: '.notebook tbody tr' },
  { name: 'debrief', hash: '/debrief/1', there: '.timeline-drawing' },
  { name: 'debrief-failed', hash: '/debrief/2', there: '.timeline-drawing' },
  { name: 'notebook', hash: '/notebook/1', there: '.notebook-sketch img' },
  { name: 'visit', hash: `/call/${VISIT}`, there: '.notebook tbody tr' },
  { name: 'visit-debrief', hash: '/debrief/3', there: '.decisions' },
  { name: 'record', hash: '/record/3', there: '.service-record' },
  { name: 'drills', hash: '/drills', there: '.skill-card' },
  ...drills,
  { name: 'quiz', hash: '/quiz', there: '.quiz-choose' },
  {
    name: 'exam-result',
    hash: '/quiz/41',
    there: '.quiz-choose',
    way: async (page) => {
      await page.locator('[data-begin-exam]').click();
      await page.locator('.hand-in').click();
      await page.locator('[data-hand-in]').click();
      await page.waitForSelector('.quiz-result');
    },
  },
  {
    name: 'exam',
    hash: '/quiz/41',
    there: '.quiz-choose',
    way: async (page) => {
      await page.locator('[data-begin-exam]').click();
      await page.waitForSelector('.quiz-places');
      await page.locator('.drill-option').first().click();
      await page.locator('.mark-later').click();
      await page.evaluate(() => scrollTo(0, 0));
      // Else what comes to lie under the pointer lights up.
      await page.mouse.move(0, 0);
    },
  },
  // Once the year has come to where it waits for somebody.
  { name: 'round', hash: '/round', there: '.lot.rings' },
  { name: 'call-rain', hash: '/call/rain-guest', there: '.part-chip' },
  { name: 'call-winter-night', hash: '/call/clean-out-lifts', there: '.part-chip' },
  {
    name: 'class',
    hash: '/class',
    there: '.class-head',
    way: async (page) => {
      const made = (as: PlayerId) => makeRecord(play(prepareCall(shipped(CALL)), as));
      const file = (name: string, record: unknown) => ({
        name,
        mimeType: 'application/json',
        buffer: Buffer.from(JSON.stringify(record)),
      });
      const good = made('solution');
      await page
        .locator('[data-choose="files"]')
        .setInputFiles([
          file('K.M..json', good),
          file('17.json', made('reset-only')),
          file('A.B..json', { ...good, engine: '3' }),
        ]);
      await page.waitForSelector('.class-sheet', { timeout: 120_000 });
    },
  },
  { name: 'build-list', hash: '/build', there: '[data-new]' },
  {
    name: 'build',
    hash: '/build',
    there: '[data-new]',
    way: async (page) => {
      await page.locator('#from-call').selectOption('soft-lawn');
      await page.locator('.from-call button').click();
      await page.locator('[data-step="faults"]').click();
      await page.waitForSelector('.curve-drawing');
    },
  },
  {
    name: 'instructor',
    hash: `/call/${CALL}`,
    there: '.notebook tbody tr',
    way: async (page) => {
      await page.keyboard.press('Alt+Shift+I');
      await page.waitForSelector('.instructor-sheet .strips');
    },
  },
  { name: 'home', hash: '/home', there: '.home-stop' },
  ...closeUps,
  {
    name: 'what-if',
    hash: '/home',
    there: '.home-stop',
    way: async (page) => {
      await page.locator('[data-begin="what-if"]').click();
      await page.waitForSelector('.home-curve', { timeout: 120_000 });
    },
  },
  { name: 'card', hash: '/home/card', there: '.home-card' },
  { name: 'access', hash: '/access', there: '.access-parts' },
  { name: 'faults', hash: '/faults', there: '.fault-links' },
  { name: 'fault', hash: '/faults/line-split', there: '.fault-card' },
  { name: 'search', hash: '/find/chlor', there: '.found' },
  { name: 'take', hash: '/take', there: '.take-head' },
  { name: 'sheet', hash: '/sheet/sunny-line/trainee', there: '.paper' },
  {
    name: 'sheet-trainer',
    hash: '/sheet/sunny-line/trainer',
    there: '[data-reveal]',
    way: async (page) => {
      await page.locator('[data-reveal]').click();
      await page.waitForSelector('.paper.trainer');
    },
  },
];
