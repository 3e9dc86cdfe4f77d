/** Everything behind the works: sky, hills, house, ground by the season. */
import { Container } from 'pixi.js';
import { Cel } from './cel.ts';
import { Drift } from './drift.ts';
import { paintGround } from './ground.ts';
import { paintHouseInk, paintHousePencil } from './house.ts';
import { Inked } from './inked.ts';
import type { Layout } from './layout.ts';
import type { Mover } from './motion.ts';
import type { OpenAir } from './openAir.ts';
import { box } from './pen.ts';
import { GREEN } from './season.ts';
import type { Print } from './sheet.ts';
import { paintClouds, paintDaySky, paintHills, paintSun, SUN_ROOM, skyPoint } from './sky.ts';

export class Backdrop implements Mover {
  readonly root = new Container();
  readonly #day = new Cel();
  readonly #sun = new Cel();
  readonly #clouds = new Drift();
  readonly #hills = new Cel();
  readonly #ground = new Cel();
  readonly #house = new Inked();

  constructor() {
    this.root.addChild(
      this.#day.sprite,
      this.#sun.sprite,
      this.#clouds.root,
      this.#hills.sprite,
      this.#ground.sprite,
      this.#house.root,
    );
  }

  /** Hangs what the open air shows behind the hills and lays over the land. */
  hang(air: OpenAir): void {
    this.root.addChildAt(air.behind, 2);
    this.root.addChild(air.dusk.far);
  }

  print(layout: Layout, p: Print, air: OpenAir | null): void {
    const { sky, house } = p.scene;
    const { area } = p;
    const above = box(area.x, area.y, area.width, Math.max(1, Math.min(6, area.y + area.height) - area.y));
    const night = 1 - sky.daylight;
    const season = air?.season(sky) ?? GREEN;
    // The sky is smooth: half the resolution is plenty.
    this.#day.show(above, p.scale * 0.5, 'day', (pen) => paintDaySky(pen, above));
    this.#showSun(p);
    const cover = sky.cloud > 0.5 ? 0 : Math.round(sky.cloud * 12) / 12;
    this.#clouds.show(above, p.scale, `${cover}`, sky.wind_ms, (pen, gone) => paintClouds(pen, cover, gone));
    this.#clouds.root.alpha = 1 - 0.72 * night;
    this.#hills.show(above, p.scale, season.key, (pen) => paintHills(pen, above, season));
    const below = box(
      area.x,
      Math.max(area.y, -24),
      area.width,
      Math.max(1, area.y + area.height - Math.max(area.y, -24)),
    );
    this.#ground.show(below, p.scale, `${layout.perMetre}|${season.key}`, (pen) =>
      paintGround(pen, below, layout.perMetre, season),
    );
    const room = box(-24, -182, 236, 200);
    const look = { backingUp: house.backingUp === true, rimY: layout.y(p.scene.geometry.fixtureRim_m) };
    this.#house.show(
      room,
      p.scale,
      house.ink,
      { key: 'h', paint: (pen) => paintHousePencil(pen) },
      { key: `h${look.backingUp}|${look.rimY}`, paint: (pen) => paintHouseInk(pen, layout, look) },
    );
  }

  /** Clouds move along with what else does; for them alone no frame is drawn. */
  step(_t: number, dt: number): boolean {
    this.#clouds.step(dt);
    return false;
  }

  stale(): void {
    this.#house.stale();
    for (const c of [this.#day, this.#sun, this.#clouds.cel, this.#hills, this.#ground]) c.stale();
  }

  #showSun({ scene, scale }: Print): void {
    const { sun, cloud } = scene.sky;
    if (sun.up < -0.1 || cloud > 0.7) {
      this.#sun.hide();
      return;
    }
    const [x, y] = skyPoint(sun).map(Math.round) as [number, number];
    const area = box(x - SUN_ROOM, y - SUN_ROOM, 2 * SUN_ROOM, 2 * SUN_ROOM);
    this.#sun.sprite.alpha = Math.min(1, (0.75 - cloud) * 4);
    this.#sun.show(area, scale, '', (pen) => paintSun(pen, x, y, Math.max(0, sun.up)));
  }
}
