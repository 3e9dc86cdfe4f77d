import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { CLOSE_UPS as CLOSE_UP_OF } from '../../src/desk/picture.ts';
import { PART_IDS } from '../../src/scene/types.ts';
import { overlap } from '../../src/yard/pen.ts';
import { SKIES } from './fixtures/index.ts';
import { drawnPages, picture, quiet } from './harness/drawn.ts';
import { inBrowser } from './page.ts';

const CLOSE_UPS = Object.values(CLOSE_UP_OF);

inBrowser('the drawn yard', () => {
  const open = drawnPages();

  it('draws the same pixels for the same scene, whatever object it comes in', async () => {
    const { page } = await open({ scene: 'callStart', still: true });
    const first = await picture(page);
    await page.evaluate(() => window.harness.show('idleDay'));
    const open_ = await picture(page);
    await page.evaluate(() => window.harness.showCopy('callStart'));
    expect(await picture(page)).toBe(first);
    expect(open_).not.toBe(first);
    await page.close();
  });

  it('draws each season, hour and weather as its own, and the same again', async () => {
    const { page, errors } = await open({ scene: 'idleDay', still: true, height: 420 });
    const seen = new Map<string, string>([['idleDay', await picture(page)]]);
    for (const name of Object.keys(SKIES) as (keyof typeof SKIES)[]) {
      await page.evaluate((s) => window.harness.show(s), name);
      seen.set(name, await picture(page));
    }
    expect(new Set(seen.values()).size).toBe(seen.size);
    for (const name of ['clearNight', 'idleDay'] as const) {
      await page.evaluate((s) => window.harness.show(s), name);
      expect(await picture(page), name).toBe(seen.get(name));
    }
    expect(errors).toEqual([]);
    await page.close();
  });

  it('drives spray and rain with the wind, either way and always alike', async () => {
    const { page, errors } = await open({ scene: 'idleDay', still: true, height: 420 });
    for (const scene of ['stillSpray', 'springRain', 'stormNight'] as const) {
      const seen: string[] = [];
      for (const wind of [0, 5, -5, 0, 5]) {
        await page.evaluate(([s, w]) => window.harness.blow(s, w), [scene, wind] as const);
        seen.push(await picture(page));
      }
      expect(new Set(seen).size, scene).toBe(3);
      expect(seen.slice(3), scene).toEqual(seen.slice(0, 2));
    }
    // Dry, and nothing sprays: nothing shows a wind.
    await page.evaluate(() => window.harness.show('callStart'));
    const calm = await picture(page);
    await page.evaluate(() => window.harness.blow('callStart', 8));
    expect(await picture(page)).toBe(calm);
    expect(errors).toEqual([]);
    await page.close();
  });

  it('lets clouds go while something else moves, and draws no frame for them alone', async () => {
    const { page } = await open({ scene: 'idleDay', height: 420 });
    const sky = async () => {
      const seen = await page.screenshot({ clip: { x: 640, y: 0, width: 640, height: 60 } });
      return createHash('sha256').update(seen).digest('hex');
    };
    await page.evaluate(() => window.harness.blow('idleDay', 20));
    const before = await sky();
    await expect.poll(sky).not.toBe(before);
    await page.evaluate(() => window.harness.blow('callStart', 20));
    await quiet(page);
    const frames = await page.evaluate(() => window.harness.yard.frames);
    await page.waitForTimeout(300);
    expect(await page.evaluate(() => window.harness.yard.frames)).toBe(frames);
    await page.close();
  });

  const TRUTHS = [
    ['callStart', 'nightAlarm'],
    ['u2Start', 'u2Tripped'],
    ['u3Start', 'u3Night'],
  ] as const;
  it.each(TRUTHS)('shows nothing of the truth behind pencil (%s)', async (told, truth) => {
    const { page } = await open({ scene: told, still: true });
    for (const view of ['yard', ...CLOSE_UPS] as const) {
      await page.evaluate(
        async ([v, s]) => {
          await window.harness.view(v);
          window.harness.show(s);
        },
        [view, told] as const,
      );
      const first = await picture(page);
      await page.evaluate(([a, b]) => window.harness.showLeaky(a, b), [told, truth] as const);
      expect(await picture(page), view).toBe(first);
    }
    await page.close();
  });

  /** What each close-up draws, and another value of it. */
  it('tells apart what the units differ in, once it is seen', async () => {
    const { page } = await open({ scene: 'u2Day', still: true });
    await page.evaluate(() => window.harness.panTo('compressor'));
    const plugged = await picture(page);
    await page.evaluate(() => window.harness.show('u2Tripped'));
    expect(await picture(page)).not.toBe(plugged);
    await page.evaluate(() => window.harness.view('yard'));
    await page.evaluate(() => window.harness.show('u3Day'));
    const dry = await picture(page);
    await page.evaluate(() => window.harness.show('u3Pumps'));
    expect(await picture(page)).not.toBe(dry);
    await page.close();
  });

  it('stops drawing when nothing moves, and draws on while something does', async () => {
    const { page } = await open({ scene: 'callStart' });
    await quiet(page);
    const before = await page.evaluate(() => window.harness.yard.frames);
    await page.waitForTimeout(500);
    expect(await page.evaluate(() => window.harness.yard.frames)).toBe(before);
    await page.evaluate(() => window.harness.show('nightAlarm'));
    await page.waitForFunction((from) => window.harness.yard.frames > from + 5, before);
    expect(await page.evaluate(() => window.harness.yard.moving)).toBe(true);
    await page.evaluate(() => window.harness.yard.setStill(true));
    await quiet(page);
    await page.close();
  });

  it.each([
    [1280, 800],
    [390, 844],
    [390, 330],
  ])('gives every place a target of 24 px within %i x %i', async (width, height) => {
    const { page } = await open({ scene: 'idleDay', still: true, width, height });
    for (const scene of ['idleDay', 'u2Day', 'u3Day', 'u3Low'] as const) {
      await page.evaluate((s) => window.harness.show(s), scene);
      for (const view of ['yard', 'panel', 'floats'] as const) {
        await page.evaluate((v) => window.harness.view(v), view);
        const spots = await page.evaluate(() => window.harness.yard.hotspots().map((s) => ({ ...s })));
        expect(spots.length, `${scene} ${view}`).toBeGreaterThan(0);
        for (const s of spots) {
          const at = `${scene} ${view} ${s.id}`;
          expect(Math.min(s.width, s.height), at).toBeGreaterThanOrEqual(24);
          expect(Math.min(s.x, s.y), at).toBeGreaterThanOrEqual(0);
          expect(s.x + s.width, at).toBeLessThanOrEqual(width + 1);
          expect(s.y + s.height, at).toBeLessThanOrEqual(height + 1);
        }
      }
    }
    await page.close();
  });

  describe.each(['en', 'es'] as const)('in %s', (language) => {
    it.each([
      [390, 320],
      [360, 320],
      [1280, 400],
    ])('keeps every name and note whole within %i x %i, none over another', async (width, height) => {
      const { page } = await open({ scene: 'phoneStage', still: true, width, height });
      await page.evaluate((l) => window.harness.speak(l, 'si'), language);
      let seen = 0;
      const check = async (where: string) => {
        const labels = await page.evaluate(() => window.harness.yard.labels().map((b) => ({ ...b })));
        seen += labels.length;
        for (const [i, b] of labels.entries()) {
          const at = `${where} ${JSON.stringify(b)}`;
          expect(Math.min(b.x, b.y), at).toBeGreaterThanOrEqual(0);
          expect(b.x + b.width, at).toBeLessThanOrEqual(width);
          expect(b.y + b.height, at).toBeLessThanOrEqual(height);
          const covered = labels.slice(i + 1).filter((other) => overlap(b, other));
          expect(covered, at).toEqual([]);
        }
      };
      for (const scene of ['phoneStage', 'halfInked', 'idleDay', 'u2Phone', 'u2Day', 'u3Phone', 'u3Day'] as const) {
        await page.evaluate((s) => window.harness.show(s), scene);
        await check(`${scene} at first`);
        for (const part of PART_IDS) {
          await page.evaluate((p) => {
            window.harness.yard.select(p);
            window.harness.panTo(p);
          }, part);
          await check(`${scene} ${part}`);
        }
        // From the last part on the right to the left end, in steps that meet no part squarely.
        for (let i = 0; i < 15; i++) {
          await page.evaluate(() => window.harness.yard.pan(-83, -7));
          await check(`${scene} panned ${i}`);
        }
      }
      expect(seen).toBeGreaterThan(60);
      await page.close();
    });
  });

  it.each(['canvas', 'webgl'] as const)(
    'draws every view with %s, without errors or policy violations',
    async (renderer) => {
      const { page, errors } = await open({ scene: 'nightAlarm', renderer, height: 480 });
      for (const view of [...CLOSE_UPS, 'yard'] as const) {
        await page.evaluate((v) => window.harness.view(v), view);
        await page.waitForTimeout(200);
      }
      for (const name of ['halfInked', 'phoneStage', 'coredTank'] as const) {
        await page.evaluate((n) => window.harness.show(n), name);
        await page.waitForTimeout(100);
      }
      const canvas = page.locator('canvas');
      expect(await canvas.getAttribute('aria-hidden')).toBe('true');
      expect(await canvas.getAttribute('tabindex')).toBe('-1');
      expect(await page.evaluate(() => window.violations)).toEqual([]);
      expect(errors).toEqual([]);
      await page.close();
    },
  );

  it.each(['canvas', 'webgl'] as const)('draws every view of every unit with %s', async (renderer) => {
    const { page, errors } = await open({ scene: 'u2Start', renderer, still: true, width: 900, height: 360 });
    const scenes = ['u2Pumps', 'u2Tripped', 'u3Start', 'u3Night'] as const;
    for (const scene of scenes) {
      await page.evaluate((s) => window.harness.show(s), scene);
      for (const view of ['yard', ...CLOSE_UPS] as const) {
        await page.evaluate((v) => window.harness.view(v), view);
        await quiet(page);
      }
    }
    expect(await page.evaluate(() => window.violations)).toEqual([]);
    expect(errors).toEqual([]);
    await page.close();
  });

  it('is whole again after the graphics context was lost', async () => {
    const { page } = await open({ scene: 'idleDay', renderer: 'webgl', still: true, height: 480 });
    const before = await picture(page);
    await page.evaluate(
      () =>
        new Promise<void>((done) => {
          const canvas = document.querySelector('canvas');
          const loss = canvas?.getContext('webgl2')?.getExtension('WEBGL_lose_context');
          canvas?.addEventListener('webglcontextrestored', () => setTimeout(done, 300));
          loss?.loseContext();
          setTimeout(() => loss?.restoreContext(), 100);
        }),
    );
    expect(await picture(page)).toBe(before);
    await page.close();
  });

  it('pans by drag, also where it starts on a button, and keeps a plain press a press', async () => {
    const { page } = await open({ scene: 'idleDay', still: true, width: 390, height: 400 });
    const at = () => page.evaluate(() => window.harness.yard.visible().x);
    const before = await at();
    await page.mouse.move(300, 250);
    await page.mouse.down();
    await page.mouse.move(200, 250, { steps: 4 });
    await page.mouse.up();
    expect(await at()).toBeGreaterThan(before + 0.02);
    expect(await page.evaluate(() => window.harness.pressed)).toEqual([]);
    await page.evaluate(() => window.harness.panTo('compressor'));
    const spot = await page.evaluate(() => window.harness.yard.hotspots().find((s) => s.id === 'compressor'));
    await page.mouse.click((spot?.x ?? 0) + 12, (spot?.y ?? 0) + 12);
    expect(await page.evaluate(() => window.harness.pressed)).toEqual(['compressor']);
    await page.evaluate(() => window.harness.addButton('compressor'));
    const from = await at();
    await page.mouse.move((spot?.x ?? 0) + 12, (spot?.y ?? 0) + 12);
    await page.mouse.down();
    await page.mouse.move((spot?.x ?? 0) - 60, (spot?.y ?? 0) + 12, { steps: 4 });
    await page.mouse.up();
    expect(await at()).toBeGreaterThan(from + 0.02);
    expect(await page.evaluate(() => window.harness.pressed)).toEqual(['compressor']);
    await page.mouse.click((spot?.x ?? 0) + 12, (spot?.y ?? 0) + 12);
    expect(await page.evaluate(() => window.harness.pressed)).toEqual(['compressor', 'panel']);
    await page.close();
  });
});
