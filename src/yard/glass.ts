/** The glass: the spot under it three times as large, with pipes, floats and water cut open as far as they are known. */
import type { ChamberId, Scene } from '../scene/types.ts';
import type { Message } from '../service/message.ts';
import { stepsOf } from './copy.ts';
import { floatAngle, paintFloat } from './floats.ts';
import { noise } from './hash.ts';
import { CARD, INK, PAPER, PENCIL, SCUM, SLUDGE, waterColour } from './ink.ts';
import { newPath } from './path.ts';
import { box, disc, draw, hatch, type Pen, pencilHatch, within } from './pen.ts';
import { type AirSight, type FloatSight, type PipeSight, sightAt, stopsOf, type WaterSight } from './sights.ts';
import type { Works } from './works.ts';

/** How much larger things are under the glass. */
const LARGER = 3;
/** Radius of the drawing in the glass, its own units. */
const RADIUS = 100;

export interface Glass {
  /** Paints what is under a point of the screen into a square canvas of such a side, and says what it is. */
  look(canvas: HTMLCanvasElement, side: number, x: number, y: number): Message;
  /** Points of the screen where there is something to look into, in the order the water takes. */
  stops(): readonly (readonly [x: number, y: number])[];
}

/** What the glass needs of the yard: the works with their scene, and how plate and screen lie on each other. */
export interface UnderGlass {
  readonly works: Works;
  readonly scene: () => Scene | null;
  readonly toPlate: (x: number, y: number) => readonly [number, number];
  readonly toScreen: (x: number, y: number) => readonly [number, number];
  readonly scale: () => number;
}

const NOTHING: Message = { id: 'glass.nothing' };

export function makeGlass({ works, scene, toPlate, toScreen, scale }: UnderGlass): Glass {
  return {
    look(canvas, side, x, y) {
      const now = scene();
      const { layout } = works;
      const pen = canvas.getContext('2d');
      if (now === null || layout === null || pen === null) return NOTHING;
      const dense = Math.min(2, window.devicePixelRatio || 1);
      canvas.width = canvas.height = Math.round(side * dense);
      const at = toPlate(x, y);
      const k = canvas.width / (2 * RADIUS);
      pen.setTransform(k, 0, 0, k, canvas.width / 2, canvas.height / 2);
      const round = newPath();
      round.arc(0, 0, RADIUS, 0, 2 * Math.PI);
      const { cut, says } = sightAt(layout, now, at);
      within(pen, round, () => {
        disc(pen, 0, 0, RADIUS, { fill: PAPER });
        pen.save();
        const larger = (LARGER * scale() * 2 * RADIUS) / side;
        pen.scale(larger, larger);
        pen.translate(-at[0], -at[1]);
        copyPicture(works, pen);
        pen.restore();
        if (cut.kind !== 'none') disc(pen, 0, 0, RADIUS, { fill: PAPER, alpha: 0.45 });
        if (cut.kind === 'pipe') cutPipe(pen, cut, now);
        if (cut.kind === 'air') cutAir(pen, cut);
        if (cut.kind === 'float') cutFloat(pen, cut);
        if (cut.kind === 'water') cutWater(pen, cut);
      });
      return says;
    },
    stops() {
      const now = scene();
      const { layout } = works;
      if (now === null || layout === null) return [];
      return stopsOf(layout, now).map(([x, y]) => toScreen(x, y));
    },
  };
}

/** The picture as it is on the screen, from its own sheets, without its words. */
function copyPicture(works: Works, pen: Pen): void {
  const image = (canvas: HTMLCanvasElement, x: number, y: number, width: number, height: number, alpha: number) => {
    pen.save();
    pen.globalAlpha *= alpha;
    pen.drawImage(canvas, x, y, width, height);
    pen.restore();
  };
  const flat = { pen, image, flat: true, group: () => {} } as const;
  // The sheet's own place on the screen is not the glass's.
  for (const child of works.pictured) for (const step of stepsOf(child, flat)) step();
}

/** Wall and bore of a pipe cut across, at the middle. */
function bore(pen: Pen, pencil: boolean): Path2D {
  disc(pen, 0, 0, 68, { fill: pencil ? PAPER : '#d9d2bf', stroke: pencil ? PENCIL : INK, width: pencil ? 1.8 : 2.6 });
  if (!pencil) {
    const wall = newPath();
    for (let i = 0; i < 40; i++) {
      const a = (i * Math.PI) / 20;
      wall.moveTo(Math.cos(a) * 57, Math.sin(a) * 57);
      wall.lineTo(Math.cos(a + 0.12) * 67, Math.sin(a + 0.12) * 67);
    }
    draw(pen, wall, { stroke: '#8f8873', width: 1 });
  }
  const round = newPath();
  round.arc(0, 0, 56, 0, 2 * Math.PI);
  draw(pen, round, { fill: pencil ? PAPER : '#f3ecd9' });
  return round;
}

