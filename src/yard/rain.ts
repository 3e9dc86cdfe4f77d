/** Rain over lawn and house: streaks as long as a drop of that rain falls in the blink of an eye, aslant in the wind. */
import { Container, Sprite, type Texture } from 'pixi.js';
import type { SkyScene } from '../scene/types.ts';
import { noise } from './hash.ts';
import type { Mover } from './motion.ts';
import type { Box } from './pen.ts';
import { fallSpeed } from './storm.ts';

const MOST = 360;
/** What an eye runs together, s. */
const BLINK_s = 1 / 25;
/** The streak's texture is so long, units. */
export const STREAK = 32;
/** Where drops land, units below grade. */
const LANDS = 7;

export class Rain implements Mover {
  readonly root = new Container();
  readonly #drops: readonly { readonly sprite: Sprite; readonly x: number; readonly phase: number }[];
  #view: Box = { x: 0, y: 0, width: 0, height: 0 };
  #speed = 0;
  /** Units across for one down: drops go with the wind while they fall. */
  #slant = 0;
  #count = 0;

  constructor(streak: Texture) {
    const r = noise(71);
    this.#drops = Array.from({ length: MOST }, () => {
      const sprite = new Sprite(streak);
      sprite.anchor.set(0.5, 1);
      this.root.addChild(sprite);
      return { sprite, x: r(), phase: r() };
    });
  }

  /** Number by the root of the rate, so that a drizzle is seen and a cloudburst does not hide the works. */
  set(view: Box, { rain_mmh, wind_ms }: SkyScene, perMetre: number): void {
    const above = LANDS - view.y;
    this.root.visible = rain_mmh > 0 && above > 0;
    this.#view = view;
    this.#count = this.root.visible ? Math.min(MOST, Math.round(55 * Math.sqrt(rain_mmh) * (view.width / 1440))) : 0;
    const fall_ms = rain_mmh > 0 ? fallSpeed(rain_mmh) : 0;
    this.#speed = fall_ms * perMetre;
    this.#slant = fall_ms > 0 ? wind_ms / fall_ms : 0;
    const steep = Math.hypot(1, this.#slant);
    for (const [i, { sprite }] of this.#drops.entries()) {
      sprite.visible = i < this.#count;
      sprite.scale.set(1, (this.#speed * steep * BLINK_s) / STREAK);
      sprite.rotation = -Math.atan(this.#slant);
    }
    this.step(0, 0);
  }

  step(t: number, _dt: number): boolean {
    const { x, y, width } = this.#view;
    const fall = LANDS - y;
    for (let i = 0; i < this.#count; i++) {
      const drop = this.#drops[i];
      // Half as fast as it truly falls: faster than that a screen shows flicker, not drops.
      const down = ((drop?.phase ?? 0) + (t * this.#speed) / 2 / fall) % 1;
      if (drop === undefined) continue;
      const across = drop.x + (this.#slant * (down - 0.5) * fall) / width;
      drop.sprite.position.set(x + (across - Math.floor(across)) * width, y + down * fall - (i % 3));
    }
    return this.#count > 0;
  }
}
