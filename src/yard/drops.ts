/** Light strokes that travel along the pipes as fast and as many as the water that flows in them. */
import { Container, Sprite, type Texture } from 'pixi.js';
import type { FlowScene } from '../scene/types.ts';
import type { Layout } from './layout.ts';
import type { Mover } from './motion.ts';

/** A polyline with a running length. */
class Track {
  readonly #points: readonly (readonly [number, number])[];
  readonly #starts: number[] = [0];
  readonly length: number;

  constructor(points: readonly (readonly [number, number])[]) {
    this.#points = points;
    let sum = 0;
    for (let i = 1; i < points.length; i++) {
      const [ax, ay] = points[i - 1] ?? [0, 0];
      const [bx, by] = points[i] ?? [0, 0];
      sum += Math.hypot(bx - ax, by - ay);
      this.#starts.push(sum);
    }
    this.length = sum;
  }

  place(sprite: Sprite, at: number): void {
    let i = 1;
    while (i < this.#starts.length - 1 && (this.#starts[i] ?? 0) < at) i++;
    const [ax, ay] = this.#points[i - 1] ?? [0, 0];
    const [bx, by] = this.#points[i] ?? [ax, ay];
    const from = this.#starts[i - 1] ?? 0;
    const part = (at - from) / Math.max(1e-6, (this.#starts[i] ?? from) - from);
    sprite.position.set(ax + (bx - ax) * part, ay + (by - ay) * part);
    sprite.rotation = Math.atan2(by - ay, bx - ax);
  }
}

interface Run {
  readonly track: Track;
  readonly sprites: readonly Sprite[];
  readonly of: keyof FlowScene;
  /** Part of that flow which takes this way. */
  readonly share: number;
  flow: number;
}

type Points = readonly (readonly [number, number])[];
type Way = readonly [of: keyof FlowScene, points: Points, share?: number];

const SPACING = 22;

export class Drops implements Mover {
  readonly root = new Container();
  readonly #texture: Texture;
  #runs: Run[] = [];
  #layout: Layout | null = null;
  #travel: number[] = [];

  constructor(texture: Texture) {
    this.#texture = texture;
  }

  set(layout: Layout, flows: FlowScene): void {
    if (this.#layout !== layout) this.#lay(layout);
    for (const run of this.#runs) run.flow = (flows[run.of] ?? 0) * run.share;
    this.#place();
  }

  step(_t: number, dt: number): boolean {
    let moving = false;
    for (const [i, run] of this.#runs.entries()) {
      if (run.flow <= 0.0005) continue;
      moving = true;
      // Square root: a trickle still crawls, a flush does not blur.
      this.#travel[i] = ((this.#travel[i] ?? 0) + dt * (14 + 95 * Math.sqrt(run.flow))) % SPACING;
    }
    if (moving) this.#place();
    return moving;
  }

  #place(): void {
    for (const [i, run] of this.#runs.entries()) {
      const shown = run.flow > 0.0005;
      const alpha = Math.min(0.95, 0.35 + 0.6 * Math.sqrt(run.flow));
      for (const [k, sprite] of run.sprites.entries()) {
        sprite.visible = shown;
        if (!shown) continue;
        const at = k * SPACING + (this.#travel[i] ?? 0);
        sprite.visible = at <= run.track.length;
        sprite.alpha = alpha;
        run.track.place(sprite, at);
      }
    }
  }

  #lay(l: Layout): void {
    this.#layout = l;
    for (const s of this.root.removeChildren()) s.destroy();
    const t = l.trash;
    const slope = (t.inside.x - 40) * 0.045;
    const start = t.inletY - slope;
    const a = l.aeration;
    const aRight = a.inside.x + a.inside.width;
    const r = l.riser.shell;
    const p = l.pump;
    const top = p.inside.y + p.inside.height - 78;
    const d = l.discFilter;
    const ways: readonly Way[] = [
      [
        'sewer_Ls',
        [
          [-60, start - 3],
          [60, start + 2],
          [t.inside.x + 20, t.inletY + 2],
          [t.inside.x + 22, t.inletY + 40],
        ],
      ],
      [
        'trashOut_Ls',
        [
          [t.inside.x + t.inside.width - 18, t.outletY + 2],
          [a.inside.x + 6, t.outletY + 2],
        ],
      ],
      [
        'clarifierOut_Ls',
        [
          [aRight - 4, a.outletY + 2],
          [r.x + 6, a.outletY + 2],
        ],
      ],
      [
        'riserOut_Ls',
        [
          [r.x + 30, p.inletY + 2],
          [p.inside.x + 6, p.inletY + 2],
        ],
      ],
      [
        'discharge_Ls',
        [
          [l.pumpX, top],
          [l.pumpX, l.dischargeY + 8],
          [l.pumpX + 8, l.dischargeY],
          [d.x + 4, l.dischargeY],
        ],
      ],
      ...intoField(l),
    ];
    this.#runs = ways.map(([of, points, share = 1]) => {
      const track = new Track(points);
      const sprites = Array.from({ length: Math.ceil(track.length / SPACING) + 1 }, () => {
        const s = new Sprite(this.#texture);
        s.anchor.set(0.5);
        s.scale.set(0.25);
        s.visible = false;
        this.root.addChild(s);
        return s;
      });
      return { track, sprites, of, share, flow: 0 };
    });
    this.#travel = ways.map(() => 0);
  }
}

/** From the disc filter to the last head, or through the header into each zone of the drip field. */
function intoField({ discFilter: d, heads, drip }: Layout): readonly Way[] {
  if (drip === null) {
    const to = (heads[heads.length - 1] ?? d.x) + 4;
    return [
      [
        'discharge_Ls',
        [
          [d.x + d.width, 22],
          [to, 22],
        ],
      ],
    ];
  }
  const {
    start: [x, y],
    headerY,
    lineY,
    zones,
  } = drip;
  return zones.map(
    ({ from, to }): Way => [
      'discharge_Ls',
      [
        [x, y],
        [x + 14, y],
        [x + 14, headerY],
        [from, headerY],
        [from, lineY],
        [to, lineY],
      ],
      1 / zones.length,
    ],
  );
}
