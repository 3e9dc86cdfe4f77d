/**
 * Every screen of the page in each state that looks different, reached as a person reaches it. The list is bound to the
 * routes there are: a route without a walk here is an error of types.
 */
import type { Page } from 'playwright-core';
import { type CallFile, makeRecord, play, prepareCall, shippedCalls, shippedVisits } from '../../../src/calls/index.ts';
import type { Route } from '../../../src/desk/routes.ts';
import { linkOf } from '../../../src/share/index.ts';
import { doStep, takeCall, withPointer } from '../../../src/tools/people.ts';

/** Where a walk has come to: what this is called, and the page, where it is another than the one it began on. */
export interface Seen {
  readonly state: string;
  readonly page?: Page;
}
export type Walk = (page: Page) => AsyncGenerator<Seen>;

const WAIT = { timeout: 120_000 };

const shipped = (id: string): CallFile => {
  const call = [...shippedCalls(), ...shippedVisits()].find((one) => one.id === id);
  if (call === undefined) throw new Error(`${id} does not ship`);
  return call;
};
const STORM = shipped('storm-light');
const SUNNY = shipped('sunny-line');
const VISIT = shipped('three-years-on');
/** By then one stands in the yard. */
const STEPS_TO_SITE = 8;

async function goTo(page: Page, hash: string): Promise<void> {
  await page.waitForSelector('html[data-ready]');
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
}

async function openAction(page: Page, id: string): Promise<void> {
  await page.locator(`[data-action="${id}"]`).click();
}

async function* start(page: Page): AsyncGenerator<Seen> {
  await page.waitForSelector('.call-card');
  yield { state: 'start' };
  await page.locator('.other-ways summary').first().click();
  yield { state: 'start, other ways open' };
}

async function* byPhone(page: Page): AsyncGenerator<Seen> {
  await goTo(page, '#/call/storm-light');
  await page.waitForSelector('canvas');
  yield { state: 'call by phone' };
  await openAction(page, 'ask-danger');
  await openAction(page, 'decide-visit');
  await page.waitForSelector('.action-form');
  yield { state: 'call by phone, a form open' };
  await page.locator('.action-form .secondary').click();
  await openAction(page, 'tell-open-panel');
  await page.waitForSelector('dialog[open] button[aria-disabled="false"]');
  yield { state: 'call stopped by a breach' };
}

async function* onSite(page: Page): AsyncGenerator<Seen> {
  await takeCall(page, withPointer(page), SUNNY, STEPS_TO_SITE);
  await page.waitForSelector('canvas');
  yield { state: 'call on site' };
  await page.locator('.words-button').click();
  await page.waitForSelector('.yard-words');
  yield { state: 'the yard in words' };
  await page.locator('.words-button').click();
  await page.locator('.rates .icon-pill').click();
  await page.locator('#part-panel').click();
  await page.locator('.close-up-button').click();
  await page.waitForSelector('.hotspot.control');
  yield { state: 'close-up of the panel' };
  await page.locator('.close-up-button').click();
  await page.locator('#part-pump-tank').click();
  await page.locator('.close-up-button').click();
  await page.waitForSelector('.hotspot');
  yield { state: 'close-up of the floats' };
  await page.locator('.close-up-button').click();
  await page.locator('#part-compressor').click();
  await page.locator('.close-up-button').click();
  await page.waitForSelector('.call.close-up .picture dl', { state: 'attached' });
  yield { state: 'close-up of the compressor' };
  await page.locator('.close-up-button').click();
  await doStep(page, withPointer(page), 'make-safe', {});
  await page.locator('#part-panel').click();
  await openAction(page, 'meter-volts');
  await page.waitForSelector('.board');
  yield { state: 'meter at the panel' };
}

async function* coached(page: Page): AsyncGenerator<Seen> {
  await goTo(page, '#/call/mower-passed/led-whole');
  await page.waitForSelector('.coach-led');
  yield { state: 'call, led by the coach' };
  await goTo(page, '#/call/wash-day-light/coached');
  await page.waitForSelector('.coach-ready progress, [data-coach="hint"]');
  yield { state: 'call with a coach' };
}

async function* frozenElsewhere(page: Page): AsyncGenerator<Seen> {
  const second = await page.context().newPage();
  await second.goto(page.url());
  await second.waitForSelector('.elsewhere');
  yield { state: 'call that another tab has', page: second };
  await second.close();
}

async function* call(page: Page): AsyncGenerator<Seen> {
  yield* byPhone(page);
  await page.reload();
  await goTo(page, '#/');
  await page.waitForSelector('.call-card');
  yield* onSite(page);
  yield* coached(page);
  yield* frozenElsewhere(page);
}

