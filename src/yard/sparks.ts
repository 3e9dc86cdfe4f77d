/** The small textures that many sprites share: a bubble, a drop, a glow, a ring. Painted on canvases of their own. */
import { CanvasSource, Texture } from 'pixi.js';
import { disc, draw, type Pen } from './pen.ts';

function sheet(size: number, paint: (pen: Pen) => void): Texture {
  const canvas = document.createElement('canvas');
  canvas.width = size;
  canvas.height = size;
  const pen = canvas.getContext('2d');
  if (pen !== null) paint(pen);
  return new Texture({ source: new CanvasSource({ resource: canvas }) });
}

export interface Sparks {
  readonly bubble: Texture;
  readonly drop: Texture;
  readonly bead: Texture;
  readonly glow: Texture;
  readonly ring: Texture;
  /** A clump of sludge. */
  readonly floc: Texture;
}

export function makeSparks(): Sparks {
  return {
    bubble: sheet(40, (pen) => {
      disc(pen, 20, 20, 16, { fill: 'rgba(255,250,240,0.5)', stroke: 'rgba(255,250,240,0.95)', width: 3 });
      draw(pen, 'M11 17q2-7 8-8', { stroke: '#ffffff', width: 3.5 });
    }),
    drop: sheet(48, (pen) => {
      draw(pen, 'M8 24h30', { stroke: 'rgba(43,42,38,0.35)', width: 12 });
      draw(pen, 'M10 24h26', { stroke: '#e6f4f4', width: 8 });
    }),
    bead: sheet(32, (pen) => {
      disc(pen, 16, 16, 11, { fill: '#f1fbfb', stroke: 'rgba(77,125,144,0.75)', width: 3 });
    }),
    glow: sheet(256, (pen) => {
      const g = pen.createRadialGradient(128, 128, 4, 128, 128, 128);
      g.addColorStop(0, 'rgba(255,150,96,0.75)');
      g.addColorStop(0.25, 'rgba(240,96,60,0.36)');
      g.addColorStop(1, 'rgba(240,96,60,0)');
      pen.fillStyle = g;
      pen.fillRect(0, 0, 256, 256);
    }),
    floc: sheet(32, (pen) => {
      for (const [x, y, size] of [
        [14, 14, 8],
        [21, 18, 6],
        [10, 20, 5],
      ] as const) {
        disc(pen, x, y, size, { fill: 'rgba(95,64,32,0.86)' });
      }
      disc(pen, 13, 11, 3, { fill: 'rgba(165,121,63,0.8)' });
    }),
    ring: sheet(128, (pen) => {
      disc(pen, 64, 64, 56, { stroke: '#c9402a', width: 5 });
    }),
  };
}
