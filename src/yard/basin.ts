/** What all tanks have in common: concrete in section, neck and lid, water with its surface, scum, sludge, cores. */

import type { WaterLook } from '../scene/types.ts';
import { noise } from './hash.ts';
import {
  ACTION,
  CARD,
  glaze,
  INK,
  LID,
  mix,
  PAPER,
  PENCIL,
  PENCIL_WALL,
  SCUM,
  SHELL,
  SLUDGE,
  WALL,
  waterColour,
} from './ink.ts';
import type { Tank } from './layout.ts';
import { newPath } from './path.ts';
import { type Box, box, disc, draw, fade, type Pen, pencilHatch, rect, stipple, within, write } from './pen.ts';

export function paintShellPencil(pen: Pen, t: Tank, lid = LID): void {
  rect(pen, t.shell, 6, { fill: PENCIL_WALL, stroke: PENCIL, width: 1.5 });
  rect(pen, t.inside, 0, { fill: PAPER, stroke: PENCIL, width: 1.2 });
  rect(pen, t.neck, 0, { fill: PAPER, stroke: PENCIL, width: 1.4 });
  rect(pen, t.lid, 3, { fill: lid, stroke: INK, width: 1.6 });
  lidRib(pen, t.lid);
}

export function paintShellInk(pen: Pen, t: Tank, seed: number, open: boolean, lid = LID): void {
  rect(pen, t.shell, 6, { fill: WALL });
  within(pen, rounded(t.shell, 6), () => {
    stipple(pen, t.shell, seed, 22);
    const shade = pen.createLinearGradient(t.shell.x, 0, t.shell.x + t.shell.width, 0);
    shade.addColorStop(0, 'rgba(43,42,38,0.02)');
    shade.addColorStop(1, 'rgba(43,42,38,0.14)');
    pen.fillStyle = shade;
    pen.fillRect(t.shell.x, t.shell.y, t.shell.width, t.shell.height);
  });
  rect(pen, t.shell, 6, { stroke: INK, width: 1.8 });
  rect(pen, t.inside, 0, { fill: SHELL });
  within(pen, t.inside, () => {
    const b = t.inside;
    pen.fillStyle = fade(pen, b.y, b.y + 30, [
      [0, 'rgba(107,85,55,0.26)'],
      [1, 'rgba(107,85,55,0)'],
    ]);
    pen.fillRect(b.x, b.y, b.width, 30);
    const p = newPath();
    for (let x = b.x - 40; x < b.x + b.width; x += 5) {
      p.moveTo(x, b.y);
      p.lineTo(x + 12, b.y + 8);
    }
    draw(pen, p, { stroke: '#8e774f', width: 0.6, alpha: 0.5 });
  });
  rect(pen, t.inside, 0, { stroke: INK, width: 1.2 });
  neck(pen, t, open);
  if (open) openLid(pen, t.lid, lid);
  else {
    rect(pen, t.lid, 3, { fill: lid, stroke: INK, width: 1.6 });
    lidRib(pen, t.lid);
  }
}

/** The neck is open down to the tank: its walls end in the slab, its well runs through. */
function neck(pen: Pen, t: Tank, open: boolean): void {
  const { x, y, width } = t.neck;
  const foot = t.inside.y + 1.2;
  rect(pen, t.neck, 0, { fill: '#ddd3b8' });
  const well = box(x + 5, y, width - 10, foot - y);
  rect(pen, well, 0, {
    fill: fade(pen, y, foot + 6, [
      [0, open ? '#efe7d2' : '#c5b695'],
      [1, open ? '#efe7d2' : '#dccfb0'],
    ]),
  });
  pen.fillStyle = 'rgba(107,85,55,0.12)';
  pen.fillRect(well.x + well.width * 0.7, well.y, well.width * 0.3, well.height);
  const line = `M${x} ${y}V${t.shell.y}M${x + width} ${y}V${t.shell.y}`;
  draw(pen, line, { width: 1.7 });
  draw(pen, `M${well.x} ${y}V${foot - 1}M${well.x + well.width} ${y}V${foot - 1}`, { width: 1.1 });
}

function rounded(b: Box, radius: number): Path2D {
  const p = newPath();
  p.roundRect(b.x, b.y, b.width, b.height, radius);
  return p;
}

function lidRib(pen: Pen, b: Box): void {
  draw(pen, `M${b.x + 5} ${b.y + 3}h${b.width - 10}`, { stroke: CARD, width: 1, alpha: 0.5 });
  draw(pen, `M${b.x + 8} ${b.y + 6.4}h${b.width - 16}`, { width: 0.8, alpha: 0.45 });
}

