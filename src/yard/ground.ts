/** Lawn, roots, strata with pebbles: everything in the ground, which changes with the season only. */

import { noise } from './hash.ts';
import { newPath } from './path.ts';
import { type Box, draw, fade, grass, type Pen } from './pen.ts';
import type { Season } from './season.ts';

export function paintGround(pen: Pen, view: Box, perMetre: number, season: Season): void {
  const left = view.x - 4;
  const right = view.x + view.width + 4;
  const bottom = view.y + view.height + 4;
  if (bottom < 0) return;
  const deep = Math.max(bottom, 3 * perMetre);
  const first = 0.25 * perMetre;
  const second = 1.12 * perMetre;
  const third = 2.12 * perMetre;
  pen.fillStyle = fade(pen, 0, third * 1.35, [
    [0, '#5f4429'],
    [0.05, '#7b5935'],
    [0.078, '#8d6840'],
    [0.09, '#b98f5b'],
    [0.36, '#c39a66'],
    [0.4, '#a97d4d'],
    [0.7, '#9b7145'],
    [0.755, '#81603e'],
    [1, '#735437'],
  ]);
  pen.fillRect(left, 0, right - left, deep);
  strata(pen, left, right, [first, second, third]);
  pebbles(pen, left, right, perMetre, deep);
  roots(pen, left, right);
  lawn(pen, left, right, season);
  season.over?.(pen, left, right, perMetre);
}

/** Where topsoil, subsoil and stony ground meet. */
function strata(pen: Pen, left: number, right: number, tops: readonly [number, number, number]): void {
  const wave = (y: number, seed: number) => {
    const r = noise(seed);
    let d = `M-600 ${y}`;
    for (let x = -600; x < 2200; x += 140) d += `q70 ${(r() - 0.5) * 22} 140 ${(r() - 0.5) * 5}`;
    return d;
  };
  pen.save();
  pen.beginPath();
  pen.rect(left, 0, right - left, 4000);
  pen.clip();
  for (const [y, seed, colour] of [
    [tops[0], 2, '#54391f'],
    [tops[1], 3, '#6d4f31'],
    [tops[2], 4, '#5a4129'],
  ] as const) {
    draw(pen, wave(y, seed), { stroke: colour, width: 1.4, alpha: 0.65 });
    draw(pen, wave(y + 5, seed + 20), { stroke: colour, width: 0.9, alpha: 0.4, dash: [14, 9, 3, 8] });
    draw(pen, wave(y - 6, seed + 40), { stroke: '#d8b483', width: 0.9, alpha: 0.35, dash: [20, 14] });
  }
  pen.restore();
}

/** Stones thicken with depth: grains and clods above, cobbles with a lit edge below. */
function pebbles(pen: Pen, left: number, right: number, perMetre: number, bottom: number): void {
  const r = noise(11);
  const dark = newPath();
  const light = newPath();
  const grains = newPath();
  const clods = newPath();
  const from = Math.floor(left / 60) * 60;
  for (let column = from; column < right; column += 60) {
    const c = noise(Math.round(column / 60) + 5000);
    for (let y = 18; y < bottom; y += 17) {
      const px = column + c() * 60;
      const py = y + c() * 15;
      const size = 1.2 + c() * 2.6 + (py / perMetre) * 0.7;
      const p = c() < 0.52 ? dark : light;
      p.moveTo(px + size * 1.5, py);
      p.ellipse(px, py, size * 1.5, size, (c() - 0.5) * 0.7, 0, 6.2832);
      for (let g = 0; g < 5; g++) {
        const gx = column + c() * 60;
        const gy = y + c() * 17;
        grains.moveTo(gx, gy);
        grains.lineTo(gx + 0.9, gy + 0.5);
      }
      if (c() < 0.3) {
        const cx = column + c() * 60;
        clods.moveTo(cx, py);
        clods.lineTo(cx + 6 + c() * 10, py - 3 - c() * 4);
        clods.moveTo(cx + 3, py + 3);
        clods.lineTo(cx + 9 + c() * 8, py - 0.5);
      }
    }
  }
  draw(pen, grains, { stroke: '#5a4129', width: 0.9, alpha: 0.4 });
  draw(pen, clods, { stroke: '#6d4f31', width: 0.8, alpha: 0.34 });
  draw(pen, dark, { fill: '#7c5a38', alpha: 0.5, stroke: '#5a4129', width: 0.5 });
  draw(pen, light, { fill: '#d8b483', alpha: 0.42 });
  for (let i = 0; i < 46; i++) {
    const x = -300 + r() * 2100;
    const y = 1.3 * perMetre + Math.sqrt(r()) * (bottom - 1.2 * perMetre);
    if (x < left - 20 || x > right + 20) continue;
    cobble(pen, x, y, 5 + r() * 8, r() * 3);
  }
}

function cobble(pen: Pen, x: number, y: number, size: number, turn: number): void {
  const p = newPath();
  p.ellipse(x, y, size, size * 0.66, Math.sin(turn) * 0.5, 0, 6.2832);
  draw(pen, p, { fill: '#a08f78', stroke: '#4d3a26', width: 1, alpha: 0.85 });
  const lit = newPath();
  lit.ellipse(x - size * 0.1, y - size * 0.14, size * 0.62, size * 0.34, Math.sin(turn) * 0.5, 3.4, 5.4);
  draw(pen, lit, { stroke: '#f3e3c4', width: 1.1, alpha: 0.7 });
}

function roots(pen: Pen, left: number, right: number): void {
  const r = noise(8);
  const p = newPath();
  for (let x = -300; x < 1760; x += 26 + r() * 60) {
    const deep = 12 + r() * 34;
    const bend = (r() - 0.5) * 18;
    if (x < left || x > right) continue;
    p.moveTo(x, 8);
    p.bezierCurveTo(x + bend, 8 + deep * 0.3, x - bend, 8 + deep * 0.7, x + bend * 0.4, 8 + deep);
    p.moveTo(x + bend * 0.3, 8 + deep * 0.45);
    p.quadraticCurveTo(x + bend * 0.6 + 5, 8 + deep * 0.6, x + bend * 0.5 + 8, 8 + deep * 0.85);
  }
  draw(pen, p, { stroke: '#e0c597', width: 0.9, alpha: 0.6 });
}

function lawn(pen: Pen, left: number, right: number, { lawn: turf, blades }: Season): void {
  draw(pen, `M${left} -3H${right}V9H${left}Z`, { fill: turf });
  draw(pen, `M${left} 8.6H${right}`, { stroke: blades[1], width: 1.2, alpha: 0.8 });
  const from = Math.floor(left / 40) * 40;
  const back = newPath();
  const front = newPath();
  const under = newPath();
  for (let x = from; x < right; x += 40) {
    const seed = Math.round(x / 40) + 3000;
    back.addPath(grass(x, x + 40, 0, seed, 15, 4.2));
    front.addPath(grass(x, x + 40, 4, seed + 999, 10, 3.4));
    under.addPath(grass(x, x + 40, 9, seed + 1999, 6, 5));
  }
  draw(pen, back, { stroke: blades[0], width: 1.2 });
  draw(pen, front, { stroke: blades[1], width: 1, alpha: 0.85 });
  draw(pen, under, { stroke: blades[2], width: 1 });
}
