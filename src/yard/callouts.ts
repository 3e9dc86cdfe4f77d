/** Numbers and names of the parts, and the frame round the part at hand. */
import { holds } from './camera.ts';
import { INK, PAPER } from './ink.ts';
import { PLATE_TOP } from './layout.ts';
import { LINE, type Name } from './names.ts';
import { type Box, box, disc, lined, overlap, type Pen, rect, textWidth, write } from './pen.ts';

export function paintNames(pen: Pen, names: readonly Name[], size: number): void {
  for (const { from, disc: to } of names) if (from !== null) leader(pen, from, to, size);
  for (const { number, disc: at, lines, text, align } of names) {
    disc(pen, at[0], at[1], size * 0.86, { fill: PAPER, width: size * 0.11 });
    write(pen, String(number), at[0], at[1] + size * 0.34, { size: size * 0.95, weight: 700, align: 'center' });
    for (const [i, line] of lines.entries()) {
      write(pen, line, text[0], text[1] + i * size * LINE, {
        size,
        weight: 700,
        align,
        colour: '#fffaf0',
        halo: '#3b2d1a',
      });
    }
  }
}

function leader(pen: Pen, [fx, fy]: readonly [number, number], [x, y]: readonly [number, number], size: number): void {
  lined(pen, `M${fx} ${fy}L${x} ${y}`, { width: size * 0.2, stroke: PAPER, alpha: 0.75 }, { width: size * 0.09 });
  disc(pen, fx, fy, size * 0.24, { fill: INK, stroke: PAPER, width: size * 0.06 });
}

export interface Tag {
  readonly name: string;
  /** Which end of the frame its tag is flush with. */
  readonly flush: 'left' | 'right';
  /** Where it has to stand whole, and what it must not cover. */
  readonly free: Box;
  readonly taken: readonly Box[];
}

/** The dashed frame round the part at hand, with its name where that has room. Gives what the name covers. */
export function paintFrame(pen: Pen, around: Box, size: number, tag: Tag): Box | null {
  const b = box(around.x - size * 0.5, around.y - size * 0.5, around.width + size, around.height + size);
  rect(pen, b, size * 0.8, { stroke: PAPER, width: size * 0.34, alpha: 0.8 });
  rect(pen, b, size * 0.8, { stroke: '#2f5d73', width: size * 0.18, dash: [size * 0.5, size * 0.36], cap: 'butt' });
  const { name, flush, free, taken } = tag;
  if (name === '') return null;
  const width = textWidth(pen, name, { size, weight: 700 }) + size * 1.5;
  const height = size * 1.65;
  const end = flush === 'right' ? b.x + b.width - width : b.x;
  const left = Math.max(free.x, Math.min(end, free.x + free.width - width));
  // Over the frame, or under it where the plate or the screen ends above.
  const over = b.y - size * 1.9;
  const spots = [...(over < PLATE_TOP ? [] : [over]), b.y + b.height + size * 0.25];
  const clear = (one: Box) => holds(free, one) && !taken.some((other) => overlap(one, other));
  const place = spots.map((top) => box(left, top, width, height)).find(clear);
  if (place === undefined || left + width < b.x || left > b.x + b.width) return null;
  rect(pen, place, size * 0.82, { fill: '#2f5d73' });
  write(pen, name, left + size * 0.75, place.y + size * 1.18, { size, weight: 700, colour: '#fffaf0' });
  return place;
}
