/** Air and drops round the clarifier's close-up: bubbles beside the hopper, water in the pipes to and from the chamber. */
import { Container, Sprite } from 'pixi.js';
import { Bubbles } from './bubbles.ts';
import { type ClarifierPlan, PIPE_WIDE, planClarifier } from './clarifierPlan.ts';
import { inkShare } from './ink.ts';
import type { PlateMover } from './plate.ts';
import type { Print } from './sheet.ts';
import type { Sparks } from './sparks.ts';

/** Bubbles of the cutaway are drawn so many times as large. */
const LARGER = 1.8;

export class ChamberAir implements PlateMover {
  readonly root = new Container();
  readonly #bubbles: Bubbles;

  constructor({ bubble }: Sparks) {
    this.#bubbles = new Bubbles(bubble);
    this.root.scale.set(LARGER);
    this.root.addChild(this.#bubbles.root);
  }

  print({ scene }: Print): void {
    const { ink, bubbles_Lmin, level_m } = scene.chambers.aeration;
    const share = Math.min(inkShare(ink), inkShare(scene.chambers.clarifier.ink));
    const plan = planClarifier(scene.geometry);
    const air_Lmin = share === 0 || level_m === null ? 0 : (bubbles_Lmin ?? 0);
    const small = { diffuserY: plan.diffuserY / LARGER, dropLines: plan.dropLines.map((x) => x / LARGER) };
    const surface = Math.max(plan.inside.y, plan.y(level_m ?? 0)) / LARGER;
    this.#bubbles.set(small, air_Lmin, surface, share, ink.kind !== 'live');
  }

  step(t: number, dt: number): boolean {
    return this.#bubbles.step(t, dt);
  }

  stale(): void {}
}

const DROPS = 34;
const GAP = 27;
/** Units a second at a litre a second, and what any trickle has. */
const SPEED = 260;
const TRICKLE = 18;
const LEAST_Ls = 0.0005;

/** Water that comes from the trash tank and goes to disinfection. */
export class PipeDrops implements PlateMover {
  readonly root = new Container();
  readonly #in: readonly Sprite[];
  readonly #out: readonly Sprite[];
  #plan: ClarifierPlan | null = null;
  readonly #flow_Ls = { in: 0, out: 0 };
  readonly #run = { in: 0, out: 0 };

  constructor({ drop }: Sparks) {
    const many = () =>
      Array.from({ length: DROPS }, () => {
        const sprite = new Sprite(drop);
        sprite.anchor.set(0.5);
        sprite.scale.set(0.34);
        this.root.addChild(sprite);
        return sprite;
      });
    this.#in = many();
    this.#out = many();
  }

  print({ scene: { chambers, flows, geometry } }: Print): void {
    this.root.alpha = inkShare(chambers.clarifier.ink);
    this.root.visible = this.root.alpha > 0;
    this.#plan = this.root.visible ? planClarifier(geometry) : null;
    this.#flow_Ls.in = flows.trashOut_Ls ?? 0;
    this.#flow_Ls.out = flows.clarifierOut_Ls ?? 0;
  }

  step(_t: number, dt: number): boolean {
    const plan = this.#plan;
    if (plan === null) return false;
    const half = PIPE_WIDE / 2;
    const inTee = plan.inside.x + 30;
    // From the left end of any screen to the tee; from the tee to its right end.
    this.#line('in', this.#in, inTee - GAP * DROPS, plan.inletY - half + 6, dt);
    this.#line('out', this.#out, plan.teeX + 10, plan.outletY - half + 6, dt);
    return Math.max(this.#flow_Ls.in, this.#flow_Ls.out) > LEAST_Ls;
  }

  stale(): void {}

  #line(which: 'in' | 'out', drops: readonly Sprite[], from: number, y: number, dt: number): void {
    const flow = this.#flow_Ls[which];
    this.#run[which] = (this.#run[which] + dt * (TRICKLE + SPEED * flow)) % GAP;
    for (const [i, sprite] of drops.entries()) {
      sprite.visible = flow > LEAST_Ls;
      sprite.position.set(from + i * GAP + this.#run[which], y);
    }
  }
}
