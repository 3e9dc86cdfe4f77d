/** What is written on a close-up: names with a line to what they name, and a card of readings. */
import { CARD, INK, PAPER } from './ink.ts';
import { type Box, box, disc, draw, lined, type Pen, rect, shadowed, textWidth, write } from './pen.ts';
import { PLATE, type PlateWords } from './plate.ts';
import { type CloseupLabel, label, type Reading } from './plateMessages.ts';

const HALO = 'rgba(246,240,225,0.85)';
const SOFT = '#5d5648';

/** A card stands no higher than this: over it lie the buttons of the page. */
export const CARD_TOP = 84;

export interface Pointing {
  readonly size: number;
  /** What is on the screen. */
  readonly view: Box;
}

export interface Pointer {
  /** What is named, and where its name stands. */
  readonly from: readonly [number, number];
  readonly at: readonly [number, number];
  readonly text: string;
  /** A second line, lighter. */
  readonly more?: string;
  readonly align?: 'left' | 'right';
}

/** A name beside a part with a line to it; left out where the screen would cut it. */
export function pointTo(pen: Pen, { size, view }: Pointing, { from, at, text, more, align = 'left' }: Pointer): void {
  const style = { size, weight: 700, colour: INK, halo: HALO, align } as const;
  const [x, y] = at;
  const wide = Math.max(textWidth(pen, text, style), more === undefined ? 0 : textWidth(pen, more, { size }));
  const left = align === 'right' ? x - wide : x;
  if (left < view.x || left + wide > view.x + view.width) return;
  const end = align === 'right' ? x + 5 : x - 5;
  lined(
    pen,
    `M${from[0]} ${from[1]}L${end} ${y - size * 0.3}`,
    { stroke: PAPER, width: 3, alpha: 0.7 },
    { width: 1.2 },
  );
  disc(pen, from[0], from[1], 2.8, { fill: INK });
  write(pen, text, x, y, style);
  if (more !== undefined) write(pen, more, x, y + size * 1.15, { size: size * 0.94, align, halo: HALO });
}

type At = readonly [x: number, y: number];

/** Names on a plate by their ids. */
export function namer(pen: Pen, w: PlateWords) {
  return (id: CloseupLabel, from: At, at: At, align: 'left' | 'right' = 'left', more?: string): void =>
    pointTo(pen, w, { from, at, text: w.text(label(id)), align, ...(more === undefined ? {} : { more }) });
}

/** Whether the screen would cut a card that has room on it; one is panned to it then. */
export function isCut(b: Box, view: Box): boolean {
  return b.width <= view.width && (b.x < view.x || b.x + b.width > view.x + view.width);
}

/** What is known, on one paper card: name on the left, value on the right; nothing where nothing is known. */
export function readings(
  pen: Pen,
  { size, text, view }: Pick<PlateWords, 'size' | 'text' | 'view'>,
  [x, y]: readonly [number, number],
  known: readonly Reading[],
): void {
  const rows = known.flatMap(([name, value]) => (value === null ? [] : [[text(label(name)), text(value)] as const]));
  if (rows.length === 0) return;
  const names = Math.max(...rows.map(([name]) => textWidth(pen, name, { size })));
  const values = Math.max(...rows.map(([, value]) => textWidth(pen, value, { size, weight: 700 })));
  const high = size * 1.6;
  const wide = names + values + size * 2.6;
  // A view that is wider than the plate leaves room beyond its edge.
  const right = Math.max(PLATE.width, view.x + view.width) - 14;
  const b = box(Math.min(x, right - wide), y, wide, rows.length * high + size * 0.7);
  if (isCut(b, view)) return;
  shadowed(pen, () => rect(pen, b, 6, { fill: CARD }));
  rect(pen, b, 6, { width: 1.3 });
  for (const [i, [name, value]] of rows.entries()) {
    const line = b.y + size * 0.35 + (i + 0.7) * high;
    if (i > 0) {
      const over = line - high * 0.7;
      draw(pen, `M${b.x + 10} ${over}h${b.width - 20}`, { stroke: '#d8cdb4', width: 1 });
    }
    write(pen, name, b.x + size * 0.8, line, { size, colour: SOFT });
    write(pen, value, b.x + b.width - size * 0.8, line, { size, weight: 700, align: 'right' });
  }
}
