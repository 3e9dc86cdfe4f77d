/** Ways round: past the bar, along the picture, without motion, without dragging, and without single keys. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { type CallFile, shippedCalls } from '../../../src/calls/index.ts';
import { doStep, takeCall, withPointer } from '../../../src/tools/people.ts';
import { inBrowser, openApp } from '../page.ts';

const DESK = { width: 1440, height: 900 };
const PHONE = { width: 390, height: 844, touch: true };
const STORM = '#/call/storm-light';
const SUNNY = shippedCalls().find(({ id }) => id === 'sunny-line') as CallFile;
/** By then one stands in the yard. */
const STEPS_TO_SITE = 8;

const focusedSpot = (page: Page) => page.evaluate(() => document.activeElement?.getAttribute('data-spot') ?? null);
/** Something that animates had time to be drawn anew. */
const frames = (page: Page) =>
  page.evaluate(async () => {
    for (let i = 0; i < 30; i++) await new Promise((done) => requestAnimationFrame(done));
  });

inBrowser('the way past the bar', () => {
  it('is the first that Tab comes to, and leads to the part at hand on a call, to the heading elsewhere', async () => {
    for (const [query, goal] of [
      [STORM, '#hand-title'],
      ['', 'h1'],
      ['#/quiz', 'h1'],
    ] as const) {
      const { page, close } = await openApp({ ...DESK, query });
      await page.waitForSelector(goal === 'h1' ? 'main h1' : goal);
      await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
      for (let i = 0; i < 20 && !(await page.evaluate(() => document.activeElement?.matches('.skip'))); i++)
        await page.keyboard.press('Shift+Tab');
      expect(await page.locator('.skip').evaluate((one) => one.getBoundingClientRect().width > 40)).toBe(true);
      const before = page.url();
      await page.keyboard.press('Enter');
      expect([goal, await page.evaluate((to) => document.activeElement?.matches(to), goal)]).toEqual([goal, true]);
      expect(page.url()).toBe(before);
      await close();
    }
  });
});

inBrowser('the picture', () => {
  it('is one stop of Tab, and arrow keys go along its parts in the order of the water', async () => {
    const { page, errors, close } = await openApp({ ...DESK, query: STORM });
    await page.waitForSelector('.hotspot');
    expect(await page.locator('.hotspot[tabindex="0"]').count()).toBe(1);
    await page.locator('[data-spot="house"]').focus();
    const walked: (string | null)[] = [await focusedSpot(page)];
    for (let i = 0; i < 10; i++) {
      await page.keyboard.press('ArrowRight');
      walked.push(await focusedSpot(page));
    }
    expect(walked).toEqual([
      ...['house', 'clean-out', 'trash-tank', 'aeration', 'clarifier', 'disinfection', 'pump-tank', 'disc-filter'],
      ...['spray-field', 'panel', 'compressor'],
    ]);
    await page.keyboard.press('Enter');
    expect(await page.locator('.part-chip[aria-current="true"]').getAttribute('id')).toBe('part-compressor');
    expect(errors).toEqual([]);
    await close();
  });

  it('stands still at the press of a button on it, wherever it moves, and that is remembered', async () => {
    const { page, errors, close } = await openApp({ ...DESK, query: '#/home', motion: 'no-preference' });
    await page.waitForSelector('.home-stage canvas');
    await frames(page);
    const picture = async () => (await page.locator('canvas').screenshot()).toString('base64');
    await page.locator('.still-button').click();
    await frames(page);
    const first = await picture();
    await frames(page);
    expect(await picture()).toBe(first);
    await page.waitForTimeout(200);
    await page.reload();
    await page.waitForSelector('.still-button[aria-pressed="true"]');
    expect(errors).toEqual([]);
    await close();
  });

  it('needs no drag: the strip brings a part into sight, buttons go closer and farther', async () => {
    const { page, errors, close } = await openApp({ ...PHONE, query: STORM });
    await page.waitForSelector('.hotspot');
    const at = (spot: string) =>
      page.$$eval(
        '.hotspot',
        (all, id) => all.find((one) => one.getAttribute('data-spot') === id)?.getBoundingClientRect().x ?? null,
        spot,
      );
    expect(await at('spray-field')).toBeNull();
    await page.locator('#part-spray-field').click();
    await page.waitForSelector('[data-spot="spray-field"]');
    const width = () => page.locator('[data-spot="spray-field"]').evaluate((one) => one.getBoundingClientRect().width);
    const before = await width();
    await page.locator('.zoom button').last().click();
    await page.waitForFunction(
      (was) => (document.querySelector('[data-spot="spray-field"]')?.getBoundingClientRect().width ?? was) !== was,
      before,
    );
    expect(errors).toEqual([]);
    await close();
  });

  it('and the lists beside it hold the same: parts, terminals, and what a drill points at', async () => {
    const { page, errors, close } = await openApp(DESK);
    const ids = (selector: string, name: string) =>
      page.$$eval(selector, (all, attribute) => all.map((one) => one.getAttribute(attribute) ?? '').sort(), name);
    await takeCall(page, withPointer(page), SUNNY, STEPS_TO_SITE);
    await page.waitForSelector('.hotspot');
    const chips = (await ids('.part-chip', 'id')).map((id) => id.replace('part-', ''));
    for (const spot of await ids('.hotspot', 'data-spot')) expect(chips).toContain(spot);
    await doStep(page, withPointer(page), 'make-safe', {});
    await page.locator('#part-panel').click();
    await page.locator('[data-action="meter-volts"]').click();
    await page.waitForSelector('.board');
    await page.locator('.meter-lists summary').click();
    const terminals = await ids('[data-terminal]', 'data-terminal');
    for (const probe of ['red', 'black']) expect(await ids(`input[name="${probe}"]`, 'value')).toEqual(terminals);
    // What a drill asks to be pointed at.
    await page.evaluate(() => {
      location.hash = '#/drills/3';
    });
    await page.locator('.skill-card [data-skill="place"]').click();
    await page.waitForSelector('.plan-mark');
    expect(await ids('.drill-option', 'data-option')).toEqual(await ids('.plan-mark', 'data-part'));
    expect(errors).toEqual([]);
    await close();
  });
});

