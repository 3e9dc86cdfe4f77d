/** Drops through the disc filter's close-up: as fast as the flow, and only by the ways dirt has left open. */
import { Container, Sprite } from 'pixi.js';
import { along, type Point, wayLength } from './along.ts';
import { BODY_X, CUP, type Gap, type Groove, gapsAt, groovesAt, PIPE_Y, RIM } from './discsPlan.ts';
import { inkShare } from './ink.ts';
import type { PlateMover } from './plate.ts';
import type { Print } from './sheet.ts';
import type { Sparks } from './sparks.ts';

/** Drops in the section, and in the large disc. */
const MOST = 110;
const MOST_IN_DISC = 48;
/** Units of the plate a second, at a litre a second. */
const SPEED = 150;
/** Below this a flow is none, L/s. */
const LEAST_Ls = 0.0005;

interface Drop {
  readonly sprite: Sprite;
  readonly phase: number;
}

export class DiscsDrops implements PlateMover {
  readonly root = new Container();
  readonly #drops: readonly Drop[];
  readonly #inDisc: readonly Drop[];
  #ways: readonly (readonly Point[])[] = [];
  #grooves: readonly Groove[] = [];
  #flow_Ls = 0;
  /** How far the water has run, units. */
  #run = 0;

  constructor({ bead }: Sparks) {
    const many = (n: number, size: number) =>
      Array.from({ length: n }, (_, i): Drop => {
        const sprite = new Sprite(bead);
        sprite.anchor.set(0.5);
        sprite.scale.set(size + 0.05 * ((i * 3) % 4));
        this.root.addChild(sprite);
        return { sprite, phase: (i * 0.618034) % 1 };
      });
    this.#drops = many(MOST, 0.2);
    this.#inDisc = many(MOST_IN_DISC, 0.22);
  }

  print({ scene: { discFilter, flows } }: Print): void {
    const share = inkShare(discFilter.ink);
    this.root.alpha = share;
    const { flowShare } = discFilter;
    this.#flow_Ls = flows.discharge_Ls ?? 0;
    this.root.visible = share > 0 && flowShare !== null && this.#flow_Ls > LEAST_Ls;
    if (flowShare === null) return;
    this.#ways = gapsAt(flowShare).open.map(way);
    this.#grooves = groovesAt(flowShare).filter((groove) => groove.open);
  }

  step(_t: number, dt: number): boolean {
    if (!this.root.visible) return false;
    this.#run += dt * SPEED * this.#flow_Ls;
    for (const [i, { sprite, phase }] of this.#drops.entries()) {
      const points = this.#ways[(i * 7) % Math.max(1, this.#ways.length)];
      sprite.visible = points !== undefined;
      if (points === undefined) continue;
      sprite.position.set(...along(points, (phase + this.#run / wayLength(points)) % 1));
    }
    for (const [i, { sprite, phase }] of this.#inDisc.entries()) {
      const groove = this.#grooves[(i * 11) % Math.max(1, this.#grooves.length)];
      sprite.visible = groove !== undefined;
      if (groove === undefined) continue;
      const points = [groove.outer, groove.middle, groove.inner];
      const k = (phase + this.#run / wayLength(points) / 3) % 1;
      sprite.position.set(...along(points, k));
      sprite.alpha = Math.min(1, 5 * k, 5 * (1 - k));
    }
    return true;
  }

  stale(): void {}
}

/** From the pump round the stack, between two discs into the core, and on to the field. */
function way({ half, y }: Gap): readonly Point[] {
  const round = RIM + 12;
  const over = CUP.y + 20;
  return [
    [-320, PIPE_Y],
    [BODY_X - round, PIPE_Y],
    ...(half < 0
      ? []
      : ([
          [BODY_X - round, over],
          [BODY_X + round, over],
        ] as const)),
    [BODY_X + half * round, y],
    [BODY_X, y],
    [BODY_X, PIPE_Y],
    [1500, PIPE_Y],
  ];
}
