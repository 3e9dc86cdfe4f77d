/** A label to place at `x`; one marked `first` gets its place before the others. */
export interface Wanted {
  readonly x: number;
  readonly text: string;
  readonly first?: boolean;
}

export interface Placed {
  readonly x: number;
  readonly row: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** Width of a letter of the drawing's 14 px type on average, and the air between two labels. */
const LETTER = 7;
const AIR = 10;

/**
 * Puts each label into the first of `rows` rows where it overlaps no other, and leaves it out where there is none:
 * the text version has them all.
 */
export function placeLabels(
  wanted: readonly Wanted[],
  width: number,
  rows: number,
  anchor: 'start' | 'middle',
): readonly (Placed | null)[] {
  const taken: [number, number][][] = Array.from({ length: rows }, () => []);
  const placed = new Array<Placed | null>(wanted.length).fill(null);
  const order = wanted.map((one, index) => ({ one, index })).sort((a, b) => rank(b.one) - rank(a.one));
  for (const { one, index } of order) {
    if (one.text === '') continue;
    const span = fit(one, width, anchor);
    const row = taken.findIndex((others) => others.every(([a, b]) => span.to + AIR <= a || span.from - AIR >= b));
    if (row < 0) continue;
    taken[row]?.push([span.from, span.to]);
    placed[index] = { x: span.x, row, anchor: span.anchor };
  }
  return placed;
}

function rank(one: Wanted): number {
  return one.first === true ? 1 : 0;
}

/** Where the label would stand, turned round at the edges so that none is cut off. */
function fit(one: Wanted, width: number, anchor: 'start' | 'middle') {
  const length = one.text.length * LETTER;
  if (anchor === 'start') {
    if (one.x + 8 + length <= width) {
      return { x: one.x + 8, from: one.x + 8, to: one.x + 8 + length, anchor: 'start' as const };
    }
    return { x: one.x - 8, from: one.x - 8 - length, to: one.x - 8, anchor: 'end' as const };
  }
  if (one.x - length / 2 < 0) return { x: 2, from: 2, to: length, anchor: 'start' as const };
  if (one.x + length / 2 > width) return { x: width - 2, from: width - length, to: width, anchor: 'end' as const };
  return { x: one.x, from: one.x - length / 2, to: one.x + length / 2, anchor: 'middle' as const };
}
