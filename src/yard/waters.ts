/** Water on its way, where it is known: strokes along the pipes, waves from each inlet, the fall into the pump tank. */
import { CanvasSource, Container, Graphics, Sprite, Texture } from 'pixi.js';
import type { ChamberId, FlowScene, Scene } from '../scene/types.ts';
import { Drops } from './drops.ts';
import type { Eased } from './eased.ts';
import { waterColour } from './ink.ts';
import type { Layout } from './layout.ts';
import type { Mover } from './motion.ts';
import { draw } from './pen.ts';
import type { Sparks } from './sparks.ts';

/** Which flow comes into each chamber. */
const INLETS: readonly (readonly [ChamberId, keyof FlowScene])[] = [
  ['trash-tank', 'sewer_Ls'],
  ['aeration', 'trashOut_Ls'],
  ['clarifier', 'trashOut_Ls'],
  ['disinfection', 'clarifierOut_Ls'],
  ['pump-tank', 'riserOut_Ls'],
];
/** Less than this stirs nothing, L/s. */
const STILL_Ls = 0.004;
const MOST = 7;
const CREST = 22;
/** Beads that the fall throws up where it lands. */
const BEADS = 6;

interface Surface {
  readonly id: ChamberId;
  readonly of: keyof FlowScene;
  readonly crests: readonly Sprite[];
  from: number;
  width: number;
  y: number;
  flow: number;
  travel: number;
}

function crest(): Texture {
  const canvas = document.createElement('canvas');
  canvas.width = CREST * 2;
  canvas.height = 16;
  const pen = canvas.getContext('2d');
  if (pen !== null) {
    pen.scale(2, 2);
    draw(pen, 'M2 5q9 -5.5 18 0', { stroke: '#2b2a26', width: 1.6, alpha: 0.5 });
    draw(pen, 'M3 5.6q8 -5 16 0', { stroke: '#ffffff', width: 1.1, alpha: 0.9 });
  }
  return new Texture({ source: new CanvasSource({ resource: canvas, resolution: 2 }) });
}

export class Waters implements Mover {
  readonly root = new Container();
  readonly #drops: Drops;
  readonly #surfaces: readonly Surface[];
  readonly #fall = new Graphics();
  readonly #beads: readonly Sprite[];
  #fallKey = '';
  #lands: readonly [number, number] | null = null;

