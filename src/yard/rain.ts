/** Rain over lawn and house: one sheet of slanting strokes that runs down and starts again. */
import { Container, Graphics } from 'pixi.js';
import { Cel } from './cel.ts';
import { noise } from './hash.ts';
import type { Mover } from './motion.ts';
import { type Box, box, draw } from './pen.ts';

const SLANT = 0.22;

export class Rain implements Mover {
  readonly root = new Container();
  readonly #sheets = [new Cel(), new Cel()] as const;
  readonly #mask = new Graphics();
  #height = 0;
  #base: readonly [number, number] = [0, 0];
  #falling = false;

  constructor() {
    for (const s of this.#sheets) this.root.addChild(s.sprite);
    this.root.addChild(this.#mask);
    this.root.mask = this.#mask;
  }

  /** `rain` 0 to 1; the strokes lie over `view` above grade. */
  set(view: Box, rain: number, scale: number): void {
    this.#falling = rain > 0.01 && view.y < 0;
    this.root.visible = this.#falling;
    if (!this.#falling) return;
    const height = Math.max(40, Math.min(8, view.y + view.height) - view.y);
    this.#height = height;
    this.#mask.clear().rect(view.x, view.y, view.width, height).fill(0xffffff);
    const area = box(view.x - height * SLANT, view.y, view.width + 2 * height * SLANT, height);
    const steps = Math.max(1, Math.round(rain * 8));
    for (const [i, sheet] of this.#sheets.entries()) {
      sheet.show(area, Math.min(scale, 1.5), `r${steps}`, (pen) => {
        const r = noise(71);
        const p = new Path2D();
        const n = Math.round((area.width * area.height * steps) / 5200);
        for (let k = 0; k < n; k++) {
          const x = area.x + r() * area.width;
          const y = area.y + r() * area.height;
          const l = 8 + r() * 16;
          // Strokes that leave the sheet below come in again above.
          for (const shift of [0, -area.height]) {
            p.moveTo(x, y + shift);
            p.lineTo(x - l * SLANT, y + shift + l);
          }
        }
        draw(pen, p, { stroke: '#dfe9ee', width: 1, alpha: 0.6 });
        draw(pen, p, { stroke: '#4d6b78', width: 0.5, alpha: 0.5 });
      });
      if (i === 0) this.#base = [sheet.sprite.x, sheet.sprite.y];
    }
    this.step(0, 0);
  }

  step(t: number, _dt: number): boolean {
    if (!this.#falling) return false;
    const down = (t * 330) % this.#height;
    const [x, y] = this.#base;
    this.#sheets[0].sprite.position.set(x - down * SLANT, y + down);
    this.#sheets[1].sprite.position.set(x - (down - this.#height) * SLANT, y + down - this.#height);
    return true;
  }

  stale(): void {
    for (const s of this.#sheets) s.stale();
  }
}
