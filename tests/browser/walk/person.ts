/** A person at the page who presses what is called by its name there, with a pointer or with keys. */
import type { Locator, Page } from 'playwright-core';
import { placeWords } from '../../../src/calls/places.ts';
import { shippedLibrary } from '../../../src/calls/index.ts';
import { ACTION_BY_ID } from '../../../src/service/index.ts';
import { speak } from '../../../src/words/speak.ts';
import { loadWords } from '../../../src/words/words.ts';
import { look, type Seen } from './seen.ts';

const say = speak(await loadWords('en'), 'us', true);

export type Manner = 'pointer' | 'keys' | 'close-up';

export class Person {
  private readonly page: Page;
  private readonly manner: Manner;
  private at = '';

  constructor(page: Page, manner: Manner) {
    this.page = page;
    this.manner = manner;
    page.setDefaultTimeout(6000);
  }

  /** Takes the phone call from the list, and stops the clock: time passes only where the walk lets it. */
  async takes(title: string): Promise<void> {
    await this.press(this.page.getByRole('button', { name: new RegExp(`^Take the call.*${title}`) }));
    await this.press(this.button('Pause'));
  }

  /** Does an action where it is done. */
  async does(id: string): Promise<void> {
    const def = ACTION_BY_ID.get(id);
    const spec = shippedLibrary().units.get('u1');
    if (!def || !spec) throw new Error(`no action "${id}"`);
    const part = say(placeWords(def.place, spec).name);
    const before = await this.lines();
    if (part !== this.at) {
      await this.press(this.page.getByRole('navigation', { name: 'Parts' }).getByRole('button', { name: part }));
      this.at = part;
    }
    const name = new RegExp(`^${say(def.label)}`);
    if (this.manner === 'close-up' && def.control !== undefined && def.place === 'panel') {
      if ((await this.button('Open the panel view').count()) > 0) await this.press(this.button('Open the panel view'));
      const picture = this.page.getByRole('region', { name: 'Picture' });
      await this.press(picture.getByRole('button', { name: say({ id: `control.${def.control}` }) }));
      const menu = this.page.getByRole('dialog', { name: 'What to do with it' });
      if (def.control !== 'test') await this.press(menu.getByRole('button', { name }));
    } else await this.press(this.page.getByRole('region', { name: part }).getByRole('button', { name }));
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
    return this.page.getByRole('button', { name, exact: true });
  }

  private press(what: Locator): Promise<void> {
    return this.manner === 'keys' ? what.press('Enter') : what.click();
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