  constructor(sparks: Sparks) {
    this.#drops = new Drops(sparks.drop);
    const texture = crest();
    this.#surfaces = INLETS.map(([id, of]) => ({
      id,
      of,
      crests: Array.from({ length: MOST }, () => this.#sprite(texture)),
      ...{ from: 0, width: 0, y: 0, flow: 0, travel: 0 },
    }));
    this.root.addChild(this.#fall);
    this.#beads = Array.from({ length: BEADS }, () => this.#sprite(sparks.bead));
    this.root.addChild(this.#drops.root);
  }

  set(layout: Layout, scene: Scene, eased: Eased): void {
    this.#drops.set(layout, scene.flows);
    for (const s of this.#surfaces) {
      const level = eased.get(s.id);
      const [from, to] = across(layout, s.id);
      const seen = level !== null && scene.chambers[s.id].ink.kind === 'live';
      s.flow = seen ? (scene.flows[s.of] ?? 0) : 0;
      s.from = from;
      s.width = to - from;
      s.y = layout.y(level ?? 0);
    }
    this.#pour(layout, scene, eased);
    this.#place(0);
  }

  step(t: number, dt: number): boolean {
    let moving = this.#drops.step(t, dt);
    for (const s of this.#surfaces) {
      if (s.flow <= STILL_Ls) continue;
      moving = true;
      s.travel = (s.travel + (dt * speed(s.flow)) / Math.max(1, s.width)) % 1;
    }
    if (moving) this.#place(t);
    return moving;
  }

  /** Waves run from the inlet and die away; more of them, higher and faster with more water. */
  #place(t: number): void {
    for (const s of this.#surfaces) {
      const count =
        s.flow <= STILL_Ls ? 0 : Math.min(MOST, 2 + Math.round(9 * Math.sqrt(s.flow)), Math.floor(s.width / CREST));
      for (const [i, sprite] of s.crests.entries()) {
        sprite.visible = i < count;
        if (!sprite.visible) continue;
        const k = (i / count + s.travel) % 1;
        sprite.position.set(s.from + CREST / 2 + k * Math.max(0, s.width - CREST), s.y - 1.5);
        sprite.scale.set(1, 0.5 + Math.min(1.1, 1.6 * Math.sqrt(s.flow)));
        sprite.alpha = Math.sin(Math.PI * Math.min(1, k * 1.15 + 0.06)) * (1 - 0.6 * k);
      }
    }
    for (const [i, bead] of this.#beads.entries()) {
      bead.visible = this.#lands !== null;
      if (this.#lands === null) continue;
      const k = (t * 1.4 + i / BEADS) % 1;
      const side = (i % 2 === 0 ? -1 : 1) * (3 + 2 * i);
      bead.position.set(this.#lands[0] + side * k, this.#lands[1] - 26 * k * (1 - k));
      bead.scale.set(0.14);
    }
  }

  /** What leaves the inlet of the pump tank falls, the thicker the more of it, as far as the water stands below. */
  #pour(layout: Layout, { flows, chambers }: Scene, eased: Eased): void {
    const { pump } = layout;
    const level = eased.get('pump-tank');
    const flow = flows.riserOut_Ls ?? 0;
    const surface = level === null ? pump.inletY : layout.y(level);
    const pours = flow > STILL_Ls && level !== null && surface > pump.inletY + 8;
    const width = 1.6 + 7 * Math.sqrt(flow);
    const x = pump.inside.x + 8;
    const out = 5 + 16 * Math.sqrt(flow);
    const { colour } = waterColour(chambers.disinfection.water ?? chambers['pump-tank'].water ?? CLEAR);
    const key = pours ? `${x}|${Math.round(surface)}|${width.toFixed(1)}|${colour}` : '';
    this.#lands = pours ? [x + out, surface] : null;
    if (key === this.#fallKey) return;
    this.#fallKey = key;
    const g = this.#fall.clear();
    if (!pours) return;
    for (const [more, paint, alpha] of [
      [2, 0x2b2a26, 0.55],
      [0, Number.parseInt(colour.slice(1), 16), 0.95],
      [-width * 0.65, 0xffffff, 0.6],
    ] as const) {
      g.moveTo(x, pump.inletY + 3);
      g.quadraticCurveTo(x + out, pump.inletY + 3, x + out, surface);
      g.stroke({ width: Math.max(0.8, width + more), color: paint, alpha });
    }
  }

  #sprite(texture: Texture): Sprite {
    const sprite = new Sprite(texture);
    sprite.anchor.set(0.5);
    sprite.visible = false;
    this.root.addChild(sprite);
    return sprite;
  }
}

const CLEAR = { solids_mgL: 10, oxygen_mgL: 4, hoursWithoutOxygen: 0, residual_mgL: 0, raw: 0 };

/** Square root, as along the pipes: a trickle still crawls. */
function speed(flow_Ls: number): number {
  return 10 + 70 * Math.sqrt(flow_Ls);
}

/** From the inlet's side of a chamber to the other. */
function across(layout: Layout, id: ChamberId): readonly [number, number] {
  const { trash, aeration, clarifier: c, riser, pump } = layout;
  const whole = (b: { x: number; width: number }): readonly [number, number] => [b.x + 3, b.x + b.width - 3];
  switch (id) {
    case 'trash-tank':
      return [trash.inside.x + 30, trash.inside.x + trash.inside.width - 28];
    case 'aeration':
      return [aeration.inside.x + 4, c.left - 3];
    case 'clarifier':
      return [c.left + 4, c.right - 4];
    case 'disinfection':
      return whole(riser.shell);
    case 'pump-tank':
      return whole(pump.inside);
  }
}
