/** Floats on the tree: they hang from their tether when the water is below them and point up when it is above. */

import { Container } from 'pixi.js';
import type { FloatScene } from '../scene/types.ts';
import { Cel } from './cel.ts';
import { FLOAT_COLOURS, INK, inkShare, mix, PAPER, PENCIL } from './ink.ts';
import type { Layout } from './layout.ts';
import { newPath } from './path.ts';
import { box, draw, type Pen, rect } from './pen.ts';

const TETHER = 15;
/** Size of a float on the plate, of the drawing below. */
const SIZE = 0.8;
/** From the end of the tether to the far end of the body, in units of the drawing below. */
const BODY_LENGTH = 26;
const BODY = 'M-9 6C-9 -4 -5.5 -12 0 -12S9 -4 9 6C9 12 5 15 0 15S-9 12 -9 6Z';

/**
 * Angle of the tether in radians, 0 hanging straight down, turning to the side the float swings to. One that hangs lies
 * on the floor, `room` units below its tie, rather than go through it. One that floats rides on the water, which stands
 * `over` units above its tie, as far as its tether and what it is known to be let it.
 */
export function floatAngle(
  position: FloatScene['position'],
  room: number,
  tether: number,
  size: number,
  over: number | null = null,
): number {
  const reach = tether + BODY_LENGTH * size;
  const lying = room < reach ? Math.acos(Math.max(0, room) / reach) : 0;
  return Math.max(lying, over === null ? freeAngle(position) : riding(position, over / reach));
}

function riding(position: FloatScene['position'], over: number): number {
  const afloat = Math.acos(Math.max(-1, Math.min(1, -over)));
  if (position === 'hanging') return Math.min(1.45, Math.max(0.45, afloat));
  return position === 'up' ? Math.min(2.45, Math.max(1.65, afloat)) : freeAngle(position);
}

function freeAngle(position: FloatScene['position']): number {
  switch (position) {
    case 'up':
    case 'held-up':
      return 2.35;
    case 'lifted':
      return 2.9;
    case 'held-down':
      return 0.32;
    case 'hanging':
      return 0.6;
    default:
      return 1.5;
  }
}

/** Draws one float at its tether point: cord, body; tether point is the origin, `side` -1 swings to the left. */
export function paintFloat(
  pen: Pen,
  f: FloatScene,
  angle: number,
  side: number,
  ink: boolean,
  tether = TETHER,
  size = SIZE,
): void {
  const colour = FLOAT_COLOURS[f.id];
  const x = Math.sin(angle) * tether * side;
  const y = Math.cos(angle) * tether;
  // The cord is a fifth longer than the way: what is slack hangs in a bow, most where it lies level.
  const sag = 0.42 * tether * Math.sin(angle) ** 2;
  const cord = `M0 0Q${x * 0.5} ${y * 0.5 + 2 * sag} ${x} ${y}`;
  draw(pen, cord, { stroke: ink ? INK : PENCIL, width: ink ? 2.6 : 1.4 });
  if (ink) draw(pen, cord, { stroke: '#6f6a5e', width: 1 });
  pen.save();
  pen.translate(x, y);
  // The body lies along its cord, cord end towards the tree.
  pen.rotate(Math.atan2(y, x) - Math.PI / 2);
  pen.scale(size, size);
  pen.translate(0, 11);
  draw(pen, BODY, ink ? { fill: colour, width: 1.6 } : { fill: PAPER, stroke: PENCIL, width: 1.3 });
  if (ink) {
    draw(pen, 'M-5.5 2C-5 -4 -3 -8 -1 -9', { stroke: '#ffffff', width: 1.6, alpha: 0.55 });
    draw(pen, 'M-8.5 8q8.5 4 17 0', { stroke: mix(colour, INK, 0.5), width: 1.2 });
    draw(pen, 'M3 13q5 -3 5.5 -9', { stroke: mix(colour, INK, 0.35), width: 1 });
    if (size > 1.2) contact(pen, f.made);
  }
  pen.restore();
  rect(pen, box(-4, -3.5, 8, 7), 1.5, { fill: ink ? '#b9954f' : PAPER, stroke: ink ? INK : PENCIL, width: 1.2 });
  if (ink && (f.position === 'held-down' || f.position === 'held-up')) caught(pen, x, y);
}

