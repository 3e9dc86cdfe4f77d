/**
 * A virtual screen reader in the real page (`@guidepup/virtual-screen-reader`): it speaks what the standards say is to be
 * spoken of the page's own tree. It is no person and no real screen reader, and does not tell how either would fare.
 */
import { readFileSync } from 'node:fs';
import type { virtual } from '@guidepup/virtual-screen-reader';
import type { Page } from 'playwright-core';

const FILE = 'node_modules/@guidepup/virtual-screen-reader/lib/esm/index.browser.js';
/** More than any screen has to say. */
const MOST_PHRASES = 4000;

interface Listening {
  reader: typeof virtual;
}

export interface Reader {
  /** All that is spoken from the top of something to its end. */
  read(container?: string): Promise<string[]>;
  /** Goes on to the first phrase that is, or begins with, a text, and presses what stands there. Gives the phrase. */
  press(phrase: string | RegExp): Promise<string>;
  /** What was said unasked since it was last asked for, newest last. */
  told(): Promise<string[]>;
}

/** Starts it on the page as it stands. */
export async function listen(page: Page): Promise<Reader> {
  await page.route('**/virtual-screen-reader.js', (route) =>
    route.fulfill({ contentType: 'text/javascript', body: readFileSync(FILE, 'utf8') }),
  );
  // As text: the page itself imports it, past no rule of its own.
  await page.evaluate(
    "import(new URL('virtual-screen-reader.js', document.baseURI).href).then((m) => { window.reader = m.virtual; })",
  );
  const begin = (container: string) =>
    page.evaluate(async (at) => {
      const { reader } = window as unknown as Listening;
      const node = document.querySelector(at);
      if (node === null) throw new Error(`no ${at}`);
      await reader.stop().catch(() => {});
      await reader.start({ container: node });
    }, container);
  await begin('body');
  return {
    async read(container = 'body') {
      await begin(container);
      const phrases = await page.evaluate(async (most) => {
        const { reader } = window as unknown as Listening;
        const top = reader.activeNode;
        for (let i = 0; i < most; i++) {
          await reader.next();
          const node = reader.activeNode;
          // Past the end it begins again, at the element that it reads.
          if (node === top) break;
        }
        return (await reader.spokenPhraseLog()).slice(0, -1);
      }, MOST_PHRASES);
      await begin('body');
      return phrases;
    },
    async press(phrase) {
      const source = typeof phrase === 'string' ? `^${phrase.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}` : phrase.source;
      const spoken = await page.evaluate(
        async ([wanted, most]) => {
          const { reader } = window as unknown as Listening;
          const is = new RegExp(wanted as string, 'i');
          for (let i = 0; i < Number(most); i++) {
            const said = await reader.lastSpokenPhrase();
            if (is.test(said)) {
              await reader.clearSpokenPhraseLog();
              await reader.act();
              return said;
            }
            await reader.next();
          }
          return null;
        },
        [source, MOST_PHRASES] as const,
      );
      if (spoken === null) throw new Error(`it never says ${source}`);
      return spoken;
    },
    async told() {
      const said = await page.evaluate(() => (window as unknown as Listening).reader.spokenPhraseLog());
      return said.filter((one) => /^(polite|assertive): \S/.test(one));
    },
  };
}
