/** Night, dusk, clouds, rain, season: fetched when a scene is not a fair day in full leaf. */
import { CanvasSource, Container, Texture } from 'pixi.js';
import type { SkyScene } from '../scene/types.ts';
import { Cel } from './cel.ts';
import { Drift } from './drift.ts';
import { Dusk } from './dusk.ts';
import { Flash } from './flash.ts';
import { paintHouseLight } from './houseLight.ts';
import type { Layout } from './layout.ts';
import { moonlight } from './moonlight.ts';
import type { Mover } from './motion.ts';
import { glowOf, MOON_ROOM, paintCover, paintGlow, paintMoon, paintNightSky } from './nightSky.ts';
import { box, draw } from './pen.ts';
import { Rain, STREAK } from './rain.ts';
import type { Season } from './season.ts';
import { seasonOf } from './seasons.ts';
import type { Print } from './sheet.ts';
import { skyPoint } from './sky.ts';

function streak(): Texture {
  const canvas = document.createElement('canvas');
  canvas.width = 6;
  canvas.height = STREAK * 2;
  const pen = canvas.getContext('2d');
  if (pen !== null) {
    pen.scale(2, 2);
    draw(pen, `M1.5 1V${STREAK - 1}`, { stroke: '#40596a', width: 1.6, alpha: 0.5 });
    draw(pen, `M1.5 1V${STREAK - 1}`, { stroke: '#e6f0f4', width: 0.8, alpha: 0.85 });
  }
  return new Texture({ source: new CanvasSource({ resource: canvas, resolution: 2 }) });
}

export class OpenAir implements Mover {
  /** Behind the hills; the dark with the lit window in it; and over everything. */
  readonly behind = new Container();
  readonly dusk = new Dusk();
  readonly over = new Container();
  readonly root = new Container();
  readonly #light = new Cel();
  readonly #night = new Cel();
  readonly #moon = new Cel();
  readonly #glow = new Cel();
  readonly #cover = new Drift();
  readonly #rain: Rain;
  readonly #flash = new Flash();

  constructor() {
    this.#rain = new Rain(streak());
    this.behind.addChild(this.#night.sprite, this.#glow.sprite, this.#moon.sprite, this.#flash.sky, this.#cover.root);
    this.over.addChild(this.dusk.near.sprite, this.#light.sprite);
    this.root.addChild(this.#rain.root, this.#flash.root);
  }

  season(sky: SkyScene): Season {
    return seasonOf(sky);
  }

  print(layout: Layout, p: Print): void {
    const { sky } = p.scene;
    const { area } = p;
    const above = box(area.x, area.y, area.width, Math.max(1, Math.min(6, area.y + area.height) - area.y));
    const night = 1 - sky.daylight;
    const clear = Math.round((1 - sky.cloud) * 6) / 6;
    if (night > 0.02) this.#night.show(above, p.scale, `${clear}`, (pen) => paintNightSky(pen, above, clear));
    else this.#night.hide();
    this.#night.sprite.alpha = night;
    this.#showMoon(sky, p.scale, night);
    const glow = glowOf(sky);
    if (glow > 0.02) {
      const x = Math.round(skyPoint(sky.sun)[0] / 20);
      this.#glow.show(above, p.scale * 0.5, `${x}`, (pen) => paintGlow(pen, above, sky));
      this.#glow.sprite.alpha = glow;
    } else this.#glow.hide();
    const cover = Math.round(sky.cloud * 8) / 8;
    const rain = Math.round(sky.rain_mmh);
    if (sky.cloud > 0.5) {
      this.#cover.show(above, p.scale, `${cover}|${rain}`, sky.wind_ms, (pen, gone) =>
        paintCover(pen, above, { cover, rain_mmh: rain, gone }),
      );
      const dim = Math.round(255 - 165 * night);
      this.#cover.cel.sprite.tint = (dim << 16) | (Math.min(255, dim + 8) << 8) | Math.min(255, dim + 24);
    } else this.#cover.hide();
    if (night > 0.25) {
      this.#light.show(box(-26, -200, 260, 230), p.scale, 'l', (pen) => paintHouseLight(pen));
      this.#light.sprite.alpha = Math.min(1, (night - 0.25) * 1.6);
    } else this.#light.hide();
    this.dusk.print(layout, p, night * (1 - moonlight(sky)), seasonOf(sky).leaves);
    this.#rain.set(area, sky, layout.perMetre);
    this.#flash.set(above, sky, p.still);
  }

  step(t: number, dt: number): boolean {
    this.#cover.step(dt);
    const raining = this.#rain.step(t, dt);
    return this.#flash.step(t) || raining;
  }

  stale(): void {
    for (const cel of [this.#light, this.dusk, this.#night, this.#moon, this.#glow, this.#cover.cel]) cel.stale();
  }

  #showMoon({ moon, cloud }: SkyScene, scale: number, night: number): void {
    if (moon.up < -0.05) {
      this.#moon.hide();
      return;
    }
    const [x, y] = skyPoint(moon);
    const age = Math.round(moon.age * 60) / 60;
    const area = box(Math.round(x) - MOON_ROOM, Math.round(y) - MOON_ROOM, 2 * MOON_ROOM, 2 * MOON_ROOM);
    this.#moon.show(area, scale, `${age}`, (pen) => paintMoon(pen, x, y, age));
    this.#moon.sprite.alpha = (0.25 + 0.75 * night) * (1 - 0.6 * cloud);
  }
}
