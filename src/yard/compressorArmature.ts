/**
 * What swings in the compressor's close-up: armature, rubbers, flaps, and air drawn in and pushed out. Mains swing it a
 * hundred times a second and more; it is drawn slowed down. How far it swings is the scene's stroke.
 */
import { Container, Graphics, Sprite } from 'pixi.js';
import type { CompressorScene } from '../scene/types.ts';
import { along, type Point } from './along.ts';
import { Cel } from './cel.ts';
import { CHEST, COIL_X, FILTER, HOUSING, rimX, SHAFT_Y, SIDES, type Side } from './compressorPlan.ts';
import { INK, inkShare } from './ink.ts';
import { box, disc, draw, fade, type Pen, rect } from './pen.ts';
import type { PlateMover } from './plate.ts';
import type { Print } from './sheet.ts';
import type { Sparks } from './sparks.ts';

/** Swings a second as drawn, and units of the plate that the open line's whole stroke takes. */
const SWINGS_Hz = 0.8;
const FULL_STROKE = 24;
const RUBBER = 0x3a3733;
const INK_LINE = 0x2b2a26;
/** Motes of air on their way through each side. */
const MOTES = 9;
/** Opening of a flap at its widest, units. */
const FLAP = 13;

export class Armature implements PlateMover {
  readonly root = new Container();
  readonly #rod = new Cel();
  readonly #lines = new Graphics();
  readonly #motes: {
    readonly sprite: Sprite;
    readonly side: Side;
    readonly leaving: boolean;
    readonly phase: number;
  }[] = [];
  #shown: CompressorScene | null = null;

  constructor({ bubble }: Sparks) {
    this.root.addChild(this.#lines, this.#rod.sprite);
    for (const side of SIDES) {
      for (const leaving of [false, true]) {
        for (let i = 0; i < MOTES; i++) {
          const sprite = new Sprite(bubble);
          sprite.anchor.set(0.5);
          sprite.scale.set(0.2 + 0.05 * (i % 3));
          this.root.addChild(sprite);
          this.#motes.push({ sprite, side, leaving, phase: i / MOTES });
        }
      }
    }
  }

  print({ scene, scale }: Print): void {
    const s = scene.compressor;
    this.#shown = inkShare(s.ink) > 0 ? s : null;
    this.root.visible = this.#shown !== null;
    if (this.#shown === null) return;
    this.root.alpha = inkShare(s.ink);
    const open = s.housing === 'open';
    this.#rod.sprite.visible = open;
    if (!open) return;
    const reach = rimX(1) - rimX(-1);
    this.#rod.show(box(rimX(-1) - 30, SHAFT_Y - 40, reach + 60, 80), scale, 'rod', paintRod);
    this.#at = this.#rod.sprite.position.x;
  }

  #at = 0;

  step(t: number, _dt: number): boolean {
    const s = this.#shown;
    if (s === null) return false;
    const runs = s.running === true;
    this.#lines.clear();
    const open = s.housing === 'open';
    if (!open && runs) this.#hum(t, s.load ?? 0.5);
    for (const { sprite } of open ? [] : this.#motes) sprite.visible = false;
    if (!open) return runs;
    const swing = runs ? Math.sin(t * 6.2832 * SWINGS_Hz) : 0;
    const moved = (swing * FULL_STROKE * (s.stroke ?? 0.5)) / 2;
    this.#rod.sprite.position.x = this.#at + moved;
    this.#rubbers(moved, s.rattle);
    this.#flaps(runs ? Math.cos(t * 6.2832 * SWINGS_Hz) : 0);
    const flow = runs ? (s.stroke ?? 0.5) : 0;
    for (const { sprite, side, leaving, phase } of this.#motes) {
      sprite.visible = flow > 0.02;
      if (!sprite.visible) continue;
      const k = (phase + t * 0.28 * (0.3 + flow)) % 1;
      const [x, y] = along(way(side, leaving), k);
      sprite.position.set(x, y);
      sprite.alpha = 0.9 * Math.min(1, 6 * k, 6 * (1 - k));
    }
    return runs;
  }

  stale(): void {
    this.#rod.stale();
  }

  #rubbers(moved: number, torn: boolean): void {
    const g = this.#lines;
    for (const side of SIDES) {
      for (const [width, color] of [
        [11, INK_LINE],
        [7, torn && side === 1 ? 0x8a4a34 : RUBBER],
      ] as const) {
        this.#rubber(side, moved);
        g.stroke({ width, color });
      }
      if (!torn || side !== 1) continue;
      const x = rimX(side) + moved / 2;
      g.moveTo(x - 9, SHAFT_Y - 50)
        .lineTo(x + 4, SHAFT_Y - 42)
        .lineTo(x - 5, SHAFT_Y - 34)
        .lineTo(x + 8, SHAFT_Y - 26);
      g.stroke({ width: 3.4, color: 0xf6f0e1 });
    }
  }

  #rubber(side: Side, moved: number): void {
    const g = this.#lines;
    const x = rimX(side);
    const hub = x + moved;
    const bend = (x + hub) / 2 - side * 9;
    g.moveTo(x, SHAFT_Y - 66);
    g.quadraticCurveTo(bend, SHAFT_Y - 43, hub, SHAFT_Y - 20);
    g.lineTo(hub, SHAFT_Y + 20);
    g.quadraticCurveTo(bend, SHAFT_Y + 43, x, SHAFT_Y + 66);
  }

  /** Of a closed housing one hears its hum: the harder it works, the wider the marks beside it throb. */
  #hum(t: number, load: number): void {
    const g = this.#lines;
    const beat = Math.sin(t * 6.2832 * SWINGS_Hz) * (2 + 8 * load);
    for (const side of SIDES) {
      const x = COIL_X + side * (HOUSING.width / 2 - 20);
      const from = side < 0 ? Math.PI * 0.86 : -Math.PI * 0.14;
      for (let k = 0; k < 2 + Math.round(2 * load); k++) {
        const far = 44 + 16 * k + beat;
        g.moveTo(x + far * Math.cos(from), SHAFT_Y + far * Math.sin(from));
        g.arc(x, SHAFT_Y, far, from, from + Math.PI * 0.28);
        g.stroke({ width: 3, color: INK_LINE, alpha: 0.5 - 0.09 * k });
      }
    }
  }

  /** A side that grows draws its upper flap open; one that shrinks pushes its lower flap open. */
  #flaps(speed: number): void {
    const g = this.#lines;
    for (const side of SIDES) {
      const c = CHEST[side];
      const grows = -side * speed;
      const middle = c.x + c.width / 2;
      for (const [y, open] of [
        [c.y + 48, Math.max(0, grows)],
        [c.y + c.height - 40, Math.max(0, -grows)],
      ] as const) {
        g.moveTo(middle - 14, y + 2).lineTo(middle + 14, y + 2 + FLAP * open);
        g.stroke({ width: 4.4, color: 0xc9402a, alpha: 0.95 });
      }
    }
  }
}

