/** The clarifier in its chamber, in section for its close-up: liquor with its air lines, hopper, blanket, scum, outlet. */
import type { ChamberScene } from '../scene/types.ts';
import { paintNeckWater, paintScum, paintSludge, paintWater, ripple } from './basin.ts';
import { type ClarifierPlan, PIPE_WIDE } from './clarifierPlan.ts';
import { noise } from './hash.ts';
import { INK, mix, PAPER, PENCIL, SHELL } from './ink.ts';
import { newPath } from './path.ts';
import { box, draw, fade, hatch, lined, type Pen, pencilHatch, pipe, rect, within } from './pen.ts';
import { paintVault, paintVaultLid } from './vault.ts';

/** What was seen of the chamber and of the clarifier, null where nobody saw it. */
export interface Seen {
  readonly aeration: ChamberScene | null;
  readonly clarifier: ChamberScene;
}

function outline({ hopper: h }: ClarifierPlan): Path2D {
  return newPath(
    `M${h.left} ${h.top}V${h.straight}L${h.slot[0]} ${h.tip}H${h.slot[1]}L${h.right} ${h.straight}V${h.top}Z`,
  );
}

function walls({ hopper: h }: ClarifierPlan): string {
  return `M${h.left} ${h.top}V${h.straight}L${h.slot[0]} ${h.tip}M${h.slot[1]} ${h.tip}L${h.right} ${h.straight}V${h.top}`;
}

export function paintClarifierPlatePencil(pen: Pen, plan: ClarifierPlan): void {
  const { inside: b, hopper: h, outletY } = plan;
  paintVault(pen, plan, false);
  unseenWater(pen, b.x, b.x + b.width, outletY, b.y + b.height);
  air(pen, plan, false);
  draw(pen, outline(plan), { fill: PAPER });
  within(pen, outline(plan), () => unseenWater(pen, h.left, h.right, outletY, h.tip));
  draw(pen, walls(plan), { stroke: PENCIL, width: 2.4 });
  pipes(pen, plan, false);
  paintVaultLid(pen, plan, false);
}

export function paintClarifierPlateInk(pen: Pen, plan: ClarifierPlan, { aeration, clarifier }: Seen): void {
  const { inside: b, hopper: h } = plan;
  paintVault(pen, plan, true);
  liquor(pen, plan, aeration);
  air(pen, plan, aeration !== null);
  draw(pen, outline(plan), { fill: SHELL });
  within(pen, outline(plan), () => within(pen, b, () => settled(pen, plan, clarifier)));
  const levelY = clarifier.level_m === null ? null : plan.y(clarifier.level_m);
  if (levelY !== null) {
    const neck = box(plan.neck.x - 5, plan.neck.y, plan.neck.width + 10, 1);
    paintNeckWater(pen, neck, b.y, levelY, clarifier.water, 0);
  }
  lined(pen, walls(plan), { width: 8, cap: 'butt' }, { stroke: '#cdc7b8', width: 4.4, cap: 'butt' });
  for (const x of [h.left, h.right])
    rect(pen, box(x - 8, h.top, 16, 14), 2, { fill: '#b3ac9b', stroke: INK, width: 1.4 });
  back(pen, plan);
  rect(pen, b, 0, { stroke: INK, width: 1.6 });
  pipes(pen, plan, true);
  paintVaultLid(pen, plan, clarifier.lid === 'open');
}

function unseenWater(pen: Pen, x0: number, x1: number, y: number, foot: number): void {
  pencilHatch(pen, box(x0, y, x1 - x0, foot - y));
  draw(pen, ripple(x0, x1, y, 3), { stroke: PENCIL, width: 1.4, dash: [7, 5] });
}

function liquor(pen: Pen, plan: ClarifierPlan, c: ChamberScene | null): void {
  const b = plan.inside;
  within(pen, b, () => {
    if (c === null || c.level_m === null) {
      unseenWater(pen, b.x, b.x + b.width, plan.outletY, b.y + b.height);
      return;
    }
    const levelY = plan.y(c.level_m);
    paintWater(pen, b, levelY, c.water);
    if (c.sludge_m !== null) paintSludge(pen, b, c.sludge_m * plan.perMetre);
    if (c.scum_m !== null) foam(pen, plan, levelY, c.scum_m * plan.perMetre);
  });
}

