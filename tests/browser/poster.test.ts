import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { drawnPages } from './harness/drawn.ts';
import { inBrowser } from './page.ts';

inBrowser('the drawn yard and its close-ups', () => {
  const open = drawnPages();

  describe('kept as a sheet', () => {
    const write = (page: Page, title = 'A title') =>
      page.evaluate(async (t) => (await window.harness.poster('svg', t)).text(), title);

    it('is written in the same strokes for the same scene, and for any truth behind pencil', async () => {
      const { page, errors } = await open({ scene: 'callStart', still: true });
      const told = await write(page);
      expect(told.length).toBeGreaterThan(100_000);
      await page.evaluate(() => window.harness.showCopy('callStart'));
      expect(await write(page)).toBe(told);
      await page.evaluate(() => window.harness.showLeaky('callStart', 'nightAlarm'));
      expect(await write(page)).toBe(told);
      await page.evaluate(() => window.harness.show('idleDay'));
      expect(await write(page)).not.toBe(told);
      expect(errors).toEqual([]);
      await page.close();
    });

    it('says the names of its parts in the language, and no text of it becomes markup', async () => {
      const { page } = await open({ scene: 'idleDay', still: true });
      await page.evaluate(() => window.harness.speak('es', 'si'));
      const svg = await write(page, '<script>alert("1")</script> & \'more\'');
      const read = await page.evaluate((text) => {
        const sheet = new DOMParser().parseFromString(text, 'image/svg+xml');
        const texts = [...sheet.querySelectorAll('text')].map((one) => one.textContent);
        const names = new Set([...sheet.querySelectorAll('*')].map((one) => one.localName));
        const handlers = [...sheet.querySelectorAll('*')].flatMap((one) =>
          one.getAttributeNames().filter((name) => name.startsWith('on')),
        );
        return { texts, names: [...names], handlers, title: sheet.querySelector('title')?.textContent };
      }, svg);
      expect(read.title).toBe('<script>alert("1")</script> & \'more\'');
      expect(read.texts).toEqual(
        expect.arrayContaining(['Tanque de bombeo', 'Clarificador', 'Simulated.', read.title]),
      );
      expect(read.names).not.toContain('script');
      expect(read.names).not.toContain('parsererror');
      expect(read.handlers).toEqual([]);
      await page.close();
    });

    it.each(['idleDay', 'stormNight'] as const)('is painted 3840 pixels wide (%s)', async (scene) => {
      const { page, errors } = await open({ scene, still: true });
      const size = await page.evaluate(async () => {
        const picture = await createImageBitmap(await window.harness.poster('png', 'A title'));
        return [picture.width, picture.height] as const;
      });
      expect(size[0]).toBe(3840);
      expect(size[1]).toBeGreaterThan(1600);
      expect(errors).toEqual([]);
      await page.close();
    });
  });
});
