import { readFile } from 'node:fs/promises';
import { expect, it } from 'vitest';
import { inBrowser, openApp, runAxe } from './page.ts';

inBrowser('the picture', () => {
  it.each([
    { width: 1440, height: 900 },
    { width: 390, height: 844, touch: true },
  ])('is looked into with a glass by keyboard, which says what it shows ($width px)', async (size) => {
    const { page, errors, close } = await openApp({ ...size, query: '#/home' });
    await page.locator('[data-tool="glass"]').click();
    await page.locator('.glass').waitFor();
    const says = page.locator('.glass-says');
    const heard = new Set<string>();
    for (let i = 0; i < 16; i++) {
      const before = await says.textContent();
      await page.keyboard.press('Enter');
      await page.waitForFunction((old) => document.querySelector('.glass-says')?.textContent !== old, before);
      heard.add((await says.textContent()) ?? '');
    }
    const text = [...heard].join('\n');
    for (const part of ['House sewer', 'Air line', 'Clarifier', 'Float High water', 'Pressure line']) {
      expect(text).toContain(part);
    }
    const at = await page.locator('.glass').boundingBox();
    await page.keyboard.press('ArrowUp');
    expect((await page.locator('.glass').boundingBox())?.y).toBe((at?.y ?? 0) - 12);
    expect(await runAxe(page)).toEqual([]);
    await page.keyboard.press('Escape');
    expect(await page.locator('.glass').count()).toBe(0);
    expect(errors).toEqual([]);
    await close();
  });

  it('follows the pointer', async () => {
    const { page, close } = await openApp({ width: 1440, height: 900, query: '#/home' });
    await page.locator('[data-tool="glass"]').click();
    await page.locator('.glass').waitFor();
    const picture = await page.locator('.glass-layer').boundingBox();
    const [x, y] = [(picture?.x ?? 0) + 700, (picture?.y ?? 0) + 30];
    await page.mouse.move(x, y);
    const glass = await page.locator('.glass').boundingBox();
    expect((glass?.x ?? 0) + (glass?.width ?? 0) / 2).toBeCloseTo(x, 0);
    await expect
      .poll(() => page.locator('.glass-says').textContent())
      .toMatch(/^Sky: \d+\s?% under cloud, no rain; .+\.$/);
    await close();
  });

  it('is kept as picture and as drawing, named in the language of the page', async () => {
    const { page, errors, close } = await openApp({ width: 1280, height: 800, locale: 'es-MX', query: '#/home' });
    await page.locator('[data-tool="save"]').click();
    await page.locator('.save-picture').waitFor();
    expect(await runAxe(page)).toEqual([]);
    for (const kind of ['png', 'svg']) {
      const [file] = await Promise.all([page.waitForEvent('download'), page.locator(`[data-kind="${kind}"]`).click()]);
      expect(file.suggestedFilename()).toMatch(new RegExp(`^underlawn-\\d{4}-06-15-1200\\.${kind}$`));
      await page.getByText(`Guardado: ${file.suggestedFilename()}`).waitFor();
      const bytes = await readFile(await file.path());
      if (kind === 'png') expect(bytes.readUInt32BE(16)).toBe(3840);
      else
        for (const word of ['La planta bajo el césped', '15 jun', 'Clarificador', 'Simulado:', 'licor mezclado'])
          expect(bytes.toString('utf8')).toContain(word);
    }
    await page.keyboard.press('Escape');
    expect(await page.locator('.save-picture').count()).toBe(0);
    expect(errors).toEqual([]);
    await close();
  });
});
