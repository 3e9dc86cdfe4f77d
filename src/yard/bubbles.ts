/** Air that rises from the diffusers: their number goes with the litres per minute, none for a still surface. */
import { Container, Sprite, type Texture } from 'pixi.js';
import { noise } from './hash.ts';
import type { Layout } from './layout.ts';
import type { Mover } from './motion.ts';

/** Where it rises from. */
type Lines = Pick<Layout, 'diffuserY' | 'dropLines'>;

const MOST = 240;
/** Air flow at which the drawing is as full as it gets, L/min. */
const FULL_LMIN = 110;

interface Bubble {
  readonly sprite: Sprite;
  readonly line: number;
  readonly phase: number;
  readonly sway: number;
  readonly speed: number;
  readonly size: number;
  readonly reach: number;
}

export class Bubbles implements Mover {
  readonly root = new Container();
  readonly #all: Bubble[] = [];
  #layout: Lines | null = null;
  #count = 0;
  #surface = 0;
  #frozen = false;

  constructor(texture: Texture) {
    const r = noise(23);
    for (let i = 0; i < MOST; i++) {
      const sprite = new Sprite(texture);
      sprite.anchor.set(0.5);
      sprite.visible = false;
      this.root.addChild(sprite);
      this.#all.push({
        sprite,
        line: i % 3,
        phase: r(),
        sway: r() * 6.28,
        speed: 0.28 + r() * 0.2,
        size: 0.1 + r() * r() * 0.26,
        reach: (r() - 0.5) * 46,
      });
    }
  }

  /** `alpha` follows the ink; `frozen` bubbles are a sight remembered, not one seen now. */
  set(layout: Lines, flow_Lmin: number, surfaceY: number, alpha: number, frozen: boolean): void {
    this.#layout = layout;
    this.#surface = surfaceY;
    this.#frozen = frozen;
    const share = Math.min(1, Math.max(0, flow_Lmin / FULL_LMIN));
    this.#count = flow_Lmin > 0.5 ? Math.max(6, Math.round(MOST * share)) : 0;
    this.root.alpha = alpha;
    for (const [i, b] of this.#all.entries()) b.sprite.visible = i < this.#count;
    this.step(0.37, 0);
  }

  step(t: number, _dt: number): boolean {
    const layout = this.#layout;
    if (layout === null || this.#count === 0 || this.root.alpha === 0) return false;
    const from = layout.diffuserY - 4;
    const rise = from - this.#surface - 2;
    if (rise <= 4) return false;
    const clock = this.#frozen ? 0.37 : t;
    for (let i = 0; i < this.#count; i++) {
      const b = this.#all[i];
      if (b === undefined) continue;
      const up = (b.phase + clock * b.speed) % 1;
      const x = (layout.dropLines[b.line] ?? 0) + Math.sin(clock * 3 + b.sway + up * 9) * 4 + b.reach * Math.sqrt(up);
      b.sprite.position.set(x, from - rise * up);
      b.sprite.scale.set(b.size * (0.65 + 0.55 * up));
    }
    return !this.#frozen;
  }
}
