/** The sheet of the whole works. */
import { Container } from 'pixi.js';
import type { PartId, Scene } from '../scene/types.ts';
import type { Message } from '../service/message.ts';
import { Backdrop } from './backdrop.ts';
import type { Bubbles } from './bubbles.ts';
import { paintFrame, paintNames } from './callouts.ts';
import { type Frame, NARROW } from './camera.ts';
import { Cel } from './cel.ts';
import { Chambers } from './chambers.ts';
import { Eased } from './eased.ts';
import { Effects } from './effects.ts';
import { Fixtures } from './fixtures.ts';
import { Floats } from './floats.ts';
import { inkShare } from './ink.ts';
import { fieldName, partName } from './labels.ts';
import { type Layout, layOut, PLATE_TOP, PLATE_WIDTH } from './layout.ts';
import { type Name, namesOnPlate, namesWithin, roomForWords, type Setting } from './names.ts';
import { type Needed, neededFor } from './needed.ts';
import { paintNotes } from './notes.ts';
import type { OpenAir } from './openAir.ts';
import { type Box, box, textWidth } from './pen.ts';
import { keyOf, type Print, type Sheet, type Spot } from './sheet.ts';
import type { Sparks } from './sparks.ts';
import type { Spray } from './spray.ts';
import { headsUp } from './sprayField.ts';
import type { Waters } from './waters.ts';

/** Least height of the plate: sky for the panel's lamp, the deepest tank, the callouts. */
const LEAST_HEIGHT = 452;

/** Sky over the plate on a narrow screen: at first enough to leave the lamp in sight below the alarm's band, at most
 * enough to set the panel below a button as well. */
const BAND = 22;
const HEADROOM = 100;

export class Works implements Sheet {
  readonly root = new Container();
  readonly #backdrop = new Backdrop();
  readonly #fixtures = new Fixtures();
  readonly #chambers = new Chambers();
  readonly #floats = new Floats();
  #bubbles: Bubbles | null = null;
  readonly #effects: Effects;
  readonly #sparks: Sparks;
  #air: OpenAir | null = null;
  #waters: Waters | null = null;
  #spray: Spray | null = null;
  readonly #coming = new Map<Needed, Promise<unknown>>();
  readonly #here = new Set<Needed>();
  readonly #names = new Cel();
  readonly #notes = new Cel();
  readonly #frame = new Cel();
  readonly #eased = new Eased();
  #layout: Layout | null = null;
  #layoutKey = '';
  #narrow = false;
  #named: readonly Name[] = [];
  #noted: readonly Box[] = [];
  #tag: Box | null = null;
  #print: Print | null = null;

  constructor(sparks: Sparks) {
    this.#sparks = sparks;
    this.#effects = new Effects(sparks);
    const f = this.#fixtures;
    this.root.addChild(
      this.#backdrop.root,
      f.below,
      this.#chambers.root,
      f.pump,
      this.#floats.root,
      f.above,
      f.lamp,
      this.#effects.root,
      this.#names.sprite,
      this.#notes.sprite,
      this.#frame.sprite,
    );
  }

  fit(scene: Scene, width: number, height: number): { limits: Box; home: Frame } {
    const narrow = width < NARROW;
    this.#narrow = narrow;
    const deepest = -scene.geometry.pump.floor_m;
    const scale = narrow
      ? Math.max(0.8, Math.min(1.15, width / 454, Math.max(0.86, height / 430)))
      : Math.min(width / PLATE_WIDTH, height / LEAST_HEIGHT);
    const tall = height / scale;
    const perMetre = narrow ? 118 : Math.min(184, Math.max(92, (tall + PLATE_TOP - 44) / deepest));
    const { kind, heads } = scene.field;
    this.#layoutKey = `${narrow}|${perMetre}|${kind}${heads}|${keyOf(scene.geometry)}`;
    this.#layout = layOut(scene, perMetre);
    const bottom = this.#layout.bottom + 12;
    const extra = Math.max(0, tall - (bottom - PLATE_TOP));
    const top = PLATE_TOP - (narrow ? HEADROOM : extra * 0.6);
    const limits = box(0, top, PLATE_WIDTH, narrow ? bottom - top : Math.max(bottom - PLATE_TOP, tall));
    const home = {
      scale,
      x: narrow ? this.#layout.compressor.x + 40 : PLATE_WIDTH / 2,
      y: narrow ? PLATE_TOP - BAND + tall / 2 : limits.y + limits.height / 2,
    };
    return { limits, home };
  }

