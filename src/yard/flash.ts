/** Lightning far off, as seldom as a storm of that rain sends it: one flash, then seconds of quiet. Calm view has none. */
import { Container, Graphics } from 'pixi.js';
import type { SkyScene } from '../scene/types.ts';
import type { Box } from './pen.ts';
import { flashEvery_s } from './storm.ts';

/** How long one is seen, s. */
const LASTS_s = 0.55;

const BOLT = [0, -150, -8, -124, 5, -118, -10, -88, 1, -84, -14, -46] as const;
const BRANCH = [5, -118, 24, -100, 20, -94, 38, -78] as const;

export class Flash {
  /** The bolt behind the hills, and the light of it over everything. */
  readonly sky = new Graphics();
  readonly root = new Container();
  readonly #light = new Graphics();
  #every_s = Number.POSITIVE_INFINITY;

  constructor() {
    this.root.addChild(this.#light);
    for (const [width, alpha] of [
      [7, 0.25],
      [2.4, 1],
    ] as const) {
      for (const line of [BOLT, BRANCH]) {
        for (let i = 0; i < line.length; i += 2) {
          const [x, y] = [line[i] ?? 0, line[i + 1] ?? 0];
          if (i === 0) this.sky.moveTo(x, y);
          else this.sky.lineTo(x, y);
        }
        this.sky.stroke({ width, color: 0xf4f1ff, alpha });
      }
    }
    this.#hide();
  }

  set(above: Box, { rain_mmh }: SkyScene, still: boolean): void {
    this.#every_s = still ? Number.POSITIVE_INFINITY : flashEvery_s(rain_mmh);
    this.#light.clear().rect(above.x, above.y, above.width, above.height).fill({ color: 0xdfe6ff });
    this.#hide();
  }

  step(t: number): boolean {
    if (!Number.isFinite(this.#every_s)) return false;
    const count = Math.floor(t / this.#every_s);
    const since = t - count * this.#every_s;
    const bright = count > 0 && since < LASTS_s ? (1 - since / LASTS_s) ** 2 : 0;
    this.sky.visible = bright > 0;
    this.#light.visible = bright > 0;
    this.sky.alpha = bright;
    this.#light.alpha = 0.28 * bright;
    this.sky.x = 320 + ((count * 0.618) % 1) * 1000;
    return true;
  }

  #hide(): void {
    this.sky.visible = false;
    this.#light.visible = false;
  }
}
