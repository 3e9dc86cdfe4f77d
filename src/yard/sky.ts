/** Sky by day and by night, clouds, hills. The two skies lie over each other; daylight sets how much of which shows. */
import { noise } from './hash.ts';
import { type Box, disc, draw, fade, type Pen } from './pen.ts';

export function paintDaySky(pen: Pen, view: Box): void {
  pen.fillStyle = fade(pen, Math.min(view.y, -200), 0, [
    [0, '#d5e4e3'],
    [0.45, '#e3ece2'],
    [1, '#f7efd9'],
  ]);
  pen.fillRect(view.x, view.y, view.width, -view.y + 4);
}

export function paintNightSky(pen: Pen, view: Box): void {
  const top = Math.min(view.y, -200);
  pen.fillStyle = fade(pen, top, 0, [
    [0, '#141b2b'],
    [0.6, '#26324a'],
    [1, '#46536a'],
  ]);
  pen.fillRect(view.x, view.y, view.width, -view.y + 4);
  const r = noise(77);
  for (let i = 0; i < 150; i++) {
    const x = -400 + r() * 2240;
    const y = top + r() * (-60 - top);
    disc(pen, x, y, 0.4 + r() * 0.9, { fill: '#f6f0e1', alpha: 0.25 + 0.5 * r() });
  }
  disc(pen, 1130, -150, 17, { fill: '#f3e6bf' });
  disc(pen, 1137, -154, 15, { fill: '#1d2638' });
}

const CLOUD = 'M-62 14h124c14 0 18-20 2-23-4-16-26-18-33-7-9-17-38-14-41 6-14-8-30 0-27 12-20-4-33 9-25 12z';

/** A few clouds for a fair day, a lid of them for a covered one. */
export function paintClouds(pen: Pen, view: Box, cover: number): void {
  const r = noise(5);
  const n = Math.round(2 + Math.max(0, cover - 0.12) * 12);
  const fair: readonly (readonly [number, number, number])[] = [
    [372, -150, 0.72],
    [1080, -146, 1],
  ];
  for (let i = 0; i < n; i++) {
    const [x, y, k] = fair[i] ?? [-120 + r() * 1680, Math.max(view.y + 30, -190) + r() * 50, 0.9 + r() * 0.9];
    pen.save();
    pen.translate(x, y);
    pen.scale(k, k);
    draw(pen, CLOUD, {
      fill: cover > 0.6 ? '#d9dad2' : '#fbf7ea',
      stroke: cover > 0.6 ? '#a9aaa2' : '#c9c3ae',
      width: 1.2,
    });
    const hatchLines = new Path2D('M-50 8h26M-14 9h40M36 8h22M-30 3h18M8 4h24');
    draw(pen, hatchLines, { stroke: '#b9b39f', width: 0.9, alpha: 0.6 });
    pen.restore();
  }
}

/** Hills, a hedge of trees and a fence behind the lawn. */
export function paintHills(pen: Pen, view: Box): void {
  const left = Math.min(view.x, -200);
  const right = Math.max(view.x + view.width, 1640);
  draw(
    pen,
    `M${left} -34C-60 -40 20 -52 160 -58S330 -58 520 -70S900 -28 1100 -62S1350 -84 1440 -50S1620 -40 ${right} -44V2H${left}Z`,
    { fill: '#cfd8bb' },
  );
  draw(pen, `M${left} -22C0 -30 260 -46 420 -30S640 -30 780 -36S1200 -16 1440 -34S1600 -24 ${right} -26V2H${left}Z`, {
    fill: '#b7c795',
  });
  const r = noise(31);
  const strokes = new Path2D();
  for (let x = left; x < right; x += 17) {
    const y = -50 + r() * 22;
    strokes.moveTo(x, y);
    strokes.lineTo(x + 5 + r() * 9, y - 1.5 - r() * 2);
  }
  draw(pen, strokes, { stroke: '#8d9d72', width: 0.8, alpha: 0.6 });
  for (const [x, k] of [
    [300, 0.8],
    [426, 0.55],
    [742, 0.95],
    [1012, 0.62],
    [1472, 1],
    [-62, 0.9],
  ] as const) {
    tree(pen, x, k, Math.round(x));
  }
}

function tree(pen: Pen, x: number, k: number, seed: number): void {
  const r = noise(seed + 900);
  pen.save();
  pen.translate(x, -4);
  pen.scale(k, k);
  draw(pen, 'M-3 4l2-30h3l2 30zM0 -14l-9 -10M1 -12l8 -9', { fill: '#7b6145', stroke: '#5d4a34', width: 1 });
  draw(pen, 'M-20 -26c-12-4-12-20 0-22 0-12 16-18 22-8 12-4 22 6 16 16 8 8 0 18-10 15-8 7-20 6-28-1z', {
    fill: '#98ad72',
    stroke: '#5f6f45',
    width: 1.2,
  });
  const leaves = new Path2D();
  for (let i = 0; i < 26; i++) {
    const a = r() * 6.28;
    const d = Math.sqrt(r()) * 17;
    const cx = Math.cos(a) * d * 1.15;
    const cy = -39 + Math.sin(a) * d * 0.85;
    leaves.moveTo(cx - 2.4, cy);
    leaves.quadraticCurveTo(cx, cy + 2.6, cx + 2.4, cy);
  }
  draw(pen, leaves, { stroke: '#5f6f45', width: 0.9, alpha: 0.75 });
  pen.restore();
}
