/** What the glass shows and says: only what is known, in numbers where they were computed or measured. */
import { describe, expect, it } from 'vitest';
import type { Ink, Scene } from '../../src/scene/types.ts';
import { layOut } from '../../src/yard/layout.ts';
import { BORE_m, pipeDepth_m } from '../../src/yard/pipeDepth.ts';
import { sightAt, stopsOf } from '../../src/yard/sights.ts';
import { SCENES } from '../browser/fixtures/index.ts';

const PER_METRE = 120;
const all = (scene: Scene) => {
  const layout = layOut(scene, PER_METRE);
  return stopsOf(layout, scene).map((at) => sightAt(layout, scene, at));
};
const said = (scene: Scene, id: string) => all(scene).filter(({ says }) => JSON.stringify(says).includes(id));

describe('the water in a pipe', () => {
  it('fills half of the bore at half of what the full pipe carries (Manning, any textbook)', () => {
    const radius = BORE_m / 2;
    const full_m3s = (1 / 0.01) * Math.PI * radius ** 2 * (radius / 2) ** (2 / 3) * Math.sqrt(1 / 48);
    expect(pipeDepth_m(500 * full_m3s)).toBeCloseTo(radius, 6);
  });

  it('is deeper the more of it runs, nothing without any, and never more than the bore', () => {
    expect(pipeDepth_m(0)).toBeCloseTo(0, 6);
    const depths = [0.05, 0.2, 1, 4, 50].map(pipeDepth_m);
    expect(depths).toEqual([...depths].sort((a, b) => a - b));
    expect(depths.at(-1)).toBe(BORE_m);
  });
});

describe('the glass', () => {
  it('finds pipes, air, every float and every chamber of each unit', () => {
    for (const scene of [SCENES.idleDay, SCENES.u2Day, SCENES.u3Day]) {
      const kinds = new Set(all(scene).map(({ cut }) => cut.kind));
      expect([...kinds].sort()).toEqual(['air', 'float', 'pipe', 'water']);
      expect(said(scene, 'glass.nothing')).toEqual([]);
    }
  });

  it('tells flow and depth of the sewer as they were computed', () => {
    const [sewer] = said(SCENES.idleDay, 'glass.name.sewer');
    expect(sewer?.says.id).toBe('glass.pipe.open');
    expect(sewer?.says.values).toMatchObject({ flow: { value: 0.08 }, depth: { value: pipeDepth_m(0.08) } });
    expect(sewer?.cut).toMatchObject({ kind: 'pipe', flows: true, full: pipeDepth_m(0.08) / BORE_m });
  });

  it('tells whether a float has made its contact', () => {
    const made = said(SCENES.nightAlarm, 'yard.float.high-water');
    expect(JSON.stringify(made)).toContain('glass.float.made');
    const open = said(SCENES.idleDay, 'yard.float.high-water');
    expect(JSON.stringify(open)).toContain('glass.float.open');
  });

  it('says the weather where it is held to the sky', () => {
    const upAt = (scene: Scene) => sightAt(layOut(scene, PER_METRE), scene, [500, -150]).says;
    expect(upAt(SCENES.idleDay)).toMatchObject({ id: 'sky.dry', values: { cloud: { value: 0.1 } } });
    expect(upAt(SCENES.stormNight)).toMatchObject({ id: 'sky.rain', values: { rain: { value: 0.014 } } });
  });

  it('has seen nothing when the phone rings, whatever the truth is', () => {
    const hide = <T extends { readonly ink: Ink }>(part: T): T => ({ ...part, ink: { kind: 'pencil' } });
    const { chambers, floats, field } = SCENES.nightAlarm;
    const leaky: Scene = {
      ...SCENES.callStart,
      chambers: {
        'trash-tank': hide(chambers['trash-tank']),
        aeration: hide(chambers.aeration),
        clarifier: hide(chambers.clarifier),
        disinfection: hide(chambers.disinfection),
        'pump-tank': hide(chambers['pump-tank']),
      },
      floats: floats.map(hide),
      field: hide(field),
      compressor: hide(SCENES.nightAlarm.compressor),
    };
    expect(all(leaky)).toEqual(all(SCENES.callStart));
    for (const { says } of all(leaky)) expect(['glass.unseen', 'glass.float']).toContain(says.id);
    expect(said(leaky, 'glass.float.made')).toEqual([]);
  });

  it('tells no figures of a call’s water: they are those of an ordinary unit', () => {
    const seen = said(SCENES.halfInked, 'part.aeration');
    expect(seen.map(({ says }) => says.id)).toEqual(['glass.water.seen']);
    expect(JSON.stringify(seen.map(({ says }) => says))).not.toContain('concentration_mgL');
  });
});