function foam(pen: Pen, { inside, hopper }: ClarifierPlan, levelY: number, thick: number): void {
  if (thick <= 0) return;
  const p = newPath();
  for (let x = inside.x + 3, i = 0; x < hopper.left - 6; x += 13, i++) {
    const r = Math.max(4, thick * (0.5 + 0.2 * (i % 3)));
    p.moveTo(x + r, levelY - r * 0.6);
    p.arc(x, levelY - r * 0.6, r, 0, 6.2832);
  }
  draw(pen, p, { fill: '#f1e6cd', stroke: '#8e774f', width: 1.1 });
}

/** The air line comes from the compressor just below the lawn. */
const FEED_Y = 64;

/** Manifold, drop lines, diffusers. */
function air(pen: Pen, plan: ClarifierPlan, ink: boolean): void {
  const top = plan.inside.y + 18;
  const [first = 0, feed = 0] = plan.dropLines;
  const last = plan.dropLines.at(-1) ?? 0;
  const d = `${plan.dropLines.map((x) => `M${x} ${top}V${plan.diffuserY}`).join('')}M-1400 ${FEED_Y}H${feed}V${top}M${first} ${top}H${last}`;
  draw(pen, d, { stroke: ink ? INK : PENCIL, width: 10, cap: 'square' });
  draw(pen, d, { stroke: ink ? '#d9d2bf' : PAPER, width: 6.4, cap: 'square' });
  for (const x of plan.dropLines) {
    const b = box(x - 26, plan.diffuserY - 4, 52, 15);
    rect(pen, b, 7, { fill: ink ? '#55534b' : PAPER, stroke: ink ? INK : PENCIL, width: 1.7 });
    if (ink) draw(pen, `M${b.x + 8} ${b.y + 5}h${b.width - 16}`, { stroke: '#a39f93', width: 1.6, dash: [2.5, 4] });
  }
}

/** The water inside, what floats on it and what has settled. */
function settled(pen: Pen, plan: ClarifierPlan, c: ChamberScene): void {
  const h = plan.hopper;
  const levelY = c.level_m === null ? null : plan.y(c.level_m);
  if (levelY === null || c.water === null) {
    unseenWater(pen, h.left, h.right, levelY ?? plan.outletY, h.tip);
    return;
  }
  const area = box(h.left, h.top, h.right - h.left, h.tip - h.top);
  paintWater(pen, area, levelY, c.water);
  shafts(pen, plan, levelY);
  blanket(pen, plan, c.sludge_m);
  if (c.scum_m !== null) paintScum(pen, area, levelY, c.scum_m * plan.perMetre);
}

/** Light that falls through the neck. */
function shafts(pen: Pen, { hopper: h, neck }: ClarifierPlan, levelY: number): void {
  for (const [from, to, lean] of [
    [0.1, 0.28, -50],
    [0.44, 0.56, 4],
    [0.72, 0.9, 46],
  ] as const) {
    const [x0, x1] = [neck.x + neck.width * from, neck.x + neck.width * to];
    draw(pen, `M${x0} ${levelY}H${x1}L${x1 + lean} ${h.tip}H${x0 + lean}Z`, { fill: '#ffffff', alpha: 0.09 });
  }
}

