/** Aeration chamber with drop lines and diffusers, and the hopper clarifier that hangs in the same tank. */

import type { ChamberScene } from '../scene/types.ts';
import {
  paintContentPencil,
  paintCores,
  paintNeckWater,
  paintShellInk,
  paintShellPencil,
  paintSludge,
  paintWater,
  ripple,
} from './basin.ts';
import { noise } from './hash.ts';
import { INK, mix, PAPER, PENCIL, SHELL, waterColour } from './ink.ts';
import type { Layout } from './layout.ts';
import { newPath } from './path.ts';
import { box, draw, fade, hatch, lined, type Pen, pencilHatch, rect, within } from './pen.ts';

/** Outline of the hopper. */
function hopper(layout: Layout): Path2D {
  const c = layout.clarifier;
  return newPath(
    `M${c.left} ${c.top}V${c.straight}L${c.slot[0]} ${c.tip}H${c.slot[1]}L${c.right} ${c.straight}V${c.top}Z`,
  );
}

/** Its two walls, with the slot open between them. */
function walls(layout: Layout): string {
  const c = layout.clarifier;
  return `M${c.left} ${c.top}V${c.straight}L${c.slot[0]} ${c.tip}M${c.slot[1]} ${c.tip}L${c.right} ${c.straight}V${c.top}`;
}

export function manifoldY(layout: Layout): number {
  return layout.aeration.inside.y + 16;
}

function drops(pen: Pen, layout: Layout, line: string, wall: string, foot: string): void {
  const y = manifoldY(layout);
  const first = layout.dropLines[0] ?? 0;
  const last = layout.dropLines[layout.dropLines.length - 1] ?? 0;
  const d = `${layout.dropLines.map((x) => `M${x} ${y}V${layout.diffuserY}`).join('')}M${first} ${y}H${last}`;
  draw(pen, d, { stroke: line, width: 5, cap: 'square' });
  draw(pen, d, { stroke: wall, width: 2.6, cap: 'square' });
  for (const x of layout.dropLines) {
    const b = box(x - 13, layout.diffuserY - 2, 26, 9);
    rect(pen, b, 4, { fill: foot, stroke: line, width: 1.3 });
    if (foot !== PAPER)
      draw(pen, `M${x - 8} ${layout.diffuserY + 1}h16`, { stroke: '#8f8b80', width: 1, dash: [1.5, 2.5] });
  }
}

export function paintAerationPencil(pen: Pen, layout: Layout): void {
  paintShellPencil(pen, layout.aeration);
  paintContentPencil(pen, layout.aeration.inside, layout.aeration.outletY);
  drops(pen, layout, PENCIL, PAPER, PAPER);
}

export function paintAerationInk(pen: Pen, layout: Layout, c: ChamberScene, levelY: number | null): void {
  const t = layout.aeration;
  paintShellInk(pen, t, 202, c.lid === 'open');
  within(pen, t.inside, () => {
    if (levelY === null) paintContentPencil(pen, t.inside, t.outletY);
    else {
      paintWater(pen, t.inside, levelY, c.water);
      if (c.sludge_m !== null) paintSludge(pen, t.inside, c.sludge_m * layout.perMetre);
      if (c.scum_m !== null && c.scum_m > 0) foam(pen, layout, levelY, c.scum_m * layout.perMetre);
    }
  });
  if (levelY !== null) paintNeckWater(pen, t.neck, t.inside.y, levelY, c.water, 0);
  drops(pen, layout, INK, '#d9d2bf', '#55534b');
  paintCores(pen, t.inside, c.cores, layout.perMetre);
  draw(pen, `M${t.inside.x} ${t.inside.y}v${t.inside.height}h${t.inside.width}v${-t.inside.height}`, { width: 1.2 });
}

function foam(pen: Pen, layout: Layout, levelY: number, thick: number): void {
  const { inside } = layout.aeration;
  const p = newPath();
  for (let x = inside.x + 3, i = 0; x < layout.clarifier.left; x += 7, i++) {
    const r = Math.max(2.5, thick * (0.5 + 0.2 * (i % 3)));
    p.moveTo(x + r, levelY - r * 0.6);
    p.arc(x, levelY - r * 0.6, r, 0, 6.2832);
  }
  draw(pen, p, { fill: '#f1e6cd', stroke: '#8e774f', width: 0.9 });
}