function unseen(pen: Pen, round: Path2D): void {
  within(pen, round, () => {
    pencilHatch(pen, box(-60, -60, 120, 120));
    draw(pen, 'M-56 8q14 -6 28 0t28 0t28 0t28 0', { stroke: PENCIL, width: 1.6, dash: [6, 4] });
  });
  draw(pen, round, { stroke: PENCIL, width: 1.8, dash: [7, 5] });
}

function cutPipe(pen: Pen, { full, flows, water }: PipeSight, scene: Scene): void {
  const round = bore(pen, full === null);
  if (full === null) {
    unseen(pen, round);
    return;
  }
  const { colour } = lookOf(scene, water);
  within(pen, round, () => {
    const top = 56 - 112 * full;
    const body = newPath(`M-60 ${top}${full < 1 ? 'q15 -3 30 0t30 0t30 0t30 0' : 'h120'}V60H-60Z`);
    draw(pen, body, { fill: colour, stroke: full < 1 ? INK : colour, width: 1.4 });
    if (!flows) return;
    // What runs towards one: rings where the water is, one behind the other.
    within(pen, body, () => {
      for (const r of [16, 30, 44]) disc(pen, 0, 12, r, { stroke: '#ffffff', width: 1.6, alpha: 0.55 });
    });
  });
  draw(pen, round, { width: 2.2 });
}

function lookOf(scene: Scene, id: ChamberId): ReturnType<typeof waterColour> {
  const look = scene.chambers[id].water;
  return waterColour(look ?? { solids_mgL: 30, oxygen_mgL: 4, hoursWithoutOxygen: 0, residual_mgL: 0, raw: 0 });
}

/** Air at which the bore is drawn as full of strokes as it gets, L/min. */
const MOST_LMIN = 110;

function cutAir(pen: Pen, { flow_Lmin }: AirSight): void {
  const round = bore(pen, flow_Lmin === null);
  if (flow_Lmin === null) {
    unseen(pen, round);
    return;
  }
  const r = noise(12);
  within(pen, round, () => {
    const strokes = newPath();
    for (let i = 0; i < Math.round((34 * flow_Lmin) / MOST_LMIN); i++) {
      const a = r() * 6.28;
      const d = 10 + r() * 40;
      strokes.moveTo(Math.cos(a) * d, Math.sin(a) * d);
      strokes.lineTo(Math.cos(a) * (d + 4 + (d * 9) / 50), Math.sin(a) * (d + 4 + (d * 9) / 50));
    }
    draw(pen, strokes, { stroke: '#2f5d73', width: 2, alpha: 0.8 });
  });
  draw(pen, round, { width: 2.2 });
}

function cutFloat(pen: Pen, { float, side }: FloatSight): void {
  const known = float.position !== null;
  disc(pen, 0, 0, RADIUS, { fill: CARD, alpha: 0.55 });
  const angle = floatAngle(float.position, 400, 30, 2.6);
  pen.save();
  const up = angle > 1.57 ? 46 : -46;
  pen.translate(-side * 34, up);
  paintFloat(pen, float, angle, side, known, 30, 2.6);
  pen.restore();
}

function cutWater(pen: Pen, { chamber }: WaterSight): void {
  if (chamber === null || chamber.water === null) {
    const all = newPath();
    all.arc(0, 0, RADIUS, 0, 2 * Math.PI);
    within(pen, all, () => hatch(pen, box(-100, -100, 200, 200), 9, -150, { stroke: PENCIL, width: 0.9, alpha: 0.5 }));
    return;
  }
  const { colour } = waterColour(chamber.water);
  disc(pen, 0, 0, RADIUS, { fill: colour, alpha: 0.8 });
  const r = noise(45);
  // One fleck to some ten milligrams in the litre, up to what the eye still takes apart.
  const flecks = newPath();
  for (let i = 0; i < Math.min(420, 4 + chamber.water.solids_mgL / 8); i++) {
    const [x, y, size] = [(r() - 0.5) * 200, (r() - 0.5) * 200, 0.9 + r() * 2.4];
    flecks.moveTo(x + size, y);
    flecks.arc(x, y, size, 0, 6.2832);
  }
  draw(pen, flecks, { fill: '#3b2d1a', alpha: 0.5 });
  // Layers in a jar beside it, thickness to one scale: half the jar is 15 cm and more.
  const jar = box(46, -62, 26, 124);
  if ((chamber.scum_m ?? 0) + (chamber.sludge_m ?? 0) <= 0.005) return;
  draw(pen, `M${jar.x} ${jar.y}h${jar.width}v${jar.height}h-${jar.width}z`, { fill: colour, width: 2 });
  const thick = (m: number | null) => Math.min(jar.height / 2, (m ?? 0) * 400);
  const scum = thick(chamber.scum_m);
  const sludge = thick(chamber.sludge_m);
  draw(pen, `M${jar.x} ${jar.y}h${jar.width}v${scum}h-${jar.width}z`, { fill: SCUM, width: 1 });
  draw(pen, `M${jar.x} ${jar.y + jar.height - sludge}h${jar.width}v${sludge}h-${jar.width}z`, {
    fill: SLUDGE,
    width: 1,
  });
}