/** A lid that was taken off leans on its neck, on the lawn side. */
function openLid(pen: Pen, b: Box, colour: string): void {
  pen.save();
  pen.translate(b.x + b.width + 5, 2);
  pen.rotate(-1.18);
  const lid = box(0, -4, b.width * 0.62, 9);
  rect(pen, lid, 3, { fill: colour, stroke: INK, width: 1.6 });
  lidRib(pen, lid);
  pen.restore();
  draw(pen, `M${b.x + 4} ${b.y + 7}h${b.width - 8}`, { width: 2.4 });
}

/** A generic section: a dashed water line where such a tank stands, hatched below. It takes no state at all. */
export function paintContentPencil(pen: Pen, area: Box, waterY: number): void {
  const below = box(area.x, waterY, area.width, area.y + area.height - waterY);
  pencilHatch(pen, below);
  draw(pen, ripple(area.x, area.x + area.width, waterY, 3), { stroke: PENCIL, width: 1.3, dash: [6, 4] });
}

/** A gentle wave along the surface. */
export function ripple(x0: number, x1: number, y: number, high: number): Path2D {
  const p = newPath();
  const n = Math.max(2, Math.round((x1 - x0) / 44));
  const step = (x1 - x0) / n;
  p.moveTo(x0, y);
  for (let i = 0; i < n; i++) {
    p.quadraticCurveTo(x0 + step * (i + 0.5), y + (i % 2 === 0 ? -high : high) * 0.8, x0 + step * (i + 1), y);
  }
  return p;
}

/** Fills an area from the surface down with water of a quality; unknown quality stays paper with a level line. */
export function paintWater(pen: Pen, area: Box, surfaceY: number, look: WaterLook | null): void {
  const bottom = area.y + area.height;
  const top = Math.max(area.y - 60, Math.min(surfaceY, bottom));
  const below = box(area.x, top, area.width, bottom - top);
  if (look === null) {
    pencilHatch(pen, below);
    draw(pen, ripple(area.x, area.x + area.width, top, 2.4), { stroke: ACTION, width: 1.6 });
    return;
  }
  const { colour, cover } = waterColour(look);
  const p = ripple(area.x, area.x + area.width, top, 2);
  p.lineTo(area.x + area.width, bottom);
  p.lineTo(area.x, bottom);
  p.closePath();
  pen.save();
  pen.globalAlpha = cover;
  draw(pen, p, {
    fill: fade(pen, top, bottom, [
      [0, mix(colour, '#ffffff', 0.16)],
      [0.14, mix(colour, '#ffffff', 0.06)],
      [1, mix(colour, '#2b2a26', 0.13)],
    ]),
  });
  pen.restore();
  within(pen, p, () => {
    flecks(pen, below, look);
    glints(pen, below);
  });
  draw(pen, ripple(area.x, area.x + area.width, top, 2), { stroke: mix(colour, '#2b2a26', 0.45), width: 1.2 });
  draw(pen, ripple(area.x + 4, area.x + area.width - 4, top + 2.6, 2), { stroke: '#ffffff', width: 0.9, alpha: 0.5 });
}

/** A tank that backs up fills its neck: the water that stands above the ceiling, and its scum with it. */
export function paintNeckWater(
  pen: Pen,
  neck: Box,
  ceilingY: number,
  surfaceY: number,
  look: WaterLook | null,
  scum: number,
): void {
  if (surfaceY >= ceilingY - 0.5) return;
  const well = box(neck.x + 5, neck.y, neck.width - 10, ceilingY - neck.y + 2);
  within(pen, well, () => {
    const top = Math.max(surfaceY, neck.y + 3);
    paintWater(pen, well, top, look);
    paintScum(pen, well, top, Math.min(scum, 14));
  });
}

/** Flocs in number after the solids. */
function flecks(pen: Pen, b: Box, look: WaterLook): void {
  const share = look.solids_mgL / (look.solids_mgL + 900);
  const n = Math.round((b.width * b.height * (share + look.raw * 0.4)) / 190);
  const r = noise(Math.round(b.x) + 17);
  const p = newPath();
  for (let i = 0; i < n; i++) {
    const x = b.x + r() * b.width;
    const y = b.y + 4 + r() * Math.max(1, b.height - 6);
    const s = 0.5 + r() * 1.1;
    p.moveTo(x + s, y);
    p.arc(x, y, s, 0, 6.2832);
  }
  draw(pen, p, { fill: '#3b2d1a', alpha: 0.26 });
}

