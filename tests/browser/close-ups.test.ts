import { expect, it } from 'vitest';
import { CLOSE_UPS as CLOSE_UP_OF } from '../../src/desk/picture.ts';
import type { ChamberScene, Scene, WaterLook } from '../../src/scene/types.ts';
import type { ViewName } from '../../src/yard/types.ts';
import { SCENES, type SceneName } from './fixtures/index.ts';
import { SETTLED } from './fixtures/scenes.ts';
import { drawnPages, picture, quiet } from './harness/drawn.ts';
import type { Changes } from './harness/harness.ts';
import { inBrowser } from './page.ts';

const CLOSE_UPS = Object.values(CLOSE_UP_OF);

inBrowser('the close-ups', () => {
  const open = drawnPages();

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
});
