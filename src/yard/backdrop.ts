/** Everything behind the works: two skies, clouds, hills, house, ground, and the night laid over them. */
import { Container, Graphics } from 'pixi.js';
import { Cel } from './cel.ts';
import { paintGround } from './ground.ts';
import { paintHouseInk, paintHouseLight, paintHousePencil } from './house.ts';
import { Inked } from './inked.ts';
import { LAWN_FOOT, type Layout } from './layout.ts';
import { box } from './pen.ts';
import type { Print } from './sheet.ts';
import { paintClouds, paintDaySky, paintHills, paintNightSky } from './sky.ts';

export class Backdrop {
  readonly root = new Container();
  /** The lit window: it lies above the dusk, so the sheet places it. */
  readonly light = new Cel();
  readonly #day = new Cel();
  readonly #dark = new Cel();
  readonly #clouds = new Cel();
  readonly #hills = new Cel();
  readonly #ground = new Cel();
  readonly #house = new Inked();
  readonly #night = new Graphics();

  constructor() {
    this.root.addChild(
      this.#day.sprite,
      this.#dark.sprite,
      this.#clouds.sprite,
      this.#hills.sprite,
      this.#ground.sprite,
      this.#house.root,
      this.#night,
    );
  }

  print(layout: Layout, p: Print): void {
    const { sky, house } = p.scene;
    const { area } = p;
    const above = box(area.x, area.y, area.width, Math.max(1, Math.min(6, area.y + area.height) - area.y));
    const night = 1 - Math.min(1, Math.max(0, sky.daylight));
    // The skies are smooth: half the resolution is plenty.
    const coarse = p.scale * 0.5;
    this.#day.show(above, coarse, 'day', (pen) => paintDaySky(pen, above));
    if (night > 0.02) this.#dark.show(above, p.scale, 'night', (pen) => paintNightSky(pen, above));
    else this.#dark.hide();
    this.#dark.sprite.alpha = night;
    const cover = Math.round(sky.cloud * 6) / 6;
    this.#clouds.show(above, p.scale, `c${cover}`, (pen) => paintClouds(pen, above, cover));
    this.#clouds.sprite.alpha = 1 - 0.72 * night;
    this.#hills.show(above, p.scale, 'hills', (pen) => paintHills(pen, above));
    const below = box(
      area.x,
      Math.max(area.y, -24),
      area.width,
      Math.max(1, area.y + area.height - Math.max(area.y, -24)),
    );
    this.#ground.show(below, p.scale, `g${layout.perMetre}`, (pen) => paintGround(pen, below, layout.perMetre));
    const room = box(-24, -182, 236, 200);
    const look = { backingUp: house.backingUp === true, rimY: layout.y(p.scene.geometry.fixtureRim_m) };
    this.#house.show(
      room,
      p.scale,
      house.ink,
      { key: 'h', paint: (pen) => paintHousePencil(pen) },
      { key: `h${look.backingUp}|${look.rimY}`, paint: (pen) => paintHouseInk(pen, layout, look) },
    );
    this.#shade(p, night);
    if (night > 0.25) {
      this.light.show(box(-26, -200, 260, 230), p.scale, 'l', (pen) => paintHouseLight(pen));
      this.light.sprite.alpha = Math.min(1, (night - 0.25) * 1.6);
    } else this.light.hide();
  }

  stale(): void {
    this.#house.stale();
    for (const c of [this.light, this.#day, this.#dark, this.#clouds, this.#hills, this.#ground]) c.stale();
  }

  #shade(p: Print, night: number): void {
    const g = this.#night.clear();
    const rain = p.scene.sky.rain * 0.16 + p.scene.sky.cloud * 0.05;
    const { area } = p;
    if (rain > 0.02) g.rect(area.x, area.y, area.width, Math.max(0, -area.y)).fill({ color: 0x5d6b78, alpha: rain });
    if (night <= 0.02) return;
    const grade = Math.max(area.y, LAWN_FOOT);
    g.rect(area.x, grade, area.width, area.y + area.height - grade).fill({ color: 0x141b2b, alpha: 0.56 * night });
    if (area.y < LAWN_FOOT)
      g.rect(area.x, area.y, area.width, LAWN_FOOT - area.y).fill({ color: 0x141b2b, alpha: 0.34 * night });
  }
}
