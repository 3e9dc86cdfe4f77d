import { createHash } from 'node:crypto';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CLOSE_UPS as CLOSE_UP_OF } from '../../src/desk/picture.ts';
import { type ChamberScene, PART_IDS, type Scene, type WaterLook } from '../../src/scene/types.ts';
import { findBrowser, LAUNCH_ARGS } from '../../src/tools/browser.ts';
import { overlap } from '../../src/yard/pen.ts';
import type { ViewName } from '../../src/yard/types.ts';
import { SCENES, type SceneName, SKIES } from './fixtures/index.ts';
import { SETTLED } from './fixtures/scenes.ts';
import type { Changes, Harness } from './harness/harness.ts';
import { type Served, serveHarness } from './harness/serve.ts';
import { inBrowser } from './page.ts';

declare global {
  interface Window {
    harness: Harness;
    violations: string[];
  }
}

const CLOSE_UPS = Object.values(CLOSE_UP_OF);

interface Ask {
  readonly scene: SceneName;
  readonly renderer?: 'canvas' | 'webgl';
  readonly still?: boolean;
  readonly width?: number;
  readonly height?: number;
}

inBrowser('the drawn yard', () => {
  let served: Served;
  let browser: Browser;

  beforeAll(async () => {
    served = await serveHarness();
    browser = await chromium.launch({ executablePath: findBrowser() ?? '', args: LAUNCH_ARGS });
  });
  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });

  async function open({ scene, renderer = 'canvas', still = false, width = 1280, height = 800 }: Ask) {
    const page = await browser.newPage({ viewport: { width, height }, deviceScaleFactor: 1 });
    const errors: string[] = [];
    page.on('pageerror', (e) => errors.push(String(e)));
    page.on('console', (m) => m.type() === 'error' && errors.push(m.text()));
    await page.addInitScript(() => {
      window.violations = [];
      document.addEventListener('securitypolicyviolation', (e) =>
        window.violations.push(`${e.violatedDirective} ${e.blockedURI}`),
      );
    });
    await page.goto(`${served.url}?scene=${scene}&renderer=${renderer}${still ? '&still' : ''}`);
    await page.waitForSelector('html[data-ready]');
    return { page, errors };
  }

  const quiet = (page: Page) => page.waitForFunction(() => !window.harness.yard.moving);
  const picture = async (page: Page) => {
    await quiet(page);
    return createHash('sha256')
      .update(await page.screenshot({ animations: 'disabled' }))
      .digest('hex');
  };

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
  const DRAWN: readonly (readonly [(typeof CLOSE_UPS)[number], string, Changes])[] = [
    ['discs', 'passage left', { discFilter: { flowShare: 0.4 } }],
    ['discs', 'lid', { discFilter: { open: true } }],
    ['discs', 'pressure at the field', { field: { headPressure_kPa: 120 } }],
    ['discs', 'flow', { flows: { discharge_Ls: 0.3 } }],
    ['discs', 'water', { chambers: { 'pump-tank': { water: { solids_mgL: 400 } } } }],
    ['clarifier', 'level', { chambers: { clarifier: { level_m: -0.6 } } }],
    ['clarifier', 'blanket', { chambers: { clarifier: { sludge_m: 0.5 } } }],
    ['clarifier', 'scum', { chambers: { clarifier: { scum_m: 0.05 } } }],
    ['clarifier', 'solids', { chambers: { clarifier: { water: { solids_mgL: 200 } } } }],
    ['clarifier', 'lid', { chambers: { clarifier: { lid: 'open' } } }],
    ['clarifier', 'flow', { flows: { clarifierOut_Ls: 0.2 } }],
    ['clarifier', 'inflow', { flows: { trashOut_Ls: 0 } }],
    ['clarifier', 'air', { chambers: { aeration: { bubbles_Lmin: 20 } } }],
    ['clarifier', 'liquor', { chambers: { aeration: { water: { hoursWithoutOxygen: 20 } } } }],
  ];
  it('draws another picture for another value of what a close-up shows', async () => {
    const { page } = await open({ scene: 'idleDay', still: true });
    for (const view of ['discs', 'clarifier'] as const) {
      await page.evaluate((v) => window.harness.view(v), view);
      await page.evaluate(() => window.harness.show('idleDay'));
      const before = await picture(page);
      for (const [, what, changes] of DRAWN.filter(([where]) => where === view)) {
        await page.evaluate((c) => window.harness.showWith('idleDay', c), changes);
        expect(await picture(page), `${view}: ${what}`).not.toBe(before);
      }
      await page.evaluate(() => window.harness.show('idleDay'));
      expect(await picture(page), view).toBe(before);
    }
    await page.close();
  });

  it('tells the figures of a close-up, and of what nobody saw none', async () => {
    const { page } = await open({ scene: 'idleDay', still: true });
    const told = (view: ViewName, scene: SceneName) =>
      page.evaluate(
        async ([v, s]) => {
          await window.harness.view(v);
          window.harness.show(s);
          return window.harness.yard.told().map(([name]) => name.id);
        },
        [view, scene] as const,
      );
    const open_ = await told('compressor', 'idleDay');
    expect(open_).toEqual(expect.arrayContaining(['plate.compressor.pressure', 'plate.compressor.stroke']));
    for (const view of ['discs', 'clarifier', 'core', 'jar'] as const) {
      expect(await told(view, 'coredTank'), view).not.toEqual([]);
    }
    for (const view of CLOSE_UPS) expect(await told(view, 'callStart'), view).toEqual([]);
    expect(await told('yard', 'idleDay')).toEqual([]);
    await page.close();
  });

  it('lets nothing move in a close-up where nobody knows how the water flows', async () => {
    const { page } = await open({ scene: 'callStart' });
    const told = { ink: { kind: 'live' }, level_m: -0.65, water: { solids_mgL: 15 } };
    await page.evaluate((v) => window.harness.view(v), 'clarifier' as const);
    await page.evaluate((c) => window.harness.showWith('idleDay', c), {
      flows: { trashOut_Ls: null, clarifierOut_Ls: null, discharge_Ls: null },
      chambers: { clarifier: { ...told, sludge_m: null }, aeration: { bubbles_Lmin: null } },
    } as const satisfies Changes);
    await quiet(page);
    await page.evaluate((v) => window.harness.view(v), 'discs' as const);
    await quiet(page);
    await page.evaluate(() => window.harness.show('nightAlarm'));
    await page.waitForFunction(() => window.harness.yard.moving);
    await page.close();
  });

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

  const { jar, chambers, geometry } = SCENES.idleDay;
  const { 'trash-tank': trash, 'pump-tank': pump } = SCENES.coredTank.chambers;
  const tank = (change: Partial<ChamberScene>) => ({
    chambers: { ...chambers, 'trash-tank': { ...trash, ...change } },
  });
  const thick = (look: WaterLook | null, change: Partial<WaterLook>): WaterLook => ({ ...SETTLED, ...look, ...change });
  const CHANGES: readonly (readonly [ViewName, string, Partial<Scene>])[] = [
    ['jar', 'as it is', { jar }],
    ['jar', 'sludge line', { jar: { ...jar, settled_mLL: 620 } }],
    ['jar', 'no line', { jar: { ...jar, settled_mLL: 1000 } }],
    ['jar', 'no sludge', { jar: { ...jar, settled_mLL: 0 } }],
    ['jar', 'liquor', { jar: { ...jar, sludge: thick(jar.sludge, { hoursWithoutOxygen: 30 }) } }],
    ['jar', 'solids above', { jar: { ...jar, above: thick(jar.above, { solids_mgL: 90 }) } }],
    ['jar', 'specks', { jar: { ...jar, specks: true } }],
    ['jar', 'lifted', { jar: { ...jar, floats: true } }],
    ['jar', 'verdict', { jar: { ...jar, verdict: 'thin' } }],
    ['jar', 'curve', { jar: { ...jar, curve: [] } }],
    ['jar', 'minutes', { jar: { ...jar, minutes: 60 } }],
    ['core', 'as it is', tank({})],
    ['core', 'level', tank({ level_m: -0.9 })],
    ['core', 'lid', tank({ lid: 'closed' })],
    ['core', 'water', tank({ water: SETTLED })],
    ['core', 'scum', tank({ scum_m: 0.2 })],
    ['core', 'scum not probed', tank({ scum_m: null })],
    ['core', 'sludge', tank({ sludge_m: 0.4 })],
    ['core', 'sludge not probed', tank({ sludge_m: null })],
    ['core', 'level not seen', tank({ level_m: null, water: null })],
    ['core', 'limit', { ...tank({}), geometry: { ...geometry, fullAt: { trash_m: 0.2, pump_m: 0.23 } } }],
    ['core', 'cores', { chambers: { ...chambers, 'trash-tank': trash, 'pump-tank': pump } }],
    [
      'core',
      'a core',
      { chambers: { ...chambers, 'trash-tank': trash, 'pump-tank': { ...pump, cores: pump.cores.slice(1) } } },
    ],
  ];

  it('draws every value of the jar and of the core tube, each as its own', async () => {
    const { page, errors } = await open({ scene: 'idleDay', still: true });
    const seen = new Map<string, string>();
    for (const [view, what, change] of CHANGES) {
      await page.evaluate(
        async ([v, c]) => {
          await window.harness.view(v);
          window.harness.showParts('idleDay', c);
        },
        [view, change] as const,
      );
      const drawn = await picture(page);
      const same = [...seen].find(([, hash]) => hash === drawn);
      expect(same?.[0], `${view} ${what}`).toBeUndefined();
      seen.set(`${view} ${what}`, drawn);
    }
    expect(errors).toEqual([]);
    await page.close();
  });

  it('lets flecks sink in the jar, as long as its water has any, and none in the calm view', async () => {
    const { page } = await open({ scene: 'halfInked' });
    const moves = () => page.evaluate(() => window.harness.yard.moving);
    await page.evaluate(() => window.harness.view('jar'));
    await page.waitForTimeout(600);
    expect(await moves()).toBe(true);
    await page.evaluate(() => window.harness.yard.setStill(true));
    await quiet(page);
    await page.evaluate(() => window.harness.yard.setStill(false));
    await page.evaluate(() => window.harness.show('callStart'));
    await quiet(page);
    expect(await moves()).toBe(false);
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