async function* debrief(page: Page): AsyncGenerator<Seen> {
  await takeCall(page, withPointer(page), STORM);
  await page.waitForSelector('dialog[open] button[aria-disabled="false"]');
  yield { state: 'call closed' };
  await page.locator('dialog[open] button').click();
  await page.waitForSelector('.verdict-head');
  await page.getByRole('slider').press('ArrowRight');
  yield { state: 'debrief with its replay' };
  await page.locator('.text-version').count();
  await page.getByRole('button', { name: 'Text version' }).click();
  await page.waitForSelector('.text-version tbody tr');
  yield { state: 'debrief as text' };
}

async function* record(page: Page): AsyncGenerator<Seen> {
  await page.waitForSelector(`[data-call="${VISIT.id}"]`);
  await page.locator(`[data-call="${VISIT.id}"]`).click();
  await page.waitForSelector('.checklist');
  yield { state: 'visit' };
  await goTo(page, '#/');
  await takeCall(page, withPointer(page), VISIT);
  await page.locator('dialog[open] button[aria-disabled="false"]').click();
  await page.waitForSelector('.decisions');
  yield { state: 'debrief of a visit' };
  await page.locator('.decisions a').click();
  await page.waitForSelector('.service-record');
  yield { state: 'service record' };
}

/** One skill of each kind of asking and of each kind of figure. */
const SKILLS = ['floats', 'air-line', 'jar', 'panel', 'meter', 'rising', 'place', 'chlorine', 'limits'];

async function* drills(page: Page): AsyncGenerator<Seen> {
  for (const skill of SKILLS) {
    await goTo(page, '#/drills/3');
    await page.waitForSelector('.skill-card');
    if (skill === SKILLS[0]) yield { state: 'drills' };
    await page.locator(`.skill-card [data-skill="${skill}"]`).click();
    await page.waitForSelector('#drill-prompt');
    yield { state: `drill on ${skill}` };
    const option = page.locator('.drill-option').first();
    if (await option.count()) {
      await option.click();
      await page.waitForSelector('.told');
      yield { state: `drill on ${skill}, answered` };
    }
    await page.locator('.end-drill').first().click();
    if (skill === SKILLS[0]) yield { state: 'drill over' };
    await goTo(page, '#/');
    await page.waitForSelector('.call-card');
  }
}

async function* quiz(page: Page): AsyncGenerator<Seen> {
  await goTo(page, '#/quiz/41');
  await page.waitForSelector('.quiz-choose');
  yield { state: 'quiz' };
  await page.locator('[data-practise]').click();
  await page.waitForSelector('.drill-option');
  yield { state: 'practice' };
  await page.locator('.drill-option').first().click();
  await page.waitForSelector('.told');
  yield { state: 'practice, answered' };
  await page.locator('.end-drill').click();
  await page.waitForSelector('.quiz-end');
  yield { state: 'practice over' };
  await page.locator('[data-leave]').click();
  await page.locator('[data-begin-exam]').click();
  await page.waitForSelector('.mark-later');
  yield { state: 'exam' };
  await page.locator('.hand-in').click();
  await page.waitForSelector('.quiz-sure');
  yield { state: 'exam, sure?' };
  await page.locator('[data-hand-in]').click();
  await page.waitForSelector('.quiz-result');
  await page.locator('.reviewed summary').first().click();
  yield { state: 'exam reviewed' };
}

async function* round(page: Page): AsyncGenerator<Seen> {
  await goTo(page, '#/round');
  await page.waitForSelector('.lot');
  yield { state: 'round' };
}

