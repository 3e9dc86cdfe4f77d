import type { Page } from 'playwright-core';
import { shippedCalls } from '../calls/index.ts';
import { doStep, takeCall, withPointer } from './people.ts';
import { openStage } from './stage.ts';

const OUT = '/tmp/meter-shots';

export async function main(only: readonly string[]): Promise<number> {
  const stage = await openStage();
  const sunny = shippedCalls().find((c) => c.id === 'sunny-line');
  if (!sunny) throw new Error('no call');
  const unit = (id: string) => shippedCalls().find((c) => c.unit === id);
  const sizes = { desk: { width: 1440, height: 900 }, phone: { width: 390, height: 844, touch: true } } as const;
  try {
    for (const [name, size] of Object.entries(sizes)) {
      for (const [u, call] of [
        ['u1', sunny],
        ['u3', unit('u3')],
        ['u2', unit('u2')],
      ] as const) {
        if (!call) continue;
        for (const lang of u === 'u1' ? ['en', 'es'] : ['en']) {
          if (only.length && !only.includes(`${name}-${u}`)) continue;
          const app = await stage.openApp({ ...size, locale: lang === 'es' ? 'es-MX' : 'en-US' });
          const { page } = app;
          const person = withPointer(page);
          await page.waitForSelector('.call-card button');
          await page.locator(`[data-call="${call.id}"]`).click();
          await page.waitForSelector('.part-chip');
          const show = async (part: string, group: string) => {
            await person.goTo(part);
            const tab = page.locator(`.group-tabs [data-group="${group}"]`);
            if (await tab.isVisible()) await tab.click();
          };
          await show('phone', 'say');
          const step = async (part: string, group: string, id: string) => {
            await show(part, group);
            await page.locator(`[data-action="${id}"]`).click();
            await page.waitForTimeout(400);
          };
          await show('phone', 'look');
          for (const g of ['look', 'say', 'measure', 'operate']) {
            const tab = page.locator(`.group-tabs [data-group="${g}"]`);
            if (await tab.isVisible()) await tab.click();
            if (await page.locator('[data-action="ask-danger"]').isVisible()) break;
          }
          await page.locator('[data-action="ask-danger"]').click();
          await page.waitForTimeout(300);
          await step('phone', 'say', 'decide-visit');
          await page.locator('input[name="urgency"]').first().check();
          await page.locator('.action-form [type="submit"]').click();
          await page.waitForTimeout(1500);
          const groupOf = async (id: string) => {
            const g = await page
              .locator(`[data-action="${id}"]`)
              .first()
              .evaluate((e) => e.closest('.group')?.getAttribute('data-group'));
            const tab = page.locator(`.group-tabs [data-group="${g}"]`);
            if (await tab.isVisible()) await tab.click();
          };
          await person.goTo('house');
          await groupOf('make-safe');
          await page.locator('[data-action="make-safe"]').click();
          await page.waitForTimeout(500);
          await person.goTo('panel');
          for (const [kind, picks] of [
            ['meter-volts', ['line', 'neutral']],
            ['meter-ohms', ['line', 'ground']],
            ['clamp-amps', ['supply']],
          ] as const) {
            await groupOf(kind);
            await page.locator(`[data-action="${kind}"]`).click();
            await page.waitForSelector('.board');
            for (const t of picks) await page.locator(`[data-terminal="${t}"]`).click();
            await page.locator('.action-form [type="submit"]').click();
            await page.waitForTimeout(900);
            await shot(page, `${name}-${u}-${lang}-${kind}`);
            await page.locator('.action-form .secondary').click();
            if (u !== 'u1' && kind === 'meter-volts') break;
          }
          if (app.errors.length) console.log(app.errors);
          await app.close();
        }
      }
    }
  } finally {
    await stage.close();
  }
  return 0;
}

async function shot(page: Page, name: string): Promise<void> {
  const pause = page.locator('.rates .icon-pill[aria-pressed="false"]');
  if (await pause.isVisible().catch(() => false)) await pause.click();
  await page.waitForTimeout(500);
  await page.screenshot({ path: `${OUT}/${name}.png`, animations: 'disabled' });
  await page.locator('.action-form').screenshot({ path: `${OUT}/${name}-form.png`, animations: 'disabled' });
  console.log(name);
}
