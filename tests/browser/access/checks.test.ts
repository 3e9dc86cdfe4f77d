/** The checks of every screen find what they look for: each is shown a page that is wrong on purpose. */
import { expect, it } from 'vitest';
import { inBrowser, openApp } from '../page.ts';
import { bearings, misnamed, sideways, smallTargets, tabThrough } from './checks.ts';

const DESK = { width: 800, height: 600 };

/** The app's own page with something else in it. */
async function showing(html: string) {
  const app = await openApp(DESK);
  await app.page.waitForSelector('.call-card');
  await app.page.evaluate((inside) => {
    document.body.innerHTML = inside;
  }, html);
  await app.page.evaluate((css) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(css);
    document.adoptedStyleSheets = [sheet];
  }, CSS);
  return app;
}

const CSS = `
  .small { width: 16px; height: 16px; min-width: 0; min-height: 0; padding: 0; border: 0; }
  .wide { width: 1200px; }
  .cover { position: fixed; inset: 0 0 auto; height: 200px; background: #000; }
  .ringless:focus-visible { outline: none; }
  .tall { height: 100px; }
`;

inBrowser('the checks', () => {
  it('find targets that are small and close, and leave small ones alone that stand apart', async () => {
    const { page, close } = await showing('<button class="small"></button><button class="small"></button>');
    expect(await smallTargets(page)).toHaveLength(2);
    await page.evaluate(() => document.querySelector('button')?.remove());
    expect(await smallTargets(page)).toEqual([]);
    await close();
  });

  it('find what is too wide, a page without a heading, an id twice and a name that is not what is seen', async () => {
    const { page, close } = await showing(
      '<div class="wide">x</div><p id="a"></p><p id="a"></p><button aria-label="Cross">Close</button>',
    );
    expect(await sideways(page)).toHaveLength(1);
    expect(await bearings(page)).toEqual(['0 of main', '0 of h1', 'id twice: a']);
    expect(await misnamed(page)).toEqual(['"close" is called "cross"']);
    await close();
  });

  it('find a focus that is covered, and one that no ring shows', async () => {
    const { page, close } = await showing(
      '<div class="cover"></div><button>under</button><div class="tall"></div><div class="tall"></div><button class="ringless">plain</button>',
    );
    const found = await tabThrough(page);
    expect(found).toHaveLength(2);
    expect(found[0]).toMatch(/"under".* is hidden behind div.cover/);
    expect(found[1]).toMatch(/"plain" shows no ring/);
    await close();
  });
});
