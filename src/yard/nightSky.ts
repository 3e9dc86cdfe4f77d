/** The sky when it is not a fair day: night, stars, the moon in its phase, dawn and dusk, a covered sky. */
import type { SkyScene } from '../scene/types.ts';
import { around, ROUND } from './drift.ts';
import { noise } from './hash.ts';
import { mix } from './ink.ts';
import { newPath } from './path.ts';
import { type Box, disc, draw, fade, type Pen } from './pen.ts';
import { skyPoint } from './sky.ts';

/** `clear` is the share of the sky without cloud, which is where stars are seen. */
export function paintNightSky(pen: Pen, view: Box, clear: number): void {
  const top = Math.min(view.y, -200);
  pen.fillStyle = fade(pen, top, 0, [
    [0, '#10182a'],
    [0.6, '#22304a'],
    [1, '#43526c'],
  ]);
  pen.fillRect(view.x, view.y, view.width, -view.y + 4);
  const r = noise(77);
  for (let i = 0; i < 260; i++) {
    const x = -400 + r() * 2240;
    const y = -420 + r() * 370;
    const size = 0.35 + r() * r() * 1.2;
    const bright = 0.3 + 0.6 * r();
    if (r() > clear || y < view.y - 4) continue;
    disc(pen, x, y, size, { fill: '#f6f0e1', alpha: bright });
    if (size > 1.2)
      draw(pen, `M${x - 4} ${y}h8M${x} ${y - 4}v8`, { stroke: '#f6f0e1', width: 0.6, alpha: bright * 0.7 });
  }
}

/** Room that the moon takes with its halo. */
export const MOON_ROOM = 44;

/** The lit side looks where the sun is: to the right while it waxes (seen from the north). */
export function paintMoon(pen: Pen, x: number, y: number, age: number): void {
  const radius = 15;
  const g = pen.createRadialGradient(x, y, radius, x, y, MOON_ROOM);
  const lit = (1 - Math.cos(2 * Math.PI * age)) / 2;
  g.addColorStop(0, `rgba(243,230,191,${0.32 * lit})`);
  g.addColorStop(1, 'rgba(243,230,191,0)');
  pen.fillStyle = g;
  pen.fillRect(x - MOON_ROOM, y - MOON_ROOM, 2 * MOON_ROOM, 2 * MOON_ROOM);
  disc(pen, x, y, radius, { fill: '#39455c', alpha: 0.75 });
  const side = age < 0.5 ? 1 : -1;
  const bulge = Math.cos(2 * Math.PI * age) * radius;
  const face = newPath();
  for (let i = 0; i <= 24; i++) {
    const a = -Math.PI / 2 + (Math.PI * i) / 24;
    face.lineTo(x + side * Math.cos(a) * radius, y + Math.sin(a) * radius);
  }
  for (let i = 24; i >= 0; i--) {
    const a = -Math.PI / 2 + (Math.PI * i) / 24;
    face.lineTo(x + side * Math.cos(a) * bulge, y + Math.sin(a) * radius);
  }
  face.closePath();
  draw(pen, face, { fill: '#f3e6bf', stroke: '#c9b98a', width: 0.8 });
  if (lit > 0.5) {
    for (const [dx, dy, s] of [
      [-4, -4, 3],
      [5, 3, 2.2],
      [-2, 6, 1.8],
    ] as const)
      disc(pen, x + dx, y + dy, s, { fill: '#d9c896', alpha: 0.6 });
  }
}

/** How strongly dawn or dusk colours the sky: most with the sun on the horizon. */
export function glowOf({ sun, cloud }: SkyScene): number {
  return Math.max(0, 1 - Math.abs(sun.up + 0.02) / 0.24) * (1 - 0.75 * cloud);
}

/** The band over the horizon, reddest where the sun is. */
export function paintGlow(pen: Pen, view: Box, sky: SkyScene): void {
  pen.fillStyle = fade(pen, -170, -20, [
    [0, 'rgba(214,140,110,0)'],
    [0.55, 'rgba(230,150,104,0.42)'],
    [1, 'rgba(246,186,120,0.85)'],
  ]);
  pen.fillRect(view.x, -170, view.width, 176);
  const [x] = skyPoint(sky.sun);
  const g = pen.createRadialGradient(x, -40, 10, x, -40, 420);
  g.addColorStop(0, 'rgba(255,214,140,0.85)');
  g.addColorStop(0.3, 'rgba(244,150,92,0.45)');
  g.addColorStop(1, 'rgba(230,120,80,0)');
  pen.fillStyle = g;
  pen.fillRect(x - 420, -460, 840, 470);
}

interface Cover {
  readonly cover: number;
  readonly rain_mmh: number;
  readonly gone: number;
}

/** A lid of cloud: puffs with the hatching of an engraving, over as much of the sky as is covered, darker with rain, so far
 * on its way: it goes round beyond the edges of the plate. */
export function paintCover(pen: Pen, view: Box, { cover, rain_mmh, gone }: Cover): void {
  const r = noise(19);
  const dark = Math.min(1, rain_mmh / 8);
  const body = mix('#d3d6cf', '#7b8891', dark);
  const line = mix('#8f938d', '#46525e', dark);
  const light = mix('#f3f0e4', '#b9c3c8', dark);
  const top = Math.min(view.y, -210);
  const rows = 4;
  for (let row = 0; row < rows; row++) {
    const y0 = top + ((row + 0.2) / rows) * (-88 - top);
    const size = 62 - row * 8;
    const puffs = Math.round(ROUND / (size * 1.25));
    for (let i = 0; i < puffs; i++) {
      const x = around(-160 + row * 43 + (i * ROUND) / puffs + gone);
      const keep = r() < cover ** 0.7;
      const y = y0 + (r() - 0.5) * 26;
      const radius = size * (0.75 + 0.4 * r());
      if (keep) puff(pen, x + (r() - 0.5) * 20, y, radius, { body, line, light });
    }
  }
}

function puff(
  pen: Pen,
  x: number,
  y: number,
  radius: number,
  { body, line, light }: { readonly body: string; readonly line: string; readonly light: string },
): void {
  const p = newPath();
  p.ellipse(x, y, radius, radius * 0.62, 0, 0, 6.2832);
  draw(pen, p, {
    fill: fade(pen, y - radius * 0.6, y + radius * 0.6, [
      [0, light],
      [0.55, body],
      [1, mix(body, line, 0.35)],
    ]),
  });
  const arcs = newPath();
  for (const [k, from, to] of [
    [1, 3.3, 5.7],
    [0.8, 3.5, 5.2],
    [0.6, 3.6, 4.9],
    [0.42, 3.7, 4.8],
    [0.9, 0.4, 1.3],
    [0.7, 0.5, 1.5],
  ] as const) {
    arcs.moveTo(x + Math.cos(from) * radius * k, y + Math.sin(from) * radius * 0.62 * k);
    arcs.ellipse(x, y, radius * k, radius * 0.62 * k, 0, from, to);
  }
  draw(pen, arcs, { stroke: line, width: 1, alpha: 0.55 });
}
