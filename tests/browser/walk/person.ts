/** A person at the page who presses what is called by its name there, with a pointer or with keys. */
import type { Locator, Page } from 'playwright-core';
import { placeWords } from '../../../src/calls/places.ts';
import { ACTION_BY_ID } from '../../../src/service/index.ts';
import { speak } from '../../../src/words/speak.ts';
import { loadWords } from '../../../src/words/words.ts';
import { SPECS } from '../../control/panels.ts';
import { look, type Seen } from './seen.ts';

const say = speak(await loadWords('en'), 'us', true);

export interface Manner {
  readonly by: 'pointer' | 'keys';
  /** Through the controls drawn on the panel where there is one, instead of the list of actions. */
  readonly closeUp?: boolean;
}

/** Controls with which one thing can be done, so that nothing is asked. */
const ALONE: readonly string[] = ['silence', 'test'];

export class Person {
  private readonly page: Page;
  private readonly manner: Manner;
  private at = '';

  constructor(page: Page, manner: Manner) {
    this.page = page;
    this.manner = manner;
  }

  /**
   * Takes a call from the list, from its beginning, wherever the page is now; and stops the clock: time passes only where
   * the walk lets it.
   */
  async takes(title: string): Promise<void> {
    const ended = (await this.page.locator('dialog[open]').count()) > 0;
    const started = !ended && (await this.page.locator('.part-chip').count()) > 0;
    if (ended) await this.button('To the debrief').waitFor();
    if (ended || (await this.page.locator('.verdict-head').count()) > 0) {
      await this.page.goto(new URL('#/', this.page.url()).href);
    } else if (started) await this.press(this.page.getByRole('link', { name: 'Underlawn' }));
    const card = this.page.locator('.call-card', { has: this.page.getByRole('heading', { name: title }) });
    await this.press(card.getByRole('button', { name: started ? /^Start over/ : /^Take the call/ }));
    await this.page.waitForFunction(
      () => document.querySelector('.part-chip') && !document.querySelector('.notebook tbody tr'),
    );
    await this.press(this.button('Pause'));
    this.at = '';
  }

  async toTheDebrief(): Promise<void> {
    await this.press(this.button('To the debrief'));
    await this.page.waitForSelector('.verdict-head');
  }

  /** Does an action where it is done. */
  async does(id: string): Promise<void> {
    const def = ACTION_BY_ID.get(id);
    if (!def) throw new Error(`no action "${id}"`);
    const part = say(placeWords(def.place, SPECS.u1).name);
    const before = await this.lines();
    if (part !== this.at) {
      await this.press(this.page.getByRole('navigation', { name: 'Parts' }).getByRole('button', { name: part }));
      this.at = part;
    }
    const name = new RegExp(`^${say(def.label)}`);
    if (this.manner.closeUp && def.control !== undefined && def.place === 'panel') {
      if ((await this.button('Look closer').count()) > 0) await this.press(this.button('Look closer'));
      const picture = this.page.getByRole('region', { name: 'Picture' });
      await this.press(picture.getByRole('button', { name: say({ id: `control.${def.control}` }) }));
      const menu = this.page.getByRole('dialog', { name: 'What to do with it' });
      if (!ALONE.includes(def.control)) await this.press(menu.getByRole('button', { name, disabled: false }));
    } else
      await this.press(this.page.getByRole('region', { name: part }).getByRole('button', { name, disabled: false }));
    await this.noted(before);
  }

  /** Runs to the next change that the panel shows. */
  async waits(): Promise<void> {
    const before = await this.lines();
    await this.press(this.button('Run to next change'));
    await this.noted(before);
  }

  /** Lets two minutes and more pass at a minute a second, seeing nothing change. */
  async idles(): Promise<void> {
    const clock = this.page.locator('.clock time');
    const minute = (time: string | null): number => Number(time?.slice(0, 2)) * 60 + Number(time?.slice(3, 5));
    const until = minute(await clock.textContent()) + 2;
    await this.press(this.button('1 min/s'));
    while (minute(await clock.textContent()) < until) await this.page.waitForTimeout(100);
    await this.press(this.button('Pause'));
  }

  looks(): Promise<Seen> {
    return look(this.page);
  }

  private button(name: string): Locator {
    return this.page.getByRole('button', { name, exact: true, disabled: false });
  }

  private press(what: Locator): Promise<void> {
    return this.manner.by === 'keys' ? what.press('Enter') : what.click();
  }

  private lines(): Promise<number> {
    return this.page.locator('.notebook tbody tr').count();
  }

  /** Waits until a new line stands in the notebook, or the call has ended. */
  private async noted(before: number): Promise<void> {
    await this.page.waitForFunction(
      (lines) =>
        document.querySelectorAll('.notebook tbody tr').length > lines || document.querySelector('dialog[open]'),
      before,
    );
  }
}