/** A window in the body: the ball lies on the contact or away from it; nobody who has not measured sees it. */
function contact(pen: Pen, made: boolean | null): void {
  rect(pen, box(-3.4, -6, 6.8, 13), 1.6, {
    fill: made === null ? PAPER : '#fffaf0',
    stroke: made === null ? PENCIL : INK,
    width: 0.9,
    ...(made === null ? { dash: [2, 1.6] } : {}),
  });
  if (made === null) return;
  const p = newPath();
  p.arc(0, made ? 3.6 : -2.6, 2.4, 0, 6.2832);
  draw(pen, p, { fill: '#9fb4bb', width: 0.8 });
  draw(pen, 'M-2 6.4h1.4M0.6 6.4h1.4', { stroke: '#b06a34', width: 1.2 });
}

/** A cord wound round the float that holds it. */
function caught(pen: Pen, x: number, y: number): void {
  draw(pen, `M0 ${y * 0.1}C${x * 1.6} ${y * 0.1} ${x * 1.7} ${y * 1.5} ${x * 0.4} ${y * 1.25}`, {
    stroke: '#3a3730',
    width: 1.6,
  });
}

/** The floats of the yard view, two cels each: pencil and ink. */
export class Floats {
  readonly root = new Container();
  readonly #cels = new Map<string, { pencil: Cel; ink: Cel }>();

  /** `surfaceY` is where the water stands, as far as that is seen. */
  show(layout: Layout, floats: readonly FloatScene[], scale: number, surfaceY: number | null): void {
    for (const [id, cels] of this.#cels) {
      if (floats.some((f) => f.id === id)) continue;
      cels.pencil.hide();
      cels.ink.hide();
    }
    for (const [i, f] of floats.entries()) {
      const cels = this.#cels.get(f.id) ?? this.#make(f.id);
      const x = layout.treeX;
      const y = layout.y(f.tether_m);
      const side = i % 2 === 0 ? -1 : 1;
      const area = box(x - 58, y - 58, 116, 116);
      const share = inkShare(f.ink);
      // A float one has seen fades at the angle it was seen at; an unseen one stands level.
      const room = layout.pump.inside.y + layout.pump.inside.height - y;
      const over = f.ink.kind === 'live' && surfaceY !== null ? y - surfaceY : null;
      const angle = Math.round(floatAngle(f.position, room, TETHER, SIZE, over) * 30) / 30;
      const unseen = f.ink.kind === 'pencil' ? floatAngle(null, room, TETHER, SIZE) : angle;
      const at = (pen: Pen, inside: () => void) => {
        pen.translate(x, y);
        inside();
      };
      if (share < 1) {
        cels.pencil.show(area, scale, `p${i}|${y}|${unseen}`, (pen) =>
          at(pen, () => paintFloat(pen, f, unseen, side, false)),
        );
      } else cels.pencil.hide();
      if (share > 0) {
        const known = f.position !== null;
        cels.ink.show(area, scale, `${y}|${f.position}|${angle}`, (pen) =>
          at(pen, () => paintFloat(pen, f, angle, side, known)),
        );
        cels.ink.sprite.alpha = share;
      } else cels.ink.hide();
    }
  }

  stale(): void {
    for (const c of this.#cels.values()) {
      c.pencil.stale();
      c.ink.stale();
    }
  }

  #make(id: string): { pencil: Cel; ink: Cel } {
    const made = { pencil: new Cel(), ink: new Cel() };
    this.root.addChild(made.pencil.sprite, made.ink.sprite);
    this.#cels.set(id, made);
    return made;
  }
}