export function paintClarifierPencil(pen: Pen, layout: Layout): void {
  const h = hopper(layout);
  const c = layout.clarifier;
  draw(pen, h, { fill: PAPER });
  within(pen, h, () => {
    const y = layout.aeration.outletY;
    pencilHatch(pen, box(c.left, y, c.right - c.left, c.tip - y));
    draw(pen, ripple(c.left, c.right, y, 3), { stroke: PENCIL, width: 1.3, dash: [6, 4] });
  });
  draw(pen, walls(layout), { stroke: PENCIL, width: 1.6 });
}

/** What settles: flocs under an uneven top where it was computed or seen, a dashed guess where nobody knows it. */
function blanket(pen: Pen, layout: Layout, thick_m: number | null): void {
  const c = layout.clarifier;
  if (thick_m === null) {
    const y = c.tip - 0.22 * layout.perMetre;
    draw(pen, `M${c.left} ${y}H${c.right}`, { stroke: PENCIL, width: 1, dash: [3, 4] });
    return;
  }
  const top = Math.max(c.top, c.tip - Math.max(0.03, thick_m) * layout.perMetre);
  const r = noise(411);
  const edge = newPath(`M${c.left} ${c.tip}V${top}`);
  for (let x = c.left; x < c.right; x += 12)
    edge.quadraticCurveTo(x + 6, top - 3 + r() * 6, x + 12, top + (r() - 0.5) * 2);
  edge.lineTo(c.right + 12, c.tip);
  draw(pen, edge, {
    fill: fade(pen, top - 4, c.tip, [
      [0, 'rgba(141,118,72,0.5)'],
      [0.35, 'rgba(128,96,58,0.8)'],
      [1, 'rgba(111,74,41,0.97)'],
    ]),
    stroke: '#7a5a34',
    width: 0.9,
  });
  const flocs = newPath();
  const settling = newPath();
  for (let i = 0; i < 150; i++) {
    const x = c.left + r() * (c.right - c.left);
    const down = r();
    const floc = down < 0.8 ? flocs : settling;
    const y = down < 0.8 ? top + (down / 0.8) * (c.tip - top) : top - 16 * (1 - down) * 5 * r();
    const size = 0.7 + r();
    floc.moveTo(x + size, y);
    floc.arc(x, y, size, 0, 6.2832);
  }
  draw(pen, flocs, { fill: '#4f3419', alpha: 0.55 });
  draw(pen, settling, { fill: '#6f4a29', alpha: 0.5 });
}

export function paintClarifierInk(pen: Pen, layout: Layout, s: ChamberScene, levelY: number | null): void {
  const c = layout.clarifier;
  const h = hopper(layout);
  draw(pen, h, { fill: SHELL });
  within(pen, h, () => {
    if (levelY === null || s.water === null) {
      const y = levelY ?? layout.aeration.outletY;
      pencilHatch(pen, box(c.left, y, c.right - c.left, c.tip - y));
      draw(pen, ripple(c.left, c.right, y, 3), { stroke: PENCIL, width: 1.3, dash: [6, 4] });
      return;
    }
    const area = box(c.left, c.top, c.right - c.left, c.tip - c.top);
    paintWater(pen, area, levelY, s.water);
    const { colour } = waterColour(s.water);
    blanket(pen, layout, s.sludge_m);
    if (s.scum_m !== null && s.scum_m > 0) {
      rect(pen, box(c.left, levelY - 2, c.right - c.left, Math.max(2, s.scum_m * layout.perMetre)), 1, {
        fill: '#6b5637',
        stroke: INK,
        width: 0.8,
      });
    }
    hatch(pen, box(c.right - 14, levelY + 2, 14, c.tip - levelY), 5, -30, {
      stroke: mix(colour, '#2b2a26', 0.5),
      width: 0.6,
      alpha: 0.35,
    });
  });
  lined(pen, walls(layout), { width: 3.4 }, { stroke: '#cdc7b8', width: 1.2 });
  // Settled flocs slide back into the chamber through the slot.
  const arrows = `M${c.slot[0] + 2} ${c.tip + 2}q-9 13-25 13l5-4m-5 4l5 4M${c.slot[1] - 2} ${c.tip + 2}q9 13 22 13l-5-4m5 4l-5 4`;
  draw(pen, arrows, { stroke: '#3b2613', width: 1.5 });
}