function glints(pen: Pen, b: Box): void {
  const r = noise(Math.round(b.x) + 99);
  const p = newPath();
  for (let i = 0; i < (b.width * b.height) / 2400; i++) {
    const x = b.x + 8 + r() * (b.width - 30);
    const y = b.y + 10 + r() * Math.max(1, b.height - 14);
    const w = 6 + r() * 12;
    p.moveTo(x, y);
    p.quadraticCurveTo(x + w * 0.25, y - 2, x + w * 0.5, y);
    p.quadraticCurveTo(x + w * 0.75, y + 2, x + w, y);
  }
  draw(pen, p, { stroke: '#ffffff', width: 0.9, alpha: 0.28 });
}

/** Floating scum, thickness true to scale, half a hand above the water. */
export function paintScum(pen: Pen, area: Box, surfaceY: number, thick: number): void {
  if (thick < 1) return;
  const top = surfaceY - Math.min(6, thick * 0.18);
  const p = ripple(area.x, area.x + area.width, top, 3);
  const lower = top + thick;
  p.lineTo(area.x + area.width, lower);
  const n = Math.max(2, Math.round(area.width / 44));
  const step = area.width / n;
  for (let i = 0; i < n; i++) {
    p.quadraticCurveTo(
      area.x + area.width - step * (i + 0.5),
      lower + (i % 2 ? -3 : 4),
      area.x + area.width - step * (i + 1),
      lower,
    );
  }
  p.closePath();
  draw(pen, p, { fill: SCUM, stroke: '#3f3120', width: 1.1 });
  within(pen, p, () => {
    const w = newPath();
    for (let y = top + 4; y < lower; y += 7)
      w.addPath(newPath(`M${area.x} ${y}${'q4-4 8 0t8 0'.repeat(Math.ceil(area.width / 16))}`));
    draw(pen, w, { stroke: '#8d754c', width: 1.3 });
    const r = noise(53);
    for (let i = 0; i < area.width / 9; i++) {
      disc(pen, area.x + r() * area.width, top + r() * thick, 0.8 + r() * 1.4, { fill: '#b39a66', alpha: 0.7 });
    }
  });
}

/** Settled sludge, its mean thickness true to scale. */
export function paintSludge(pen: Pen, area: Box, thick: number, hump = 0.12): void {
  if (thick < 0.8) return;
  const bottom = area.y + area.height;
  const h = Math.min(thick, area.height);
  const x1 = area.x + area.width;
  const p = newPath(
    `M${area.x} ${bottom - h * (1 + hump)}C${area.x + area.width * 0.3} ${bottom - h * (1 + hump)} ${area.x + area.width * 0.36} ${bottom - h * (1 - hump)} ${area.x + area.width * 0.58} ${bottom - h * (1 - hump)}S${x1 - 14} ${bottom - h * (1 + hump)} ${x1} ${bottom - h * (1 + hump * 0.6)}V${bottom}H${area.x}Z`,
  );
  draw(pen, p, { fill: SLUDGE, stroke: '#2d2418', width: 1.1 });
  within(pen, p, () => {
    const r = noise(Math.round(area.x) + 7);
    const a = newPath();
    const b = newPath();
    for (let i = 0; i < (area.width * h) / 46; i++) {
      const x = area.x + r() * area.width;
      const y = bottom - r() * h * 1.1;
      const s = 0.7 + r() * 1.4;
      const q = r() < 0.5 ? a : b;
      q.moveTo(x + s, y);
      q.arc(x, y, s, 0, 6.2832);
    }
    draw(pen, a, { fill: '#655038' });
    draw(pen, b, { fill: '#33281a' });
  });
}

/** Where the clear tube went down and how much it brought up. */
export function paintCores(
  pen: Pen,
  area: Box,
  cores: readonly { readonly across: number; readonly sludge_m: number }[],
  perMetre: number,
): void {
  const bottom = area.y + area.height;
  for (const [i, core] of cores.entries()) {
    const x = area.x + 8 + core.across * (area.width - 16);
    const h = core.sludge_m * perMetre;
    rect(pen, box(x - 4, bottom - Math.max(h, 2) - 26, 8, Math.max(h, 2) + 26), 1, {
      fill: glaze(CARD, 0.65),
      stroke: INK,
      width: 1.1,
    });
    rect(pen, box(x - 4, bottom - h, 8, h), 0, { fill: SLUDGE, stroke: INK, width: 1 });
    draw(pen, `M${x - 8} ${bottom - h}h16`, { stroke: CARD, width: 1.6 });
    disc(pen, x, bottom - h - 32, 7, { fill: ACTION, stroke: CARD, width: 1 });
    write(pen, String(i + 1), x, bottom - h - 28.5, { size: 10, weight: 700, colour: CARD, align: 'center' });
  }
}