/** Shaft with two magnets, a washer to each rubber. */
function paintRod(pen: Pen): void {
  const [left, right] = [rimX(-1), rimX(1)];
  rect(pen, box(left, SHAFT_Y - 6, right - left, 12), 3, {
    fill: fade(pen, SHAFT_Y - 6, SHAFT_Y + 6, [
      [0, '#f2efe6'],
      [1, '#9d998c'],
    ]),
    stroke: INK,
    width: 1.8,
  });
  for (const side of SIDES) {
    const x = COIL_X + side * 42;
    rect(pen, box(x - 30, SHAFT_Y - 20, 60, 40), 4, { fill: '#5b6f86', stroke: INK, width: 1.9 });
    draw(pen, `M${x} ${SHAFT_Y - 20}v40`, { width: 1.2 });
    rect(pen, box(x - 30, SHAFT_Y - 20, 60, 8), 3, { fill: '#8298ad' });
    rect(pen, box(rimX(side) - 7, SHAFT_Y - 22, 14, 44), 4, { fill: '#cfc8b6', stroke: INK, width: 1.7 });
    disc(pen, rimX(side) - side * 14, SHAFT_Y, 8, { fill: '#b3ac9b', stroke: INK, width: 1.5 });
  }
}

/** From the filter down through the upper flap into the chest, or out of it below and away to the hose. */
function way(side: Side, leaving: boolean): readonly Point[] {
  const c = CHEST[side];
  const x = c.x + c.width / 2;
  if (!leaving) {
    return [
      [COIL_X + side * 60, FILTER.y + FILTER.height - 6],
      [x, 152],
      [x, c.y + 44],
      [x + (side < 0 ? 16 : -16), SHAFT_Y],
    ];
  }
  return [
    [x + (side < 0 ? 16 : -16), SHAFT_Y],
    [x, c.y + c.height - 40],
    [x, 394],
    [HOUSING.x + HOUSING.width + 30, 394],
  ];
}
