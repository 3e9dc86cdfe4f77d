/** Disinfection riser: the reservoir that feeds chlorine, where there is one, and the contact water below it. */
import type { ChamberScene } from '../scene/types.ts';
import { paintWater, ripple } from './basin.ts';
import { INK, PAPER, PENCIL, SHELL } from './ink.ts';
import type { Layout } from './layout.ts';
import { box, draw, type Pen, pencilHatch, rect, within } from './pen.ts';

const CAP = '#c9b458';

export function paintRiserPencil(pen: Pen, layout: Layout): void {
  const t = layout.riser;
  rect(pen, t.shell, 0, { fill: PAPER, stroke: PENCIL, width: 1.5 });
  const y = t.outletY;
  pencilHatch(pen, box(t.shell.x, y, 34, t.shell.y + t.shell.height - y));
  draw(pen, ripple(t.shell.x, t.shell.x + 34, y, 2), { stroke: PENCIL, width: 1.2, dash: [5, 4] });
  if (layout.sleeve === null) rect(pen, box(t.shell.x + 5, 8, 24, 36), 2, { stroke: PENCIL, width: 1.2 });
  rect(pen, t.lid, 3, { fill: CAP, stroke: INK, width: 1.6 });
}

export function paintRiserInk(pen: Pen, layout: Layout, c: ChamberScene, levelY: number | null): void {
  const t = layout.riser;
  rect(pen, t.shell, 0, { fill: SHELL });
  within(pen, t.shell, () => {
    if (levelY !== null) paintWater(pen, box(t.shell.x, t.shell.y, 34, t.shell.height), levelY, c.water);
  });
  rect(pen, t.shell, 0, { width: 1.7 });
  draw(pen, `M${t.shell.x + 30} ${t.shell.y + 3}V${t.shell.y + t.shell.height - 3}`, {
    stroke: '#8e774f',
    width: 1,
    alpha: 0.5,
  });
  if (layout.sleeve === null) reservoir(pen, t.shell.x);
  const lid = c.lid === 'open' ? box(t.lid.x + 26, t.lid.y + 1, t.lid.width, t.lid.height) : t.lid;
  rect(pen, lid, 3, { fill: CAP, stroke: INK, width: 1.6 });
  draw(pen, `M${lid.x + 5} ${lid.y + 3}h${lid.width - 10}`, { stroke: '#fffaf0', width: 1, alpha: 0.6 });
}

function reservoir(pen: Pen, x: number): void {
  rect(pen, box(x + 5, 8, 24, 36), 2, { fill: '#e8edc4', stroke: INK, width: 1.2 });
  rect(pen, box(x + 6, 18, 22, 25), 1, { fill: '#d3dc8f' });
  draw(pen, `M${x + 6} 18h22M${x + 17} 44v9`, { stroke: '#7f8a3f', width: 1.2 });
  draw(pen, `M${x + 17} 55q-2.5 4 0 5.500q2.5 -1.5 0 -5.500z`, { fill: '#d3dc8f', stroke: INK, width: 0.8 });
}
