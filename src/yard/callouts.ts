/** Numbers and names of the parts, with a leader to what they name. Always the same size on the screen. */
import type { PartId } from '../scene/types.ts';
import type { Message } from '../service/message.ts';
import { INK, PAPER } from './ink.ts';
import { NUMBERED, partName } from './labels.ts';
import { type Layout, PLATE_TOP, type Tank } from './layout.ts';
import { type Box, box, disc, draw, type Pen, textWidth, write } from './pen.ts';

interface Callout {
  readonly from: readonly [number, number];
  readonly at: readonly [number, number];
}

function callouts(layout: Layout, size: number, narrow: boolean): Partial<Record<PartId, Callout>> {
  // On a phone the floor is off the screen: the names stand in the water instead.
  const below = (t: Tank) => (narrow ? layout.perMetre * 1.42 : t.shell.y + t.shell.height + size * 1.5);
  const air = below(layout.aeration);
  const { trash, pump, clarifier: c, riser, discFilter: d, heads } = layout;
  const right = heads[heads.length - 1] ?? d.x + 120;
  const firstDrop = ((layout.dropLines[0] ?? 0) + (layout.dropLines[1] ?? 0)) / 2;
  const middle = (c.left + c.right) / 2;
  return {
    'trash-tank': at(
      trash.inside.x + trash.inside.width * 0.4,
      below(trash) - 66,
      trash.inside.x + trash.inside.width * 0.4 - size * 2.6,
      below(trash),
    ),
    aeration: at(firstDrop, air - 84, layout.aeration.inside.x + size, air),
    clarifier: at(middle, air - 84, middle + size * (narrow ? -1.8 : 1.2), air),
    disinfection: at(
      riser.shell.x + 17,
      riser.shell.y + riser.shell.height - 18,
      riser.shell.x - size * 2.1,
      riser.shell.y + riser.shell.height + 58,
    ),
    'pump-tank': at(
      pump.inside.x + pump.inside.width * 0.53,
      pump.inside.y + pump.inside.height * 0.72,
      pump.inside.x + size * 1.6,
      // The deepest tank: its name stands in it, so that it is never cut off below.
      narrow ? below(pump) : pump.inside.y + pump.inside.height - size * 1.4,
    ),
    'disc-filter': at(d.x + 28, d.y + 34, d.x + 18, d.y + 86),
    'spray-field': at(right, 16, right - size * 5.6, d.y + 86),
  };
}

function at(fx: number, fy: number, x: number, y: number): Callout {
  return { from: [fx, fy], at: [x, y] };
}

/** Parts whose name stands in them on a phone, so that they need no leader. */
const IN_WATER: readonly PartId[] = ['trash-tank', 'aeration', 'clarifier', 'pump-tank'];

function leader(pen: Pen, fx: number, fy: number, x: number, y: number, size: number): void {
  draw(pen, `M${fx} ${fy}L${x} ${y}`, { width: size * 0.2, stroke: PAPER, alpha: 0.75 });
  draw(pen, `M${fx} ${fy}L${x} ${y}`, { width: size * 0.09 });
  disc(pen, fx, fy, size * 0.24, { fill: INK, stroke: PAPER, width: size * 0.06 });
}

/** `size` is the type size in units of the plate. */
export function paintCallouts(
  pen: Pen,
  layout: Layout,
  size: number,
  text: (m: Message) => string,
  narrow: boolean,
): void {
  const all = callouts(layout, size, narrow);
  /** Where the last name in a row ends: the next one keeps clear of it, in any language and at any size. */
  let row = { y: Number.NaN, end: 0 };
  for (const [i, part] of NUMBERED.entries()) {
    const c = all[part];
    if (c === undefined) continue;
    const [fx, fy] = c.from;
    const [, y] = c.at;
    const clear = Math.abs(y - row.y) < size ? row.end + size * 1.4 : Number.NEGATIVE_INFINITY;
    const x = narrow ? c.at[0] : Math.max(c.at[0], clear);
    row = { y, end: x + size * 1.25 + textWidth(pen, text(partName(part)), { size, weight: 700 }) };
    const inside = part === 'pump-tank' || (narrow && IN_WATER.includes(part));
    if (!inside) leader(pen, fx, fy, x, y, size);
    disc(pen, x, y, size * 0.86, { fill: PAPER, width: size * 0.11 });
    write(pen, String(i + 1), x, y + size * 0.34, { size: size * 0.95, weight: 700, align: 'center' });
    write(pen, text(partName(part)), x + size * 1.25, y + size * 0.35, {
      size,
      weight: 700,
      colour: '#fffaf0',
      halo: '#3b2d1a',
    });
  }
}

/** The dashed frame round the part at hand. */
export function paintFrame(pen: Pen, around: Box, size: number, name: string | null, flush: 'left' | 'right'): void {
  const b = box(around.x - size * 0.5, around.y - size * 0.5, around.width + size, around.height + size);
  const p = new Path2D();
  p.roundRect(b.x, b.y, b.width, b.height, size * 0.8);
  draw(pen, p, { stroke: PAPER, width: size * 0.34, alpha: 0.8 });
  draw(pen, p, { stroke: '#2f5d73', width: size * 0.18, dash: [size * 0.5, size * 0.36], cap: 'butt' });
  if (name === null) return;
  const width = textWidth(pen, name, { size, weight: 700 }) + size * 1.5;
  const left = flush === 'right' ? b.x + b.width - width : b.x;
  // Over the frame, or under it where the plate ends above.
  const over = b.y - size * 1.9;
  const top = over < PLATE_TOP ? b.y + b.height + size * 0.25 : over;
  const tag = new Path2D();
  tag.roundRect(left, top, width, size * 1.65, size * 0.82);
  draw(pen, tag, { fill: '#2f5d73' });
  write(pen, name, left + size * 0.75, top + size * 1.18, { size, weight: 700, colour: '#fffaf0' });
}
