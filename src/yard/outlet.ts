/** The outlet on its stake beside the compressor, with the compressor's plug in it or on the ground. */
import type { OutletScene } from '../scene/types.ts';
import { ALARM, GOOD, INK, PAPER, PENCIL } from './ink.ts';
import type { Layout } from './layout.ts';
import { type Box, box, disc, draw, lined, type Pen, rect, shadowed } from './pen.ts';

/** All that is painted of it. */
export function outletArea({ outlet: b, compressor: c }: Layout): Box {
  return box(b.x - 8, b.y - 10, c.x - b.x + 20, 66);
}

function stake(pen: Pen, b: Box, line: string, wood: string): void {
  const x = b.x + b.width / 2;
  lined(
    pen,
    `M${x} 12V${b.y + b.height - 2}`,
    { stroke: line, width: 7, cap: 'butt' },
    { stroke: wood, width: 4.6, cap: 'butt' },
  );
}

/** From the housing's foot to the outlet, or to where the plug lies. */
function cordPath({ outlet: b, compressor: c }: Layout, plugged: boolean): string {
  const x = b.x + b.width / 2;
  return plugged
    ? `M${c.x} -7C${c.x - 12} 2 ${x + 12} 2 ${x + 7} ${b.y + b.height - 8}`
    : `M${c.x} -7C${c.x - 10} 2 ${c.x - 12} -1 ${c.x - 15} 0`;
}

export function paintOutletPencil(pen: Pen, layout: Layout, gfci: boolean): void {
  const b = layout.outlet;
  stake(pen, b, PENCIL, PAPER);
  rect(pen, b, 3, { fill: PAPER, stroke: PENCIL, width: 1.4 });
  if (gfci) {
    rect(pen, box(b.x + 5, b.y + 9, 7, 3), 0.8, { stroke: PENCIL, width: 0.9 });
    rect(pen, box(b.x + 5, b.y + 13.5, 7, 3), 0.8, { stroke: PENCIL, width: 0.9 });
  } else sockets(pen, b.x + 8.5, b.y + 8, PENCIL);
  draw(pen, cordPath(layout, true), { stroke: PENCIL, width: 1.3, dash: [3, 2.5] });
}

export function paintOutletInk(pen: Pen, layout: Layout, s: OutletScene): void {
  const b = layout.outlet;
  stake(pen, b, INK, '#7b5a38');
  shadowed(pen, () => rect(pen, b, 3, { fill: '#8f959a' }));
  rect(pen, b, 3, { width: 1.5 });
  // The weather cover stands open over what one looked at.
  draw(pen, `M${b.x + 1} ${b.y + 1}l-3 -6h${b.width + 4}l-3 6z`, { fill: '#b3b9bd', width: 1.2 });
  rect(pen, box(b.x + 3, b.y + 3, b.width - 6, b.height - 6), 1.6, { fill: '#f6f0e1', stroke: INK, width: 0.9 });
  if (s.gfci) buttons(pen, b, s.tripped === true);
  else sockets(pen, b.x + 8.5, b.y + 7.5, INK);
  const plugged = s.plugged === true;
  if (!plugged) sockets(pen, b.x + 8.5, b.y + b.height - 7, INK);
  const cord = cordPath(layout, plugged);
  lined(pen, cord, { stroke: INK, width: 3 }, { stroke: '#4b483f', width: 1.6 });
  if (plugged) rect(pen, box(b.x + 5, b.y + b.height - 10.5, 7, 7), 1.5, { fill: '#3a3730', stroke: INK, width: 0.9 });
  else loosePlug(pen, layout);
}

function sockets(pen: Pen, x: number, y: number, colour: string): void {
  draw(pen, `M${x - 1.8} ${y - 2}v3.200M${x + 1.8} ${y - 1.6}v2.6`, { stroke: colour, width: 1 });
  disc(pen, x, y + 2.9, 0.7, { fill: colour });
}

/** Test above, reset below. Tripped, the reset stands out with its shadow, the light is out and a red bar shows. */
function buttons(pen: Pen, b: Box, tripped: boolean): void {
  const x = b.x + 4.8;
  rect(pen, box(x, b.y + 4.5, 7.4, 3.2), 0.8, { fill: '#3f3c36', stroke: INK, width: 0.6 });
  if (tripped) {
    rect(pen, box(x + 0.6, b.y + 9.6, 7.4, 4.2), 0.8, { fill: '#8d8672' });
    rect(pen, box(x - 0.8, b.y + 8.6, 8.2, 4.2), 0.8, { fill: ALARM, stroke: INK, width: 0.7 });
    draw(pen, `M${x + 1.2} ${b.y + 10.7}h4.2`, { stroke: '#fffaf0', width: 1 });
  } else {
    rect(pen, box(x, b.y + 9, 7.4, 3.2), 0.8, { fill: '#d6d2c6', stroke: INK, width: 0.6 });
    disc(pen, b.x + b.width - 4.6, b.y + 15, 0.9, { fill: GOOD });
  }
}

/** Its prongs show that it is in nothing. */
function loosePlug(pen: Pen, { compressor: c }: Layout): void {
  const x = c.x - 15;
  rect(pen, box(x - 8, -4, 8, 7), 1.6, { fill: '#3a3730', stroke: INK, width: 1 });
  draw(pen, `M${x - 8} -2.2h-4M${x - 8} 1.2h-4`, { stroke: '#b9954f', width: 1.5, cap: 'butt' });
}