async function* instructor(page: Page): AsyncGenerator<Seen> {
  await goTo(page, '#/instructor');
  await page.waitForSelector('#no-window');
  yield { state: 'instructor without a trainee' };
  await goTo(page, '#/call/mower-passed');
  await page.waitForSelector('[data-action="ask-danger"]');
  const desk = await page.context().newPage();
  await desk.goto(page.url().replace(/#.*/, '#/instructor'));
  await desk.waitForSelector('.works canvas');
  yield { state: 'instructor', page: desk };
  await desk.locator('[data-hand="freeze"]').click();
  await page.waitForSelector('.trainer-band');
  yield { state: 'call that a trainer stopped' };
  await desk.close();
}

async function* classSheet(page: Page): AsyncGenerator<Seen> {
  const good = makeRecord(play(prepareCall(SUNNY), 'solution'));
  const poor = makeRecord(play(prepareCall(SUNNY), 'reset-only'));
  const file = (name: string, content: unknown) => ({
    name,
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(content)),
  });
  await goTo(page, '#/class');
  await page.waitForSelector('[data-choose="files"]', { state: 'attached' });
  yield { state: 'class' };
  await page
    .locator('[data-choose="files"]')
    .setInputFiles([file('K.M..json', good), file('17.json', poor), file('A.B..json', { ...good, engine: '3' })]);
  await page.waitForSelector('.class-sheet tbody tr', WAIT);
  await page.locator('.class-records summary').click();
  yield { state: 'class with records' };
  await page.locator('.class-verdict').first().click();
  await page.waitForSelector('.verdict-head');
  yield { state: 'debrief of a record' };
}

async function* build(page: Page): AsyncGenerator<Seen> {
  await goTo(page, '#/build');
  await page.waitForSelector('[data-new]');
  yield { state: 'build' };
  await page.locator('[data-new]').click();
  await page.waitForSelector('.curve-drawing', WAIT);
  const steps = await page.locator('[data-step]').evaluateAll((all) => all.map((one) => one.getAttribute('data-step')));
  for (const step of steps) {
    await page.locator(`[data-step="${step}"]`).click();
    if (step === 'faults') {
      await page.locator('#seek-fault').fill('unplugged');
      await page.locator('.fault-offer').first().click();
      await page.waitForSelector('.pin-label');
    }
    yield { state: `build, step ${step}` };
  }
}

async function* home(page: Page): AsyncGenerator<Seen> {
  await goTo(page, '#/home');
  await page.waitForSelector('.home-stage canvas');
  yield { state: 'household, walk' };
  await page.locator('.view-choice select').selectOption('clarifier');
  await page.waitForSelector('.home-stage dl', { state: 'attached' });
  yield { state: 'household, the clarifier close up' };
  await page.locator('[data-begin="what-if"]').click();
  await page.waitForSelector('[data-came]', WAIT);
  await page.locator('[data-cost]').click();
  yield { state: 'household, what came of it and what it costs' };
  await goTo(page, '#/home/card');
  await page.waitForSelector('.home-card');
  yield { state: 'card for the household' };
}

async function* take(page: Page): AsyncGenerator<Seen> {
  await goTo(page, '#/take');
  await page.waitForSelector('input[type="file"]', { state: 'attached' });
  yield { state: 'calls from elsewhere' };
  const link = await linkOf({ ...STORM, id: 'my-storm', title: { en: 'My storm', es: 'Mi tormenta' } });
  if (!link.ok) throw new Error('too long');
  await goTo(page, link.fragment);
  await page.waitForSelector('.call-card');
  yield { state: 'call from a link' };
  await goTo(page, link.fragment.slice(0, -40));
  await page.waitForSelector('.refused');
  yield { state: 'link that is damaged' };
}

async function* sheet(page: Page): AsyncGenerator<Seen> {
  await goTo(page, '#/sheet/storm-light/trainee');
  await page.waitForSelector('.paper.trainee');
  yield { state: 'sheet for the trainee' };
  await goTo(page, '#/sheet/storm-light/trainer');
  await page.waitForSelector('[data-reveal]');
  yield { state: 'sheet for the trainer, before it shows the cause' };
  await page.locator('[data-reveal]').click();
  await page.waitForSelector('.paper.trainer');
  yield { state: 'sheet for the trainer' };
}

async function* access(page: Page): AsyncGenerator<Seen> {
  await goTo(page, '#/access');
  await page.waitForSelector('.access-parts');
  yield { state: 'access' };
}

async function* faults(page: Page): AsyncGenerator<Seen> {
  await goTo(page, '#/faults');
  await page.waitForSelector('.fault-links');
  yield { state: 'what faults show' };
  await goTo(page, '#/faults/line-split');
  await page.waitForSelector('.fault-card');
  yield { state: 'what one fault shows' };
}

async function* notebook(page: Page): AsyncGenerator<Seen> {
  await takeCall(page, withPointer(page), STORM);
  await page.locator('dialog[open] button[aria-disabled="false"]').click();
  await page.locator('a[href^="#/notebook/"]').click();
  await page.waitForSelector('.notebook-sketch img');
  yield { state: 'notebook' };
}

/** Walks by route. */
export const WALKS: Readonly<Record<Route['screen'], Walk>> = {
  start,
  call,
  debrief,
  record,
  drills,
  quiz,
  round,
  instructor,
  class: classSheet,
  build,
  home,
  take,
  sheet,
  access,
  faults,
  notebook,
};

/** What does not work, told over any screen. */
export async function* troubles(page: Page): AsyncGenerator<Seen> {
  await page.addInitScript(() => Object.defineProperty(window, 'indexedDB', { value: undefined }));
  await page.reload();
  await page.waitForSelector('.troubles');
  yield { state: 'start, where the browser keeps nothing' };
}
