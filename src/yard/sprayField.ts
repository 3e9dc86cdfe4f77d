/** The purple risers of the spray heads and the line that feeds them. */
import type { FieldScene } from '../scene/types.ts';
import { CARD, INK, PAPER, PENCIL, PURPLE } from './ink.ts';
import type { Layout } from './layout.ts';
import { newPath } from './path.ts';
import { box, draw, lined, type Pen, pipe, rect } from './pen.ts';

export const HEAD_UP = 20;

/** How far the heads are up, 0 to 1, at a pressure: they rise on the first tenth of what they are made for. */
export function headsUp(pressure_kPa: number, { designPressure_kPa }: FieldScene): number {
  return Math.min(1, Math.max(0, pressure_kPa / (designPressure_kPa * 0.1)));
}

function headPath(layout: Layout): string {
  return `M${layout.discFilter.x + layout.discFilter.width - 3} 22H1900`;
}

export function paintFieldPencil(pen: Pen, layout: Layout): void {
  pipe(pen, headPath(layout), 10, { line: PENCIL, wall: PAPER });
  for (const x of layout.heads) {
    draw(pen, `M${x} 18V-10`, { stroke: PENCIL, width: 7, cap: 'butt' });
    draw(pen, `M${x} 18V-9`, { stroke: PAPER, width: 4.6, cap: 'butt' });
  }
}

/** `up` is how far the heads have risen, 0 to 1. */
export function paintFieldInk(pen: Pen, layout: Layout, up: number, wet: number): void {
  pipe(pen, headPath(layout), 10, { lining: '#cfc6b2' });
  if (wet > 0) puddles(pen, layout, wet);
  for (const x of layout.heads) {
    const top = -9 - HEAD_UP * up;
    lined(pen, `M${x} 18V${top + 6}`, { width: 8.6, cap: 'butt' }, { stroke: PURPLE, width: 5.6, cap: 'butt' });
    draw(pen, `M${x - 1.4} 17V${top + 7}`, { stroke: CARD, width: 1, alpha: 0.45, cap: 'butt' });
    rect(pen, box(x - 5.5, -8, 11, 9), 2, { fill: '#4b483f', stroke: INK, width: 1.2 });
    rect(pen, box(x - 4, top, 8, 8), 2, { fill: '#c98d3f', stroke: INK, width: 1.2 });
  }
}

function puddles(pen: Pen, layout: Layout, wet: number): void {
  for (const [i, x] of layout.heads.entries()) {
    const p = newPath();
    p.ellipse(x - 34 + (i % 2) * 60, 5, 14 + 34 * wet, 2 + 3 * wet, 0, 0, 6.2832);
    draw(pen, p, { fill: '#a4d0d2', stroke: '#4d7d90', width: 1, alpha: 0.35 + 0.55 * wet });
  }
}
