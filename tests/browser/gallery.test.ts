import { expect, it } from 'vitest';
import { openGallery } from './gallery.ts';
import { inBrowser, openApp } from './page.ts';

const WINDOW = { width: 820, height: 1180 };

inBrowser('the sheet of screens', () => {
  it('finds a screen the same however it was packed, and one whose card has moved or is gone apart', async () => {
    const { page, close } = await openApp({ ...WINDOW, now: '2031-05-14T10:00' });
    await page.waitForSelector('.call-card');
    const picture = () => page.screenshot({ animations: 'disabled', caret: 'hide' });
    const told = await picture();
    const kept = await openGallery(await page.context().newPage(), WINDOW, 3);
    for (let i = 0; i < 3; i++) await kept.hang(told);
    const packed = await kept.packed();
    expect(Math.max(...(await kept.apartFrom(packed)))).toBeLessThan(0.002);
    const card = page.locator('.door').first();
    await card.evaluate((at) => at.style.setProperty('translate', '0 24px'));
    const moved = await picture();
    await card.evaluate((at) => at.style.setProperty('visibility', 'hidden'));
    const gone = await picture();
    const now = await openGallery(await page.context().newPage(), WINDOW, 3);
    for (const one of [told, moved, gone]) await now.hang(one);
    const [same, ...apart] = await now.apartFrom(packed);
    expect(same).toBeLessThan(0.002);
    expect(Math.min(...apart)).toBeGreaterThan(0.02);
    await close();
  });
});