inBrowser('the replay', () => {
  it('is gone through without a drag: by its buttons, by one click on its track and by keys', async () => {
    const { page, errors, close } = await openApp(DESK);
    const storm = shippedCalls().find(({ id }) => id === 'storm-light') as CallFile;
    await takeCall(page, withPointer(page), storm);
    await page.locator('dialog[open] button[aria-disabled="false"]').click();
    await page.waitForSelector('.scrubber');
    const now = () => page.locator('.scrubber').inputValue();
    const places = [await now()];
    await page.locator('.replay-buttons button').last().click();
    places.push(await now());
    const box = await page.locator('.scrubber').boundingBox();
    if (box === null) throw new Error('no track');
    await page.mouse.click(box.x + box.width * 0.9, box.y + box.height / 2);
    places.push(await now());
    await page.locator('.scrubber').press('ArrowLeft');
    places.push(await now());
    expect(new Set(places).size).toBe(4);
    expect(errors).toEqual([]);
    await close();
  });
});

inBrowser('a single key', () => {
  const SINGLE = [...'abcdefghijklmnopqrstuvwxyz0123456789.,;/?-+!'];

  it.each(['#/', STORM, '#/quiz', '#/drills/3', '#/build', '#/class', '#/home', '#/round', '#/instructor'])(
    'does nothing at %s where nothing has the focus that wants it',
    async (query) => {
      const { page, errors, close } = await openApp({ ...DESK, query });
      await page.waitForSelector('main:not(.waiting) h1');
      const pause = page.locator('.rates .icon-pill');
      if (await pause.count()) await pause.click();
      // The one key of the first screen is switched off there.
      if (query === '#/') await page.getByRole('switch', { name: /Key \// }).press('Space');
      await page.locator('h1').focus();
      const state = () =>
        page.evaluate(() => {
          const on = '[aria-pressed="true"], [aria-current], [aria-expanded="true"], [open], input:checked';
          const which = [...document.querySelectorAll(on)].map((one) => `${one.tagName} ${one.id} ${one.className}`);
          return [location.hash, document.activeElement?.tagName, ...which];
        });
      await page.waitForLoadState('networkidle');
      const before = await state();
      for (const key of SINGLE) await page.keyboard.press(key);
      await frames(page);
      expect(await state()).toEqual(before);
      expect(errors).toEqual([]);
      await close();
    },
  );
});

inBrowser('what the clock brings', () => {
  it('is told no oftener than once a second however fast it runs, and in the end as it stands', async () => {
    const { page, errors, close } = await openApp({ ...DESK, query: '#/call/sunny-line' });
    await page.waitForSelector('.part-chip');
    await page.evaluate(() => {
      const told: { at: number; text: string }[] = [];
      Object.assign(window, { told });
      const status = document.querySelector('.news [role="status"]');
      if (status === null) throw new Error('no status');
      new MutationObserver(() => told.push({ at: performance.now(), text: status.textContent ?? '' })).observe(status, {
        childList: true,
        characterData: true,
        subtree: true,
      });
    });
    await page.locator('.rates .pill', { hasText: '1 h/s' }).click();
    await page.waitForTimeout(6000);
    const told = await page.evaluate(() => (window as unknown as { told: { at: number; text: string }[] }).told);
    const gaps = told.slice(1).map(({ at }, i) => at - (told[i]?.at ?? 0));
    for (const gap of gaps) expect(gap).toBeGreaterThan(900);
    expect(errors).toEqual([]);
    await close();
  });
});
