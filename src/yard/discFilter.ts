/** Disc filter in its box below the lawn. */

import type { DiscFilterScene } from '../scene/types.ts';
import { INK, mix, PAPER, PENCIL } from './ink.ts';
import type { Layout } from './layout.ts';
import { newPath } from './path.ts';
import { box, draw, type Pen, rect } from './pen.ts';

export function paintDiscFilterPencil(pen: Pen, layout: Layout): void {
  const b = layout.discFilter;
  rect(pen, b, 4, { fill: PAPER, stroke: PENCIL, width: 1.5 });
  draw(
    pen,
    `M${b.x + 12} ${b.y + 6}v20M${b.x + 20} ${b.y + 6}v20M${b.x + 28} ${b.y + 6}v20M${b.x + 36} ${b.y + 6}v20M${b.x + 44} ${b.y + 6}v20`,
    {
      stroke: PENCIL,
      width: 1,
      dash: [3, 3],
    },
  );
}

export function paintDiscFilterInk(pen: Pen, layout: Layout, f: DiscFilterScene): void {
  const b = layout.discFilter;
  rect(pen, b, 4, { fill: '#efe7d2', stroke: INK, width: 1.6 });
  const clean = f.flowShare ?? 1;
  const disc = mix('#5a4a33', '#4d7d90', clean);
  for (let i = 0; i < 8; i++) {
    const x = b.x + 11 + i * 4.9;
    draw(pen, `M${x} ${b.y + 5.5}v21`, { stroke: INK, width: 3.4, cap: 'butt' });
    draw(pen, `M${x} ${b.y + 6.5}v19`, { stroke: disc, width: 1.9, cap: 'butt' });
  }
  if (clean < 0.7) {
    // What was caught lies on the discs, more of it the less passes.
    const dirt = newPath();
    for (let i = 0; i < (1 - clean) * 34; i++) {
      const x = b.x + 9 + ((i * 37) % 38);
      const y = b.y + 8 + ((i * 53) % 17);
      dirt.moveTo(x + 1.6, y);
      dirt.arc(x, y, 1.6, 0, 6.2832);
    }
    draw(pen, dirt, { fill: '#3f3120' });
  }
  draw(pen, `M${b.x + 8} ${b.y + 29}h${b.width - 16}`, { stroke: '#8e774f', width: 1.1 });
  if (f.open) {
    pen.save();
    pen.translate(b.x + b.width - 6, -4);
    pen.rotate(-0.9);
    rect(pen, box(-2, -3, 44, 7), 3, { fill: '#6f8a6c', stroke: INK, width: 1.5 });
    pen.restore();
  } else rect(pen, box(b.x + 4, -2, b.width - 8, 7), 3, { fill: '#6f8a6c', stroke: INK, width: 1.5 });
}
