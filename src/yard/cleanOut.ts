/** The clean-out pair beside the house; one lid is spring-loaded and gives way before a fixture does. */
import { INK } from './ink.ts';
import type { Layout } from './layout.ts';
import { box, draw, type Pen, rect } from './pen.ts';

export function paintCleanOut(pen: Pen, layout: Layout, lifted: boolean): void {
  const y = layout.trash.inletY - 8;
  const top = layout.cleanOutLidY;
  for (const [i, x] of layout.cleanOuts.entries()) {
    draw(pen, `M${x} ${y}V${top + 2}`, { width: 13, cap: 'butt' });
    draw(pen, `M${x} ${y + 1}V${top + 2}`, { stroke: '#efe9da', width: 10, cap: 'butt' });
    draw(pen, `M${x + 2.5} ${y}V${top + 3}`, { stroke: '#cfc6b2', width: 2.5, cap: 'butt' });
    const up = i === 0 && lifted ? -9 : 0;
    rect(pen, box(x - 9, top - 6 + up, 18, 8), 2, { fill: '#c8b79a', stroke: INK, width: 1.4 });
    draw(pen, `M${x - 5} ${top - 2 + up}h10`, { stroke: '#8f7f62', width: 1 });
    if (i === 0) draw(pen, `M${x - 3} ${top + up - 6}v-4l6-2-6-2 6-2-6-2h6`, { width: 1.2 });
  }
}
