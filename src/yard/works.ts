/** The sheet of the whole works. */
import { Container, Graphics } from 'pixi.js';
import type { PartId, Scene } from '../scene/types.ts';
import { Backdrop } from './backdrop.ts';
import { Bubbles } from './bubbles.ts';
import { paintCallouts, paintFrame } from './callouts.ts';
import { type Frame, NARROW } from './camera.ts';
import { Cel } from './cel.ts';
import { Chambers } from './chambers.ts';
import { Drops } from './drops.ts';
import { Eased } from './eased.ts';
import { Effects } from './effects.ts';
import { Fixtures } from './fixtures.ts';
import { Floats } from './floats.ts';
import { inkShare } from './ink.ts';
import { partName } from './labels.ts';
import { LAWN_FOOT, type Layout, layOut, PLATE_TOP, PLATE_WIDTH } from './layout.ts';
import { paintNotes } from './notes.ts';
import { type Box, box } from './pen.ts';
import { Rain } from './rain.ts';
import { keyOf, type Print, type Sheet, type Spot } from './sheet.ts';
import type { Sparks } from './sparks.ts';
import { Spray } from './spray.ts';

/** Least height of the plate: sky for the panel's lamp, the deepest tank, the callouts. */
const LEAST_HEIGHT = 452;

export class Works implements Sheet {
  readonly root = new Container();
  readonly #backdrop = new Backdrop();
  readonly #fixtures = new Fixtures();
  readonly #chambers = new Chambers();
  readonly #floats = new Floats();
  readonly #bubbles: Bubbles;
  readonly #drops: Drops;
  readonly #spray: Spray;
  readonly #effects: Effects;
  readonly #rain = new Rain();
  readonly #callouts = new Cel();
  readonly #notes = new Cel();
  readonly #frame = new Cel();
  readonly #dusk = new Graphics();
  readonly #eased = new Eased();
  #layout: Layout | null = null;
  #layoutKey = '';
  #narrow = false;
  #print: Print | null = null;

  constructor(sparks: Sparks) {
    this.#bubbles = new Bubbles(sparks.bubble);
    this.#drops = new Drops(sparks.drop);
    this.#spray = new Spray(sparks.bead);
    this.#effects = new Effects(sparks);
    const f = this.#fixtures;
    this.root.addChild(
      this.#backdrop.root,
      f.below,
      this.#chambers.root,
      this.#bubbles.root,
      f.pump,
      this.#floats.root,
      f.above,
      this.#drops.root,
      this.#dusk,
      this.#backdrop.light.sprite,
      f.lamp,
      this.#effects.root,
      this.#spray.root,
      this.#rain.root,
      this.#callouts.sprite,
      this.#notes.sprite,
      this.#frame.sprite,
    );
  }

  fit(scene: Scene, width: number, height: number): { limits: Box; home: Frame } {
    const narrow = width < NARROW;
    this.#narrow = narrow;
    const deepest = -scene.geometry.pump.floor_m;
    const scale = narrow
      ? Math.min(1.15, Math.max(0.86, width / 430))
      : Math.min(width / PLATE_WIDTH, height / LEAST_HEIGHT);
    const tall = height / scale;
    const perMetre = narrow ? 118 : Math.min(184, Math.max(92, (tall + PLATE_TOP - 44) / deepest));
    this.#layoutKey = `${narrow}|${perMetre}|${scene.field.heads}|${keyOf(scene.geometry)}`;
    this.#layout = layOut(scene.geometry, perMetre, scene.field.heads);
    const bottom = this.#layout.bottom + 12;
    const extra = Math.max(0, tall - (bottom - PLATE_TOP));
    const top = PLATE_TOP - extra * 0.6;
    const limits = box(0, top, PLATE_WIDTH, Math.max(bottom - PLATE_TOP, narrow ? 0 : tall));
    const home = {
      scale,
      x: narrow ? this.#layout.compressor.x + 40 : PLATE_WIDTH / 2,
      y: narrow ? 10 : limits.y + limits.height / 2,
    };
    return { limits, home };
  }

  /** Where a part is, to zoom to it or to pan to it. */
  partBox(part: PartId): Box {
    return this.#layout?.parts[part] ?? box(0, 0, 1, 1);
  }

