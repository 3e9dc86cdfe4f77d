/** Spray: arcs from each head, as far as the pressure there throws, with drops running along them. */
import { Container, Graphics, Sprite, type Texture } from 'pixi.js';
import type { FieldScene } from '../scene/types.ts';
import { noise } from './hash.ts';
import type { Layout } from './layout.ts';
import type { Mover } from './motion.ts';
import { HEAD_UP } from './sprayField.ts';

/** Units of the plate for a metre of throw: drawn short, the lawn goes on beyond the sheet. */
const PER_METRE = 8;
const ARCS = [-1, -0.55, 0.5, 0.95] as const;
const PER_ARC = 9;

export class Spray implements Mover {
  readonly root = new Container();
  readonly #lines = new Graphics();
  readonly #drops: { sprite: Sprite; arc: number; head: number; phase: number; off: number }[] = [];
  readonly #texture: Texture;
  #layout: Layout | null = null;
  #reach = 0;

  constructor(texture: Texture) {
    this.#texture = texture;
    this.root.addChild(this.#lines);
  }

  /** How far the heads are up, 0 to 1, at a pressure: they rise on the first tenth of what they are made for. */
  static up(pressure_kPa: number, field: FieldScene): number {
    return Math.min(1, Math.max(0, pressure_kPa / (field.designPressure_kPa * 0.1)));
  }

  set(layout: Layout, pressure_kPa: number, { throw_m, designPressure_kPa }: FieldScene): void {
    if (this.#layout !== layout) this.#lay(layout);
    const share = Math.max(0, pressure_kPa) / designPressure_kPa;
    const reach = pressure_kPa < 2 ? 0 : PER_METRE * throw_m * Math.min(1.15, Math.sqrt(share));
    if (reach !== this.#reach || this.#layout !== layout) {
      this.#reach = reach;
      this.#strokes(layout);
    }
    this.root.visible = reach > 0;
    this.step(0.2, 0);
  }

  step(t: number, _dt: number): boolean {
    const layout = this.#layout;
    if (layout === null || this.#reach <= 0) return false;
    for (const d of this.#drops) {
      const k = (d.phase + t * 0.9) % 1;
      const [x, y] = this.#point(layout, d.head, ARCS[d.arc] ?? 1, k);
      d.sprite.position.set(x + d.off * k * 10, y + d.off * k * 7);
      d.sprite.scale.set(0.1 + 0.12 * k);
      d.sprite.alpha = 0.95 - 0.45 * k;
    }
    return true;
  }

  #point(layout: Layout, head: number, side: number, k: number): readonly [number, number] {
    const x0 = layout.heads[head] ?? 0;
    const y0 = -9 - HEAD_UP;
    const reach = this.#reach * side;
    const high = Math.abs(this.#reach) * (1.05 - 0.32 * Math.abs(side));
    return [x0 + reach * k, y0 - 4 * high * k * (1 - k) + k * k * -y0 * 0.95];
  }

  #strokes(layout: Layout): void {
    const g = this.#lines.clear();
    if (this.#reach <= 0) return;
    for (let h = 0; h < layout.heads.length; h++) {
      for (const side of ARCS) {
        const trace = (from: number, to: number) => {
          for (let i = 0; i <= 12; i++) {
            const [x, y] = this.#point(layout, h, side, from + ((to - from) * i) / 12);
            if (i === 0) g.moveTo(x, y);
            else g.lineTo(x, y);
          }
        };
        trace(0, 0.98);
        g.stroke({ width: 4.2, color: 0x6fa6b4, alpha: 0.32 });
        trace(0, 0.72);
        g.stroke({ width: 1.9, color: 0xf4fbfb, alpha: 0.9 });
        trace(0.72, 0.97);
        g.stroke({ width: 1.2, color: 0xf4fbfb, alpha: 0.55 });
      }
    }
  }

  #lay(layout: Layout): void {
    this.#layout = layout;
    for (const d of this.#drops.splice(0)) d.sprite.destroy();
    const r = noise(61);
    for (let head = 0; head < layout.heads.length; head++) {
      for (let arc = 0; arc < ARCS.length; arc++) {
        for (let i = 0; i < PER_ARC; i++) {
          const sprite = new Sprite(this.#texture);
          sprite.anchor.set(0.5);
          this.root.addChild(sprite);
          this.#drops.push({ sprite, arc, head, phase: (i + r()) / PER_ARC, off: r() - 0.5 });
        }
      }
    }
    this.#reach = -1;
  }
}