  /** What is still to be fetched before a scene can be drawn whole; undefined where nothing is, or no longer. */
  prepare(scene: Scene): Promise<unknown> | undefined {
    const wanted = neededFor(scene).flatMap((part) => {
      if (this.#here.has(part)) return [];
      const coming = this.#coming.get(part) ?? this.#fetch(part).then(() => this.#here.add(part));
      this.#coming.set(part, coming);
      return [coming];
    });
    return wanted.length === 0 ? undefined : Promise.all(wanted);
  }

  async #fetch(part: Needed): Promise<void> {
    const { root } = this;
    const at = (child: Container) => root.getChildIndex(child);
    if (part === 'air') {
      const air = new (await import('./openAir.ts')).OpenAir();
      this.#air = air;
      this.#backdrop.hang(air);
      root.addChildAt(air.over, at(this.#fixtures.lamp));
      root.addChildAt(air.root, at(this.#names.sprite));
    } else if (part === 'waters') {
      this.#waters = new (await import('./waters.ts')).Waters(this.#sparks);
      root.addChildAt(this.#waters.root, at(this.#fixtures.above) + 1);
    } else if (part === 'bubbles') {
      this.#bubbles = new (await import('./bubbles.ts')).Bubbles(this.#sparks.bubble);
      root.addChildAt(this.#bubbles.root, at(this.#chambers.root) + 1);
    } else if (part === 'spray') {
      this.#spray = new (await import('./spray.ts')).Spray(this.#sparks.bead);
      root.addChildAt(this.#spray.root, at(this.#effects.root) + 1);
    } else this.#fixtures.rare = await import('./rareParts.ts');
  }

  get layout(): Layout | null {
    return this.#layout;
  }

  /** All that is drawn but words and frame. */
  get pictured(): readonly Container[] {
    const words: readonly Container[] = [this.#names, this.#notes, this.#frame].map(({ sprite }) => sprite);
    return this.root.children.filter((child) => !words.includes(child));
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
    this.#backdrop.print(layout, p, this.#air);
    this.#fixtures.print(layout, p, this.#headsUp(p));
    this.#paintMoving(layout, p);
    this.#air?.print(layout, p);
    this.#showWords(layout, p);
    this.root.visible = true;
  }

  step(t: number, dt: number): boolean {
    const p = this.#print;
    const layout = this.#layout;
    if (p === null || layout === null) return false;
    const easing = this.#eased.step(dt, 0.0008);
    if (easing) this.#paintMoving(layout, p);
    if (easing) this.#fixtures.print(layout, p, this.#headsUp(p));
    let moving = easing;
    for (const m of [this.#backdrop, this.#bubbles, this.#waters, this.#spray, this.#effects, this.#air]) {
      moving = m?.step(t, dt) || moving;
    }
    return moving;
  }

  spots(): readonly Spot[] {
    const layout = this.#layout;
    if (layout === null) return [];
    const scene = this.#print?.scene;
    return (Object.keys(layout.parts) as PartId[]).map((id) => ({
      id,
      box: layout.parts[id],
      label: scene === undefined ? partName(id) : nameOf(id, scene),
    }));
  }

  labels(): readonly Box[] {
    return [...this.#named.map((n) => n.box), ...this.#noted, ...(this.#tag === null ? [] : [this.#tag])];
  }

  stale(): void {
    this.#backdrop.stale();
    this.#fixtures.stale();
    this.#chambers.stale();
    this.#floats.stale();
    this.#air?.stale();
    for (const c of [this.#names, this.#notes, this.#frame]) c.stale();
  }

  dispose(): void {
    this.root.destroy({ children: true, texture: true, textureSource: true });
  }

  #pressure(): number {
    return (this.#eased.get('heads') ?? 0) * 1000;
  }

  #headsUp(p: Print): number {
    return headsUp(this.#pressure(), p.scene.field);
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
    const stored = this.#eased.get('pump-tank');
    this.#floats.show(layout, scene.floats, p.scale, stored === null ? null : layout.y(stored));
    const air = scene.chambers.aeration;
    const level = this.#eased.get('aeration');
    const surface = level === null ? layout.aeration.outletY : layout.y(level);
    const known = level !== null && air.bubbles_Lmin !== null;
    const rising = known ? (air.bubbles_Lmin ?? 0) : 0;
    this.#bubbles?.set(layout, rising, surface, inkShare(air.ink), air.ink.kind !== 'live');
    this.#waters?.set(layout, scene, this.#eased);
    this.#spray?.set(layout, this.#pressure(), scene);
    this.#effects.set(layout, scene);
  }

  /** Names, notes and the frame's tag, whole on the screen and none over another. */
  #showWords(layout: Layout, p: Print): void {
    const size = (this.#narrow ? 13 : 14) / p.unit;
    const whole = !this.#narrow && p.view.width > PLATE_WIDTH * 0.9;
    const free = roomForWords(p.view, size, this.#narrow, whole);
    const area = whole ? p.area : p.view;
    const language = p.text(partName('trash-tank'));
    this.#names.show(area, p.scale, `${this.#layoutKey}|${language}|${whole}`, (pen) => {
      const setting: Setting = {
        size,
        name: (part) => p.text(nameOf(part, p.scene)),
        measure: (line) => textWidth(pen, line, { size, weight: 700 }),
      };
      this.#named = (whole ? namesOnPlate : namesWithin)(layout, free, setting);
      paintNames(pen, this.#named, size);
    });
    this.#showNotes(layout, p, area, whole ? null : free);
    this.#showFrame(layout, p, size, free);
  }

  #showNotes(layout: Layout, p: Print, area: Box, free: Box | null): void {
    const { notes } = p.scene;
    if (notes.length === 0) {
      this.#notes.hide();
      this.#noted = [];
      return;
    }
    const said = notes.map((n) => [n.part, n.ink.kind, p.text(n.text)]);
    const taken = this.#named.map((n) => n.box);
    this.#notes.show(area, p.scale, `${this.#layoutKey}|${keyOf(said)}`, (pen) => {
      this.#noted = paintNotes(pen, layout, notes, 12.5 / p.unit, p.text, free, taken);
    });
  }

  #showFrame(layout: Layout, p: Print, size: number, free: Box): void {
    if (p.selected === null) {
      this.#frame.hide();
      this.#tag = null;
      return;
    }
    const b = layout.parts[p.selected];
    const name = p.text(nameOf(p.selected, p.scene));
    // The name stands clear of the panel, which is next to the compressor, and of the plate's right edge.
    const flush = p.selected === 'compressor' || p.selected === 'spray-field' ? 'right' : 'left';
    const taken = [...this.#named.map((n) => n.box), ...this.#noted];
    const area = box(b.x - size * 18, b.y - size * 3, b.width + size * 36, b.height + size * 6);
    const key = [this.#layoutKey, p.selected, name, Math.round(free.x), Math.round(free.y), taken.length].join('|');
    this.#frame.show(area, p.scale, key, (pen) => {
      this.#tag = paintFrame(pen, b, size, { name, flush, free, taken });
    });
  }
}

function nameOf(part: PartId, { field }: Scene): Message {
  return part === 'spray-field' ? fieldName(field.kind) : partName(part);
}