  print(p: Print): void {
    const layout = this.#layout;
    if (layout === null) return;
    this.#print = p;
    this.#aim(p);
    const { scene } = p;
    this.#backdrop.print(layout, p);
    this.#fixtures.print(layout, p, Spray.up(this.#pressure()));
    this.#paintMoving(layout, p);
    const night = 1 - scene.sky.daylight;
    const d = this.#dusk.clear();
    if (night > 0.02) {
      d.rect(p.area.x, p.area.y, p.area.width, Math.max(0, Math.min(LAWN_FOOT, p.area.y + p.area.height) - p.area.y));
      d.fill({ color: 0x10182a, alpha: 0.42 * night });
    }
    this.#rain.set(p.area, scene.sky.rain, p.scale);
    const size = 14 / p.unit;
    const language = p.text(partName('trash-tank'));
    this.#callouts.show(p.area, p.scale, `${this.#layoutKey}|${language}`, (pen) =>
      paintCallouts(pen, layout, size, p.text, this.#narrow),
    );
    const notes = scene.notes.map((n) => [n.part, n.ink.kind, p.text(n.text)]);
    if (notes.length > 0) {
      this.#notes.show(p.area, p.scale, `${this.#layoutKey}|${keyOf(notes)}`, (pen) =>
        paintNotes(pen, layout, scene.notes, 12.5 / p.unit, p.text),
      );
    } else this.#notes.hide();
    this.#showFrame(layout, p, size);
    this.root.visible = true;
  }

  step(t: number, dt: number): boolean {
    const p = this.#print;
    const layout = this.#layout;
    if (p === null || layout === null) return false;
    const easing = this.#eased.step(dt, 0.0008);
    if (easing) this.#paintMoving(layout, p);
    if (easing) this.#fixtures.print(layout, p, Spray.up(this.#pressure()));
    let moving = easing;
    for (const m of [this.#bubbles, this.#drops, this.#spray, this.#effects, this.#rain]) {
      moving = m.step(t, dt) || moving;
    }
    return moving;
  }

  spots(): readonly Spot[] {
    const layout = this.#layout;
    if (layout === null) return [];
    return (Object.keys(layout.parts) as PartId[]).map((id) => ({ id, box: layout.parts[id], label: partName(id) }));
  }

  stale(): void {
    this.#backdrop.stale();
    this.#fixtures.stale();
    this.#chambers.stale();
    this.#floats.stale();
    this.#rain.stale();
    for (const c of [this.#callouts, this.#notes, this.#frame]) c.stale();
  }

  dispose(): void {
    this.root.destroy({ children: true, texture: true, textureSource: true });
  }

  #pressure(): number {
    return (this.#eased.get('heads') ?? 0) * 1000;
  }

  #aim(p: Print): void {
    const { chambers, field } = p.scene;
    for (const c of Object.values(chambers)) this.#eased.aim(c.id, c.level_m, p.still);
    // In MPa, so that one fineness serves metres and pressure alike.
    const heads = field.ink.kind === 'pencil' ? null : field.headPressure_kPa;
    this.#eased.aim('heads', heads === null ? null : heads / 1000, p.still);
  }

  /** What follows gliding values. */
  #paintMoving(layout: Layout, p: Print): void {
    const { scene } = p;
    this.#chambers.print(layout, p, this.#eased);
    this.#floats.show(layout, scene.floats, p.scale);
    const air = scene.chambers.aeration;
    const level = this.#eased.get('aeration');
    const surface = level === null ? layout.aeration.outletY : layout.y(level);
    const known = level !== null && air.bubbles_Lmin !== null;
    this.#bubbles.set(layout, known ? (air.bubbles_Lmin ?? 0) : 0, surface, inkShare(air.ink), air.ink.kind !== 'live');
    this.#drops.set(layout, scene.flows);
    this.#spray.set(layout, this.#pressure(), scene.field.throw_m);
    this.#effects.set(layout, scene);
  }

  #showFrame(layout: Layout, p: Print, size: number): void {
    if (p.selected === null) {
      this.#frame.hide();
      return;
    }
    const b = layout.parts[p.selected];
    const name = p.text(partName(p.selected));
    const numbered = name === '' ? null : name;
    // The name stands clear of the panel, which is next to the compressor, and of the plate's right edge.
    const side = p.selected === 'compressor' || p.selected === 'spray-field' ? 'right' : 'left';
    const area = box(b.x - size * 18, b.y - size * 3, b.width + size * 36, b.height + size * 6);
    this.#frame.show(area, p.scale, `${this.#layoutKey}|${p.selected}|${name}`, (pen) =>
      paintFrame(pen, b, size, numbered, side),
    );
  }
}