/** Flocs under an uneven top where its height is known, a dashed guess where nobody knows it. */
function blanket(pen: Pen, plan: ClarifierPlan, thick_m: number | null): void {
  const { hopper: h, perMetre } = plan;
  if (thick_m === null) {
    const y = h.tip - 0.22 * perMetre;
    draw(pen, `M${h.left} ${y}H${h.right}`, { stroke: PENCIL, width: 1.5, dash: [6, 6] });
    return;
  }
  const top = Math.max(h.top, h.tip - Math.max(0.02, thick_m) * perMetre);
  const r = noise(411);
  const edge = newPath(`M${h.left} ${h.tip}V${top}`);
  for (let x = h.left; x < h.right; x += 22) {
    edge.quadraticCurveTo(x + 11, top - 6 + r() * 12, x + 22, top + (r() - 0.5) * 4);
  }
  edge.lineTo(h.right + 22, h.tip);
  draw(pen, edge, {
    fill: fade(pen, top - 6, h.tip, [
      [0, 'rgba(141,118,72,0.62)'],
      [0.3, 'rgba(128,96,58,0.88)'],
      [1, 'rgba(92,60,33,1)'],
    ]),
    stroke: '#6f4a29',
    width: 1.4,
  });
  const dark = newPath();
  const light = newPath();
  for (let i = 0; i < 24 + thick_m * 1500; i++) {
    const y = top + 3 + r() * (h.tip - top);
    const [x0, x1] = plan.walls(y);
    const x = x0 + r() * (x1 - x0);
    const size = 1.1 + r() * 2.2;
    // A floc is a loose clump, not a ball.
    const p = r() < 0.6 ? dark : light;
    for (const [dx, dy, k] of [
      [0, 0, 1],
      [size * 0.9, size * 0.4, 0.7],
      [-size * 0.7, size * 0.6, 0.6],
    ] as const) {
      p.moveTo(x + dx + size * k, y + dy);
      p.arc(x + dx, y + dy, size * k, 0, 6.2832);
    }
  }
  draw(pen, dark, { fill: '#4f3419', alpha: 0.6 });
  draw(pen, light, { fill: '#a5793f', alpha: 0.5 });
}

/** Which way settled sludge goes back into the chamber. */
function back(pen: Pen, { hopper: { slot, tip } }: ClarifierPlan): void {
  const d = `M${slot[0] + 6} ${tip + 8}q-14 26 -46 26l9 -7m-9 7l9 7M${slot[1] - 6} ${tip + 8}q14 26 46 26l-9 -7m9 7l-9 7`;
  draw(pen, d, { stroke: '#fffaf0', width: 5, alpha: 0.55 });
  draw(pen, d, { stroke: '#3b2613', width: 2.4 });
}

/** Inlet with its tee, outlet with its tee: the water below the surface goes, what floats stays. */
function pipes(pen: Pen, plan: ClarifierPlan, ink: boolean): void {
  const { inside: b, inletY, outletY, teeX } = plan;
  const colours = ink ? {} : { line: PENCIL, wall: PAPER };
  const half = PIPE_WIDE / 2;
  const [inlet, outlet] = [inletY - half, outletY - half];
  const inTee = b.x + 30;
  // Tees are open above, below the ceiling.
  const [inTop, outTop] = [Math.max(inlet - 34, b.y + 6), Math.max(outlet - 34, b.y + 6)];
  pipe(pen, `M-1400 ${inlet}H${inTee}`, PIPE_WIDE, ink ? { lining: '#a7a183' } : colours);
  pipe(pen, `M${inTee} ${inTop}V${inlet + 62}`, PIPE_WIDE, colours);
  pipe(pen, `M${teeX} ${outlet}H2400`, PIPE_WIDE, ink ? { lining: '#a9c3b6' } : colours);
  pipe(pen, `M${teeX} ${outTop}V${outlet + 76}`, PIPE_WIDE, colours);
  const rim = ink ? INK : PENCIL;
  for (const [x, y0, y1] of [
    [inTee, inTop, inlet + 62],
    [teeX, outTop, outlet + 76],
  ] as const) {
    for (const y of [y0, y1])
      rect(pen, box(x - half - 3, y - 4, PIPE_WIDE + 6, 8), 2, {
        fill: ink ? '#cfc8b6' : PAPER,
        stroke: rim,
        width: 1.4,
      });
    if (ink) draw(pen, `M${x - half + 5} ${y0 + 8}V${y1 - 8}`, { stroke: '#fffdf5', width: 2, alpha: 0.8 });
  }
  if (!ink) return;
  const shade = mix('#efe9da', INK, 0.2);
  within(pen, box(teeX - half, outTop + 4, PIPE_WIDE, outlet + 70 - outTop), () =>
    hatch(pen, box(teeX + 4, outTop + 4, half - 6, outlet + 70 - outTop), 5, -12, { stroke: shade, width: 0.9 }),
  );
}
