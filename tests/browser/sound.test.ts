import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { shippedCalls } from '../../src/calls/index.ts';
import { takeCall, withPointer } from '../../src/tools/people.ts';
import { inBrowser, openApp } from './page.ts';

/** The loudest sample, -1 to 1, that reached the loudspeaker in the last 50 ms or so. */
type Meter = { loudness(): number };

/** Puts a meter at the loudspeaker of every audio context that the page opens. */
function meterLoudspeaker(): void {
  const meters: AnalyserNode[] = [];
  const connect = AudioNode.prototype.connect as (this: AudioNode, to: AudioNode) => AudioNode;
  AudioNode.prototype.connect = function (this: AudioNode, to: AudioNode) {
    if (to === to.context.destination) {
      const meter = new AnalyserNode(to.context, { fftSize: 2048 });
      connect.call(this, meter);
      meters.push(meter);
    }
    return connect.call(this, to);
  } as typeof AudioNode.prototype.connect;
  const loudness = () => {
    const samples = new Float32Array(2048);
    meters.at(-1)?.getFloatTimeDomainData(samples);
    return samples.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
  };
  Object.assign(window, { meter: { loudness } satisfies Meter });
}

const heard = (page: Page, above: number) =>
  page.waitForFunction((a) => (window as unknown as { meter: Meter }).meter.loudness() > a, above);
const silent = (page: Page) =>
  page.waitForFunction(() => (window as unknown as { meter: Meter }).meter.loudness() < 0.0001);

/** By then one stands in the yard and hears it. */
const STEPS_TO_SITE = 8;

async function toSite(page: Page): Promise<void> {
  const call = shippedCalls().find(({ id }) => id === 'sunny-line');
  if (call === undefined) throw new Error('the call does not ship');
  await takeCall(page, withPointer(page), call, STEPS_TO_SITE);
}

/** The app before its first script, so that `before` can change what the page will find. */
async function openWith(before: (page: Page) => Promise<unknown>) {
  const app = await openApp({ width: 1280, height: 800 });
  await before(app.page);
  await app.page.goto(app.url);
  await app.page.reload();
  return app;
}

inBrowser('the loudspeaker', () => {
  it('sounds the yard, and is silent while switched off', async () => {
    const { page, errors, close } = await openWith((p) => p.addInitScript(meterLoudspeaker));
    await toSite(page);
    await heard(page, 0.02);
    await page.locator('.sound-button').click();
    await silent(page);
    await page.locator('.sound-button').click();
    await heard(page, 0.02);
    expect(errors).toEqual([]);
    await close();
  });

  it('goes on after the machine has taken the sound away for a while, at the next gesture', async () => {
    const { page, errors, close } = await openWith((p) =>
      p.addInitScript(() => {
        const Original = AudioContext;
        class Kept extends Original {
          constructor(...options: ConstructorParameters<typeof AudioContext>) {
            super(...options);
            Object.assign(window, { kept: this });
          }
        }
        Object.assign(window, { AudioContext: Kept });
      }),
    );
    const state = () => page.evaluate(() => (window as unknown as { kept?: AudioContext }).kept?.state);
    const becomes = (wanted: string) =>
      page.waitForFunction((w) => (window as unknown as { kept?: AudioContext }).kept?.state === w, wanted);
    await toSite(page);
    await becomes('running');
    await page.evaluate(() => (window as unknown as { kept: AudioContext }).kept.suspend());
    expect(await state()).toBe('suspended');
    await page.mouse.click(5, 400);
    await becomes('running');
    expect(errors).toEqual([]);
    await close();
  });

  it.each([
    [
      'there is no way to play sounds',
      (p: Page) => p.addInitScript(() => Object.assign(window, { AudioContext: undefined })),
    ],
    ['the recordings are missing', (p: Page) => p.route('**/sprite.wav', (route) => route.fulfill({ status: 404 }))],
    ['the recordings are broken', (p: Page) => p.route('**/sprite.wav', (route) => route.fulfill({ body: 'no wave' }))],
  ] as const)('stays silent where %s, and the call goes on with its captions', async (_why, before) => {
    const { page, errors, close } = await openWith(before);
    await toSite(page);
    expect(await page.locator('body').textContent()).toMatch(/buzzer/i);
    expect(errors.filter((error) => !/404|Failed to load resource/.test(error))).toEqual([]);
    await close();
  });
});
