/**
 * A close-up of one part as a plate of a handbook: what stands round it, the part in pencil, the ink of what is known of
 * it, what moves in it, and names with figures on top.
 */
import { Container, Graphics } from 'pixi.js';
import type { GeometryScene, Ink, Scene } from '../scene/types.ts';
import type { Message } from '../service/message.ts';
import { type Frame, NARROW } from './camera.ts';
import { Cel } from './cel.ts';
import { inkShare } from './ink.ts';
import { Inked } from './inked.ts';
import type { Mover } from './motion.ts';
import { type Box, box, type Pen } from './pen.ts';
import { label, type Reading } from './plateMessages.ts';
import { keyOf, type Print, type Sheet, type Spot } from './sheet.ts';
import type { Staff } from './types.ts';

/** The sheet of every plate, units of its own. */
export const PLATE = box(0, 0, 1180, 520);

/** What moves in a plate; it hides itself where the part is not seen. */
export interface PlateMover extends Mover {
  print(p: Print): void;
  stale(): void;
}

/** What names and figures are written with. */
export interface PlateWords {
  readonly scene: Scene;
  /** Whether anything of the part was seen. */
  readonly seen: boolean;
  readonly size: number;
  /** What is on the screen: a name that would be cut is left out. */
  readonly view: Box;
  readonly text: (m: Message) => string;
  readonly staff: Staff;
}

export interface Plate {
  /** The middle of what a narrow screen begins with. */
  readonly focus: readonly [number, number];
  ink(scene: Scene): Ink;
  /** Everything of the scene that the plate is painted from. */
  seen(scene: Scene): unknown;
  ground(pen: Pen, area: Box, geometry: GeometryScene): void;
  /** Gets no state, so none can show through it. */
  pencil(pen: Pen, geometry: GeometryScene): void;
  paint(pen: Pen, scene: Scene): void;
  words(pen: Pen, words: PlateWords): void;
  /** Its figures, for who is told them instead of shown. */
  told(scene: Scene): readonly Reading[];
  readonly movers: readonly PlateMover[];
}

const NIGHT = 0x141b2b;

export class PlateSheet implements Sheet {
  readonly root = new Container();
  readonly #plate: Plate;
  readonly #ground = new Cel();
  readonly #dusk = new Graphics();
  readonly #part = new Inked();
  readonly #words = new Cel();

  #scene: Scene | null = null;

  constructor(plate: Plate) {
    this.#plate = plate;
    const movers = plate.movers.map((mover) => mover.root);
    this.root.addChild(this.#ground.sprite, this.#dusk, this.#part.root, ...movers, this.#words.sprite);
  }

  fit(_scene: Scene, width: number, height: number): { limits: Box; home: Frame } {
    const narrow = width < NARROW;
    const scale = narrow
      ? Math.max(0.74, Math.min(width / 560, height / 480))
      : Math.min(width / PLATE.width, height / PLATE.height);
    const extra = narrow ? 0 : Math.max(0, height / scale - PLATE.height);
    const wider = narrow ? 0 : Math.max(0, width / scale - PLATE.width);
    const limits = box(-wider / 2, -extra / 2, PLATE.width + wider, PLATE.height + extra);
    const [x, y] = narrow ? this.#plate.focus : [PLATE.width / 2, PLATE.height / 2];
    return { limits, home: { scale, x, y } };
  }

  print(p: Print): void {
    const { scene, scale, area } = p;
    const plate = this.#plate;
    this.#scene = scene;
    const { geometry } = scene;
    const lie = keyOf(geometry);
    this.#ground.show(area, scale, lie, (pen) => plate.ground(pen, area, geometry));
    const night = 1 - scene.sky.daylight;
    this.#dusk.clear();
    if (night > 0.02) {
      this.#dusk.rect(area.x, area.y, area.width, area.height).fill({ color: NIGHT, alpha: 0.62 * night });
    }
    const ink = plate.ink(scene);
    const seen = inkShare(ink) > 0;
    const values = keyOf(plate.seen(scene));
    this.#part.show(
      area,
      scale,
      ink,
      { key: lie, paint: (pen) => plate.pencil(pen, geometry) },
      { key: lie + values, paint: (pen) => plate.paint(pen, scene) },
    );
    for (const mover of plate.movers) mover.print(p);
    const { view, text, staff } = p;
    const words: PlateWords = { scene, seen, size: Math.min(18, Math.max(13, 14 / p.unit)), view, text, staff };
    const key = keyOf([lie, seen ? values : null, words.size, view.x, view.width]);
    this.#words.show(area, scale, key, (pen) => plate.words(pen, words));
    this.step(0.3, 0);
  }

  step(t: number, dt: number): boolean {
    return this.#plate.movers.map((mover) => mover.step(t, dt)).some((moves) => moves);
  }

  spots(): readonly Spot[] {
    return [];
  }

  labels(): readonly Box[] {
    return [];
  }

  told(): readonly (readonly [Message, Message])[] {
    const scene = this.#scene;
    if (scene === null || inkShare(this.#plate.ink(scene)) <= 0) return [];
    return this.#plate.told(scene).flatMap(([name, value]) => (value === null ? [] : [[label(name), value] as const]));
  }

  stale(): void {
    for (const one of [this.#ground, this.#part, this.#words, ...this.#plate.movers]) one.stale();
  }

  dispose(): void {
    this.root.destroy({ children: true });
  }
}
