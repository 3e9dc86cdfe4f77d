/** Compressor in its housing and the air line with the tee to the panel's air switch. */

import type { CompressorScene } from '../scene/types.ts';
import { manifoldY } from './aeration.ts';
import { INK, mix, PAPER, PENCIL } from './ink.ts';
import type { Layout } from './layout.ts';
import { newPath } from './path.ts';
import { box, draw, hatch, type Pen, rect, stipple, within } from './pen.ts';

/** Where the sun-side elbow of the line is, which is where a leak is drawn. */
export function leakPoint(layout: Layout, where: 'line' | 'joint'): readonly [number, number] {
  const c = layout.compressor;
  return where === 'joint' ? [c.x + c.width + 8, c.y + 34] : [(layout.dropLines[1] ?? c.x) - 1, c.y + 37];
}

function airPath(layout: Layout): string {
  const c = layout.compressor;
  const x = layout.dropLines[1] ?? c.x;
  return `M${c.x + c.width} ${c.y + 34}H${x - 8}q8 0 8 8V${manifoldY(layout)}`;
}

function tubePath(layout: Layout): string {
  const c = layout.compressor;
  const p = layout.panel;
  return `M${c.x + c.width + 8} ${c.y + 34}H${p.x + 16}q7 0 7 -7V${p.y + p.height}`;
}

function line(pen: Pen, d: string, width: number, outer: string, inner: string): void {
  draw(pen, d, { stroke: outer, width: width + 2.6, cap: 'butt' });
  draw(pen, d, { stroke: inner, width, cap: 'butt' });
}

const body = (l: Layout) => {
  const { x, width } = l.compressor;
  return `M${x} 1V-34q0 -11 11 -11h${width - 22}q11 0 11 11V1z`;
};

export function paintAirPencil(pen: Pen, layout: Layout): void {
  line(pen, airPath(layout), 4, PENCIL, PAPER);
  line(pen, tubePath(layout), 2, PENCIL, PAPER);
  draw(pen, body(layout), { fill: PAPER, stroke: PENCIL, width: 1.6 });
  const c = layout.compressor;
  within(pen, newPath(body(layout)), () =>
    hatch(pen, box(c.x, -48, c.width, 50), 7, -38, { stroke: PENCIL, width: 0.7, alpha: 0.36 }),
  );
  draw(pen, `M${c.x + 10} -30h${c.width - 20}M${c.x + 10} -22h${c.width - 20}`, {
    stroke: PENCIL,
    width: 1.2,
    dash: [7, 4],
  });
}

export function paintAirInk(pen: Pen, layout: Layout, s: CompressorScene): void {
  line(pen, airPath(layout), 4.4, INK, '#e9dfc6');
  line(pen, tubePath(layout), 2.4, INK, '#cfe0de');
  const c = layout.compressor;
  // The tee, and the elbow that stands in the sun.
  rect(pen, box(c.x + c.width + 3, c.y + 29, 9, 10), 2, { fill: '#c99a55', stroke: INK, width: 1.3 });
  const p = newPath(body(layout));
  draw(pen, p, { fill: '#d6d2c6' });
  within(pen, p, () => {
    stipple(pen, box(c.x, c.y, c.width, c.height), 66, 30);
    if (s.housing === 'open') innards(pen, layout, s);
    else hatch(pen, box(c.x + c.width - 18, c.y, 22, 52), 4, -14, { stroke: '#6f6a5e', width: 0.7, alpha: 0.6 });
  });
  draw(pen, p, { width: 1.9 });
  if (s.housing === 'closed') {
    draw(pen, `M${c.x + 10} -31h${c.width - 22}M${c.x + 10} -23h${c.width - 22}M${c.x + 10} -15h${c.width - 22}`, {
      width: 1.6,
      dash: [8, 4],
      cap: 'butt',
    });
    draw(pen, `M${c.x + 8} -40q6 -3 20 -3`, { stroke: '#ffffff', width: 1.4, alpha: 0.7 });
  } else {
    pen.save();
    pen.translate(c.x - 3, -3);
    pen.rotate(-1.9);
    draw(pen, 'M0 0v-8q0-6 6-6h40q6 0 6 6v8z', { fill: '#c9c5b8', width: 1.6 });
    pen.restore();
  }
  draw(pen, `M${c.x - 3} 2h${c.width + 6}`, { stroke: '#8f8b80', width: 4, cap: 'butt' });
}

/** Motor, two chambers with their diaphragms, intake filter. */
function innards(pen: Pen, layout: Layout, s: CompressorScene): void {
  const { x } = layout.compressor;
  rect(pen, box(x + 4, -42, 66, 42), 4, { fill: '#4b4b45' });
  rect(pen, box(x + 20, -31, 32, 26), 4, { fill: '#4f7f96', stroke: INK, width: 1.3 });
  draw(pen, `M${x + 25} -30v24M${x + 30} -30v24M${x + 35} -30v24M${x + 40} -30v24M${x + 46} -30v24`, {
    stroke: '#2f5266',
    width: 1.4,
  });
  for (const at of [x + 8, x + 53]) {
    rect(pen, box(at, -27, 11, 18), 3, { fill: s.rattle ? '#b9704f' : '#a8a294', stroke: INK, width: 1.2 });
    if (s.rattle) draw(pen, `M${at + 2} -24l5 5-4 4 5 5`, { stroke: '#5d1f12', width: 1.3 });
  }
  const dirt = s.intakeDirt ?? 0;
  rect(pen, box(x + 24, -40, 24, 8), 2, { fill: mix('#dfe6c8', '#5b4a33', dirt), stroke: INK, width: 1.1 });
  draw(pen, `M${x + 29} -39v6M${x + 34} -39v6M${x + 39} -39v6M${x + 44} -39v6`, {
    stroke: mix('#8d9d72', '#33281a', dirt),
    width: 1,
  });
}
