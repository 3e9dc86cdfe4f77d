/** Spray: streams of drops from each head as far as the pressure there throws them and where the wind takes them. */
import { Container, Graphics, Sprite, type Texture } from 'pixi.js';
import type { FieldScene, Scene } from '../scene/types.ts';
import { fly, newTrack, reachOf, STEP_s, speedAt, type Track } from './flight.ts';
import { noise } from './hash.ts';
import type { Layout } from './layout.ts';
import type { Mover } from './motion.ts';
import { HEAD_UP } from './sprayField.ts';
import { type Lit, lightAt } from './sprayLight.ts';

/** Units of the plate for a metre of throw: drawn short, the lawn goes on beyond the sheet. Heights are drawn larger. */
const PER_METRE = 8;
const UP_PER_METRE = 64;
/** The streams that are drawn of a circle, by the share of their way that goes along the plate. */
const STREAMS = [-1, -0.55, 0.5, 0.95] as const;
const PER_STREAM = 9;
/** The mouth of a head, units. */
const MOUTH = -9 - HEAD_UP;
/** Pressure below which nothing leaves the heads, kPa, and the most that tells, as a share of what they are made for. */
const LEAST_kPa = 2;
const MOST_SHARE = 1.35;
/** Drops go half as fast as they truly do, like rain. */
const SLOWED = 0.5;

export class Spray implements Mover {
  readonly root = new Container();
  readonly #lines = new Graphics();
  readonly #drops: { sprite: Sprite; stream: number; head: number; phase: number; off: number }[] = [];
  readonly #tracks: readonly Track[] = STREAMS.map(newTrack);
  /** Points of each track. */
  readonly #points: number[] = STREAMS.map(() => 0);
  readonly #texture: Texture;
  #layout: Layout | null = null;
  #key = '';
  #scale = 1;
  #lit: readonly Lit[] = [];

  constructor(texture: Texture) {
    this.#texture = texture;
    this.root.addChild(this.#lines);
  }

  set(layout: Layout, pressure_kPa: number, scene: Scene): void {
    if (this.#layout !== layout) this.#lay(layout);
    const { field, sky } = scene;
    const flows = pressure_kPa >= LEAST_kPa;
    this.root.visible = flows;
    if (!flows) return;
    this.#lit = layout.heads.map((x) => lightAt(layout, scene, x));
    const lit = this.#lit.map(({ colour, bright }) => `${colour} ${bright}`).join();
    const key = `${pressure_kPa}|${field.throw_m}|${field.designPressure_kPa}|${sky.wind_ms}|${lit}`;
    if (key !== this.#key) {
      this.#key = key;
      this.#throw(pressure_kPa, field, sky.wind_ms);
      this.#strokes(layout);
      for (const { sprite, head } of this.#drops) sprite.tint = this.#lit[head]?.colour ?? 0xffffff;
    }
    this.step(0.2, 0);
  }

  step(t: number, _dt: number): boolean {
    const layout = this.#layout;
    if (layout === null || !this.root.visible) return false;
    for (const d of this.#drops) {
      const points = this.#points[d.stream] ?? 0;
      const k = (d.phase + (t * SLOWED) / (points * STEP_s)) % 1;
      const x = (layout.heads[d.head] ?? 0) + this.#at(d.stream, k, 0) + d.off * k * 10;
      d.sprite.position.set(x, this.#at(d.stream, k, 1) + d.off * k * 7);
      d.sprite.scale.set(0.1 + 0.12 * k);
      d.sprite.alpha = (0.95 - 0.45 * k) * (this.#lit[d.head]?.bright ?? 1);
    }
    return true;
  }

  /** In still air and at the pressure it is made for the farthest stream lands as far out as the heads are said to throw. */
  #throw(pressure_kPa: number, { designPressure_kPa, throw_m }: FieldScene, wind_ms: number): void {
    const from_m = -MOUTH / UP_PER_METRE;
    const track = this.#tracks[0] ?? newTrack();
    const design = fly(track, { speed_ms: speedAt(designPressure_kPa), from_m, across: 1, wind_ms: 0 });
    this.#scale = throw_m / reachOf(track, design);
    const speed_ms = speedAt(Math.min(pressure_kPa, MOST_SHARE * designPressure_kPa));
    for (const [i, across] of STREAMS.entries())
      this.#points[i] = fly(this.#tracks[i] ?? track, { speed_ms, from_m, across, wind_ms });
  }

  /** Across from the head, or down from grade, a share of its time in the air after it left; units. */
  #at(stream: number, k: number, axis: 0 | 1): number {
    const track = this.#tracks[stream];
    const last = (this.#points[stream] ?? 1) - 1;
    const i = Math.min(last - 1, Math.floor(k * last));
    const a = track?.[2 * i + axis] ?? 0;
    const b = track?.[2 * i + 2 + axis] ?? a;
    const metres = a + (b - a) * (k * last - i);
    return metres * (axis === 0 ? PER_METRE * this.#scale : -UP_PER_METRE);
  }

  #strokes(layout: Layout): void {
    const g = this.#lines.clear();
    for (const [h, x] of layout.heads.entries()) {
      const { colour, bright } = this.#lit[h] ?? { colour: 0xffffff, bright: 1 };
      for (let stream = 0; stream < STREAMS.length; stream++) {
        const trace = (from: number, to: number) => {
          for (let i = 0; i <= 14; i++) {
            const k = from + ((to - from) * i) / 14;
            if (i === 0) g.moveTo(x + this.#at(stream, k, 0), this.#at(stream, k, 1));
            else g.lineTo(x + this.#at(stream, k, 0), this.#at(stream, k, 1));
          }
        };
        trace(0, 1);
        g.stroke({ width: 4.2, color: 0x6fa6b4, alpha: 0.32 * bright });
        trace(0, 0.72);
        g.stroke({ width: 1.9, color: colour, alpha: 0.9 * bright });
        trace(0.72, 0.99);
        g.stroke({ width: 1.2, color: colour, alpha: 0.55 * bright });
      }
    }
  }

  #lay(layout: Layout): void {
    this.#layout = layout;
    for (const d of this.#drops.splice(0)) d.sprite.destroy();
    const r = noise(61);
    for (let head = 0; head < layout.heads.length; head++) {
      for (let stream = 0; stream < STREAMS.length; stream++) {
        for (let i = 0; i < PER_STREAM; i++) {
          const sprite = new Sprite(this.#texture);
          sprite.anchor.set(0.5);
          this.root.addChild(sprite);
          this.#drops.push({ sprite, stream, head, phase: (i + r()) / PER_STREAM, off: r() - 0.5 });
        }
      }
    }
    this.#key = '';
  }
}
