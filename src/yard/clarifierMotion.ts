/**
 * What moves in the clarifier's close-up. Water rises by its flow through the area it has at each height; flocs fall
 * against it and are carried up where it is the faster; sludge slides down the walls and out of the slot.
 */
import { Container, Sprite, type Texture } from 'pixi.js';
import type { Scene } from '../scene/types.ts';
import { type ClarifierPlan, FASTER, planClarifier, rise_mh } from './clarifierPlan.ts';
import { noise } from './hash.ts';
import { inkShare } from './ink.ts';
import type { PlateMover } from './plate.ts';
import type { Print } from './sheet.ts';
import type { Sparks } from './sparks.ts';

const RISING = 46;
const FLOCS = 120;
const SLIDING = 44;
/** Flocs of a sludge that settles fall by so much, m/h (convention: two to three in the cylinder, the small ones less). */
const FALL_mh = { least: 1, most: 3.4 } as const;
/** Near the slot water shoots up: nothing is drawn faster than this, units a second. */
const FASTEST = 240;
/** Units a second down a wall. */
const SLIDE = 20;
const LEAST_Ls = 0.0005;

interface Mote {
  readonly sprite: Sprite;
  /** Share of the way from the blanket up to the surface. */
  up: number;
  /** Share of the width it has there. */
  across: number;
  readonly fall_mh: number;
}

interface State {
  readonly plan: ClarifierPlan;
  readonly surface: number;
  readonly top: number;
  /** null where nobody knows it. */
  readonly flow_Ls: number | null;
  readonly flocs: number;
  readonly sliding: number;
}

export class ClarifierMotion implements PlateMover {
  readonly root = new Container();
  readonly #rising: readonly Mote[];
  readonly #flocs: readonly Mote[];
  readonly #sliding: readonly Sprite[];
  #slid = 0;
  #state: State | null = null;

  constructor({ drop, floc }: Sparks) {
    const r = noise(733);
    const sprite = (texture: Texture, size: number): Sprite => {
      const one = new Sprite(texture);
      one.anchor.set(0.5);
      one.scale.set(size);
      this.root.addChild(one);
      return one;
    };
    const motes = (n: number, texture: Texture) =>
      Array.from({ length: n }, (): Mote => {
        const up = r();
        const across = 0.05 + 0.9 * r();
        const fall_mh = FALL_mh.least + (FALL_mh.most - FALL_mh.least) * r();
        return { sprite: sprite(texture, 0.16 + 0.2 * r()), up, across, fall_mh };
      });
    this.#rising = motes(RISING, drop);
    this.#flocs = motes(FLOCS, floc);
    this.#sliding = Array.from({ length: SLIDING }, (_, i) => sprite(floc, 0.24 + 0.06 * (i % 3)));
    for (const { sprite } of this.#rising) sprite.rotation = -Math.PI / 2;
  }

  print({ scene }: Print): void {
    this.root.alpha = inkShare(scene.chambers.clarifier.ink);
    this.#state = this.root.alpha === 0 ? null : stateOf(scene);
    this.root.visible = this.#state !== null;
  }

  step(_t: number, dt: number): boolean {
    const s = this.#state;
    if (s === null) return false;
    const deep = s.top - s.surface;
    const flow_Ls = deep > 12 ? s.flow_Ls : null;
    this.#rise(s, flow_Ls ?? 0, dt);
    this.#fall(s, flow_Ls, dt);
    this.#slide(s, dt);
    return s.sliding > 0 || (flow_Ls !== null && (s.flocs > 0 || flow_Ls > LEAST_Ls));
  }

  stale(): void {}

  /** Streaks as long as the water is fast. */
  #rise(s: State, flow_Ls: number, dt: number): void {
    for (const m of this.#rising) {
      m.sprite.visible = flow_Ls > LEAST_Ls;
      if (!m.sprite.visible) continue;
      const speed = Math.min(FASTEST, drawn(s.plan, rise_mh(flow_Ls, s.plan.area_m2(heightOf(s, m)))));
      move(s, m, speed * dt);
      m.sprite.scale.set(0.2 + 0.0042 * speed, 0.14);
      m.sprite.alpha = 0.9 * Math.min(1, 8 * m.up, 8 * (1 - m.up));
    }
  }

  /** Where the flow is not known, neither is which way they go. */
  #fall(s: State, flow_Ls: number | null, dt: number): void {
    for (const [i, m] of this.#flocs.entries()) {
      m.sprite.visible = flow_Ls !== null && i < s.flocs;
      if (flow_Ls === null || !m.sprite.visible) continue;
      const net_mh = rise_mh(flow_Ls, s.plan.area_m2(heightOf(s, m))) - m.fall_mh;
      move(s, m, Math.max(-FASTEST, Math.min(FASTEST, drawn(s.plan, net_mh))) * dt);
      m.sprite.alpha = Math.min(1, 10 * m.up + 0.3, 10 * (1 - m.up));
    }
  }

  /** Down both walls of the hopper, through the slot, and away below it. */
  #slide(s: State, dt: number): void {
    const { plan } = s;
    const { tip, slot } = plan.hopper;
    this.#slid += dt * SLIDE;
    const from = Math.max(s.top, plan.hopper.straight);
    const long = tip - from + 60;
    for (const [i, sprite] of this.#sliding.entries()) {
      sprite.visible = i < s.sliding;
      if (!sprite.visible) continue;
      const left = i % 2 === 0;
      const along = (((i * 0.618034) % 1) * long + this.#slid) % long;
      const y = from + along;
      const beyond = Math.max(0, y - tip);
      const off = 9 + ((i * 5) % 9);
      const edge = beyond > 0 ? slot[left ? 0 : 1] - (left ? beyond : -beyond) * 0.9 : plan.walls(y)[left ? 0 : 1];
      sprite.position.set(edge + (left ? off : -off), y - beyond * 0.45);
      sprite.alpha = Math.min(1, along / 12, (long - along) / 24);
    }
  }
}

function stateOf({ geometry, chambers: { clarifier }, flows }: Scene): State | null {
  const { level_m, sludge_m, water } = clarifier;
  if (level_m === null || sludge_m === null || water === null) return null;
  const plan = planClarifier(geometry);
  const blanket_m = Math.max(0.02, sludge_m);
  return {
    plan,
    surface: Math.max(plan.inside.y, plan.y(level_m)) + 6,
    top: Math.max(plan.hopper.top, plan.hopper.tip - blanket_m * plan.perMetre),
    flow_Ls: flows.clarifierOut_Ls,
    flocs: Math.round((FLOCS * water.solids_mgL) / (water.solids_mgL + 250)),
    sliding: Math.min(SLIDING, Math.round(sludge_m * 90)),
  };
}

/** Metres an hour as units a second of the plate. */
function drawn(plan: ClarifierPlan, mh: number): number {
  return (mh / 3600) * FASTER * plan.perMetre;
}

function heightOf({ top, surface }: State, { up }: Mote): number {
  return top - up * (top - surface);
}

/** Moves a mote up by so many units; what leaves above begins again below, and the other way about. */
function move(s: State, m: Mote, by: number): void {
  const up = m.up + by / (s.top - s.surface);
  m.up = up - Math.floor(up);
  const y = heightOf(s, m);
  const [x0, wall] = s.plan.walls(y);
  // Beside the tee, not over it.
  const x1 = Math.min(wall, s.plan.teeX - 12);
  m.sprite.position.set(x0 + 8 + (x1 - x0 - 16) * m.across, y);
}
