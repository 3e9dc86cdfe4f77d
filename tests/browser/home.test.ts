import { expect, it } from 'vitest';
import { inBrowser, openApp, runAxe } from './page.ts';

const DESK = { width: 1440, height: 900 };
const PHONE = { width: 390, height: 844, touch: true };

inBrowser('the household', () => {
  it('walks along the water by keyboard, lets something happen beside the untouched twin, reckons, and prints a card', async () => {
    const { page, errors, close } = await openApp(DESK);
    await page.locator('.door a[href="#/home"]').click();
    await page.getByRole('heading', { name: 'Household', level: 1 }).waitFor();
    await page.locator('.home-stage canvas').waitFor();
    expect(await runAxe(page)).toEqual([]);

    const stop = page.locator('.home-stop h3');
    expect(await stop.textContent()).toBe('Your house');
    const walked: (string | null)[] = [];
    await page.locator('.home-stop .primary').focus();
    for (let i = 0; i < 9; i++) {
      await page.keyboard.press('Enter');
      walked.push(await stop.textContent());
    }
    expect(walked).toEqual([
      ...['First tank', 'Air tank', 'Quiet part', 'Germ stop', 'Pump tank', 'Lawn', 'Air pump', 'Control box'],
      'Control box',
    ]);
    expect(await page.locator('.home-stop .primary').evaluate((one) => one === document.activeElement)).toBe(true);

    await page.locator('.home-whatif select').last().selectOption('182');
    await page.locator('[data-begin="what-if"]').click();
    await page.locator('[data-stop]').click();
    await page.getByText('Stopped. Nothing was kept.').waitFor();
    await page.locator('.home-whatif select').last().selectOption('14');
    await page.locator('[data-begin="what-if"]').click();
    await page.locator('[data-came]').waitFor();
    const effects = await page.locator('.home-effects li').allTextContents();
    expect(effects.find((one) => one.includes('smell'))).toMatch(
      /^A bad smell in the yard began after \d+ hours and did not let up\. It was gone \d days after the power came back\.$/,
    );
    expect(await page.locator('.home-curve').count()).toBe(2);

    await page.getByLabel('Price of one tablet of 140 g, in dollars').fill('4.5');
    await page.locator('[data-cost]').click();
    await page.locator('.home-working', { hasText: 'At your price' }).waitFor();
    expect(await page.locator('.home-working').textContent()).toMatch(
      /2\.1 tablets of 140 g\. At your price: \$9\.\d\d/,
    );
    expect(await runAxe(page)).toEqual([]);

    await page.locator('.home-head a').click();
    await page.getByRole('heading', { name: 'When the alarm sounds', level: 1 }).waitFor();
    expect(await runAxe(page)).toEqual([]);
    for (const format of ['Letter', 'A4']) {
      const paper = (await page.pdf({ format, preferCSSPageSize: false })).toString('latin1');
      expect(paper.match(/\/Type \/Page[^s]/g)).toHaveLength(1);
    }
    expect(errors).toEqual([]);
    await close();
  });

  it('follows a flush to the lawn, hour by hour, by keyboard', async () => {
    const { page, errors, close } = await openApp(DESK);
    await page.goto(`${page.url().split('#')[0]}#/home`);
    await page.locator('[data-begin="drop"]').press('Enter');
    const slider = page.getByRole('slider', { name: 'Time since the flush' });
    await slider.waitFor();
    expect(await slider.getAttribute('aria-valuetext')).toMatch(
      /^1 minute after the flush\. Of 100 drops, 100 are in the first tank/,
    );
    expect(await page.locator('.drop-picture .drop').count()).toBe(100);
    await slider.press('End');
    await page.getByText(/^30 days after the flush\.$/).waitFor();
    const reached = Number(/and (\d+) have reached/.exec((await slider.getAttribute('aria-valuetext')) ?? '')?.[1]);
    expect(reached).toBeGreaterThan(95);
    const onLawn = () =>
      page
        .locator('.drop-picture .drop')
        .evaluateAll((all) => all.filter((one) => Number(one.getAttribute('cx')) > 630).length);
    expect(await onLawn()).toBe(reached);
    await page.getByRole('button', { name: 'Play' }).press('Enter');
    await page.getByRole('button', { name: 'Hold' }).waitFor();
    expect(await onLawn()).toBeLessThan(reached);
    expect(await page.locator('.home-table tbody tr').count()).toBe(5);
    expect(await runAxe(page)).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });

  it('turns the pages of a year, neglected beside served, by keyboard', async () => {
    const { page, errors, close } = await openApp(DESK);
    await page.goto(`${page.url().split('#')[0]}#/home`);
    await page.locator('.home-year select').first().selectOption('air-off');
    await page.locator('[data-begin="year"]').press('Enter');
    const slider = page.getByRole('slider', { name: 'Week of the year' });
    await slider.waitFor();
    await page.locator('[data-page="touched"] canvas').waitFor();
    expect(await page.locator('[data-page="twin"] canvas').count()).toBe(1);
    await slider.press('End');
    expect(await slider.getAttribute('aria-valuetext')).toMatch(/^Week 52, Dec\. Water in the tanks: \d+\s°F\.$/);
    expect(await page.locator('[data-page="touched"] .home-signs').textContent()).toContain('the alarm');
    await page.getByText('The year in numbers').press('Enter');
    expect(await page.locator('.home-year tbody tr').count()).toBe(12);
    expect(await runAxe(page)).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });

  it('fits a phone', async () => {
    const { page, errors, close } = await openApp(PHONE);
    for (const place of ['#/home', '#/home/card']) {
      await page.goto(`${page.url().split('#')[0]}${place}`);
      await page.locator(place === '#/home' ? '.home-stop' : '.home-card').waitFor();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
      expect(await runAxe(page)).toEqual([]);
    }
    expect(errors).toEqual([]);
    await close();
  });
});
