/** Two people at the page: one has a keyboard and nothing else, one a pointer. Both take a call's own solution. */
import type { Frame, Page } from 'playwright-core';
import type { CallFile } from '../calls/index.ts';
import { ACTION_BY_ID } from '../service/index.ts';

export interface PersonAtPage {
  /** Reaches the one element that a selector names and presses it. */
  press(selector: string): Promise<void>;
  /** Ticks a box or chooses a radio button. */
  choose(field: string, value: string): Promise<void>;
  /** Brings a part to hand. */
  goTo(place: string): Promise<void>;
}

const MOST_TABS = 400;

export function withKeyboard(page: Page): PersonAtPage {
  const focused = (selector: string) => page.evaluate((s) => document.activeElement?.matches(s) === true, selector);
  async function tabTo(selector: string): Promise<void> {
    for (let i = 0; i < MOST_TABS; i++) {
      if (await focused(selector)) return;
      await page.keyboard.press('Tab');
    }
    throw new Error(`no Tab reaches ${selector}`);
  }
  return {
    async press(selector) {
      await page.waitForSelector(selector);
      await tabTo(selector);
      await page.keyboard.press('Enter');
    },
    async choose(field, value) {
      const radio = await page.$eval(`input[name="${field}"]`, (e) => (e as HTMLInputElement).type === 'radio');
      await tabTo(radio ? `input[name="${field}"]` : `input[name="${field}"][value="${value}"]`);
      if (radio) {
        await page.keyboard.press('Space');
        for (let i = 0; i < MOST_TABS && !(await focused(`input[value="${value}"]`)); i++) {
          await page.keyboard.press('ArrowDown');
        }
      } else await page.keyboard.press('Space');
    },
    async goTo(place) {
      await tabTo('.part-chip[aria-current="true"]');
      for (let i = 0; i < MOST_TABS && !(await focused(`#part-${place}`)); i++) await page.keyboard.press('ArrowRight');
    },
  };
}

export function withPointer(page: Page | Frame): PersonAtPage {
  return {
    press: (selector) => page.locator(selector).first().click(),
    choose: (field, value) => page.locator(`input[name="${field}"][value="${value}"]`).check(),
    async goTo(place) {
      // Through the picture where the part can be pressed in it, else by the strip of parts.
      await page.locator(`#part-${place}`).click();
    },
  };
}

/** Takes a call from the list and does its solution, step by step, as the person can. */
export async function takeCall(
  page: Page,
  person: PersonAtPage,
  call: CallFile,
  upTo = call.solution.length,
): Promise<void> {
  await page.waitForSelector('.call-card button');
  await person.press(`[data-call="${call.id}"]`);
  await page.waitForSelector('.part-chip');
  for (const step of call.solution.slice(0, upTo)) await doStep(page, person, step.do, step.fill ?? {});
}

export async function doStep(
  page: Page | Frame,
  person: PersonAtPage,
  id: string,
  fill: Readonly<Record<string, string | readonly string[]>>,
): Promise<void> {
  const place = ACTION_BY_ID.get(id)?.place ?? 'house';
  const notes = await page.locator('.notebook tbody tr').count();
  if (!(await page.locator(`#part-${place}[aria-current="true"]`).count())) await person.goTo(place);
  await person.press(`[data-action="${id}"]`);
  if (Object.keys(fill).length > 0) {
    await page.waitForSelector('.action-form');
    for (const [field, value] of Object.entries(fill)) {
      for (const one of typeof value === 'string' ? [value] : value) {
        for (const option of one.startsWith('by:') ? await notesOf(page, one.slice(3)) : [one]) {
          await person.choose(field, option);
        }
      }
    }
    await person.press('.action-form button[type="submit"]');
  }
  await page.waitForFunction(
    (before) =>
      document.querySelectorAll('.notebook tbody tr').length > before || document.querySelector('dialog[open]'),
    notes,
  );
}

/** What a note must say to be evidence, by the check that made it. */
const EVIDENCE: Readonly<Record<string, RegExp>> = {
  'tee-pressure': /pressure/i,
  'follow-air-line': /split/i,
};

async function notesOf(page: Page | Frame, check: string): Promise<string[]> {
  const words = EVIDENCE[check];
  if (!words) throw new Error(`no words for the note of ${check}`);
  const options = page.locator('.option', { has: page.locator('input[name="evidence"]') });
  const texts = await options.allTextContents();
  const values = await options.locator('input').evaluateAll((all) => all.map((e) => (e as HTMLInputElement).value));
  return values.filter((_, i) => words.test(texts[i] ?? ''));
}
