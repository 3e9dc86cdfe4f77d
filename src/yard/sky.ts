/** The plain sky by day with its sun and fair clouds, and the hills with their trees by season. */
import type { BodyScene } from '../scene/types.ts';
import { around, ROUND } from './drift.ts';
import { noise } from './hash.ts';
import { mix } from './ink.ts';
import { PLATE_WIDTH } from './layout.ts';
import { newPath } from './path.ts';
import { type Box, disc, draw, fade, type Pen } from './pen.ts';
import type { Season } from './season.ts';

export function paintDaySky(pen: Pen, view: Box): void {
  pen.fillStyle = fade(pen, Math.min(view.y, -200), 0, [
    [0, '#d5e4e3'],
    [0.45, '#e3ece2'],
    [1, '#f7efd9'],
  ]);
  pen.fillRect(view.x, view.y, view.width, -view.y + 4);
}

/** Where sun and moon stand on the plate, which looks south: east on the left, the horizon in the hills. */
export function skyPoint({ up, across }: BodyScene): readonly [number, number] {
  return [PLATE_WIDTH * (0.5 + 0.46 * across), -34 - 132 * up];
}

/** Room that the sun takes with its rays. */
export const SUN_ROOM = 34;

/** Higher it is paler; it reddens towards the horizon. */
export function paintSun(pen: Pen, x: number, y: number, up: number): void {
  const colour = mix('#e2793f', '#f7d57c', up * 3);
  const rays = newPath();
  for (let i = 0; i < 24; i++) {
    const a = (i * Math.PI) / 12;
    const far = i % 2 === 0 ? 29 : 24;
    rays.moveTo(x + Math.cos(a) * 19, y + Math.sin(a) * 19);
    rays.lineTo(x + Math.cos(a) * far, y + Math.sin(a) * far);
  }
  draw(pen, rays, { stroke: mix(colour, '#8a5a2b', 0.35), width: 1, alpha: 0.7 });
  disc(pen, x, y, 14, { fill: colour, stroke: mix(colour, '#8a5a2b', 0.5), width: 1.2 });
}

const CLOUD = 'M-62 14h124c14 0 18-20 2-23-4-16-26-18-33-7-9-17-38-14-41 6-14-8-30 0-27 12-20-4-33 9-25 12z';
const CLOUD_LINES = 'M-50 8h26M-14 9h40M36 8h22M-30 3h18M8 4h24';

/** Fair clouds, as many as it takes to lie over that share of the horizon, so far on their way. */
export function paintClouds(pen: Pen, cover: number, gone: number): void {
  const r = noise(5);
  const step = 12;
  const over = new Set<number>();
  for (let i = 0; i < 40 && over.size * step < cover * ROUND; i++) {
    const x = ((0.36 + i * 0.618) % 1) * ROUND;
    const y = -172 + r() * 62;
    const k = 0.6 + r() * 0.6;
    for (let at = Math.ceil((x - 68 * k) / step); at * step < x + 72 * k; at++) over.add(at);
    pen.save();
    pen.translate(around(x + gone), y);
    pen.scale(k, k);
    draw(pen, CLOUD, { fill: '#fbf7ea', stroke: '#c9c3ae', width: 1.2 });
    draw(pen, CLOUD_LINES, { stroke: '#b9b39f', width: 0.9, alpha: 0.6 });
    pen.restore();
  }
}

/** The range against the sky, from its crest down to a foot. */
export function farHill(left: number, right: number, foot: number): string {
  return `M${left} -34C-60 -40 20 -52 160 -58S330 -58 520 -70S900 -28 1100 -62S1350 -84 1440 -50S1620 -40 ${right} -44V${foot}H${left}Z`;
}

/** The hill before it, likewise. */
export function nearHill(left: number, right: number, foot: number): string {
  return `M${left} -22C0 -30 260 -46 420 -30S640 -30 780 -36S1200 -16 1440 -34S1600 -24 ${right} -26V${foot}H${left}Z`;
}

/** Where the trees stand and how large they are. */
const TREES = [
  [300, 0.8],
  [426, 0.55],
  [742, 0.95],
  [1012, 0.62],
  [1472, 1],
  [-62, 0.9],
] as const;

/** The trees in one colour, with their crowns where they have most of their leaves. */
export function paintTreeShapes(pen: Pen, fill: string, inLeaf: boolean): void {
  for (const [x, k] of TREES) {
    pen.save();
    pen.translate(x, -4);
    pen.scale(k, k);
    draw(pen, BOUGHS, { fill });
    if (inLeaf) draw(pen, CROWN, { fill });
    pen.restore();
  }
}

/** Hills and trees behind the lawn. */
export function paintHills(pen: Pen, view: Box, season: Season): void {
  const left = Math.min(view.x, -200);
  const right = Math.max(view.x + view.width, 1640);
  draw(pen, farHill(left, right, 2), { fill: season.farHill });
  draw(pen, nearHill(left, right, 2), { fill: season.nearHill });
  const r = noise(31);
  const strokes = newPath();
  for (let x = left; x < right; x += 17) {
    const y = -50 + r() * 22;
    strokes.moveTo(x, y);
    strokes.lineTo(x + 5 + r() * 9, y - 1.5 - r() * 2);
  }
  draw(pen, strokes, { stroke: season.hillStroke, width: 0.8, alpha: 0.6 });
  for (const [x, k] of TREES) tree(pen, x, k, season);
}

const CROWN = 'M-20 -26c-12-4-12-20 0-22 0-12 16-18 22-8 12-4 22 6 16 16 8 8 0 18-10 15-8 7-20 6-28-1z';
const BOUGHS =
  'M-3 4l2-30h3l2 30zM0 -14l-9 -10M1 -12l8 -9M0 -24l-3 -24M-9 -24l-9 -8M-9 -24l-1 -14M9 -21l9 -12M9 -21l1 -19M-2 -38l-8 -9M-1 -34l7 -13';

/** Trunk and boughs, and the crown as far as it has its leaves: some few of them are drawn, the rest stand for it. */
function tree(pen: Pen, x: number, k: number, { leaf, leafLine, leaves: share }: Season): void {
  const r = noise(Math.round(x) + 900);
  pen.save();
  pen.translate(x, -4);
  pen.scale(k, k);
  draw(pen, BOUGHS, { fill: '#7b6145', stroke: '#5d4a34', width: 1 });
  draw(pen, CROWN, { fill: leaf, stroke: leafLine, width: 1.2, alpha: share });
  const leaves = newPath();
  for (let i = 0; i < 26 * share; i++) {
    const a = r() * 6.28;
    const d = Math.sqrt(r()) * 17;
    const cx = Math.cos(a) * d * 1.15;
    const cy = -39 + Math.sin(a) * d * 0.85;
    leaves.moveTo(cx - 2.4, cy);
    leaves.quadraticCurveTo(cx, cy + 2.6, cx + 2.4, cy);
  }
  draw(pen, leaves, { stroke: leafLine, width: 0.9, alpha: 0.75 });
  pen.restore();
}
