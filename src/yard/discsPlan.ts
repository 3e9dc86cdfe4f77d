/** Where things sit in the close-up of the disc filter, units of a plate, and which of its ways are shut. */
import { noise } from './hash.ts';
import { box } from './pen.ts';

/** The lawn, and the box below it. */
export const GRADE = 78;
export const VALVE_BOX = box(60, 84, 520, 394);
/** Middle of the body, and of the pipe that runs through its head. */
export const BODY_X = 320;
export const PIPE_Y = 430;
export const PIPE_WIDE = 34;
export const CUP = box(BODY_X - 96, 112, 192, 266);
export const CUP_WALL = 10;
export const HEAD = box(BODY_X - 106, 386, 212, 74);
/** The stack: outer and inner edge of a disc from the middle, and its heights. */
export const RIM = 64;
export const BORE = 21;
export const STACK = { top: 174, foot: 366 } as const;
const DISCS = 18;
const PITCH = (STACK.foot - STACK.top) / DISCS;
export const DISC_HIGH = PITCH * 0.62;
/** One disc large, facing us. */
export const LENS = { x: 756, y: 257, radius: 139, rim: 115, bore: 40 } as const;
/** Grooves of that disc, in parts that clog alike. */
const PARTS = 5;
const PER_PART = 16;

export type Half = -1 | 1;

/** Top of each disc in the section. */
export const discTops: readonly number[] = Array.from({ length: DISCS }, (_, i) => STACK.top + i * PITCH);

/** A way between two discs, on one side of the core. */
export interface Gap {
  readonly half: Half;
  readonly y: number;
}

/** Always in the same order: the first ones clog first. */
const GAPS: readonly Gap[] = (() => {
  const r = noise(61);
  const all = discTops.slice(1).flatMap((top): Gap[] => {
    const y = top - (PITCH - DISC_HIGH) / 2;
    return [
      { half: -1, y },
      { half: 1, y },
    ];
  });
  return all
    .map((gap) => ({ gap, at: r() }))
    .sort((a, b) => a.at - b.at)
    .map(({ gap }) => gap);
})();

/** The gaps dirt has shut at a share of passage left, and those still open. */
export function gapsAt(share: number): { readonly shut: readonly Gap[]; readonly open: readonly Gap[] } {
  const n = Math.round((1 - Math.min(1, Math.max(0, share))) * GAPS.length);
  return { shut: GAPS.slice(0, n), open: GAPS.slice(n) };
}

/** A groove of the large disc runs slantwise from its rim to its bore. */
export interface Groove {
  readonly outer: readonly [number, number];
  readonly middle: readonly [number, number];
  readonly inner: readonly [number, number];
  readonly open: boolean;
}

export function groovesAt(share: number): readonly Groove[] {
  const lost = 1 - Math.min(1, Math.max(0, share));
  return Array.from({ length: PARTS * PER_PART }, (_, i) => {
    const turn = (i / (PARTS * PER_PART)) * 2 * Math.PI;
    const at = (radius: number, lead: number): readonly [number, number] => [
      LENS.x + radius * Math.cos(turn + lead),
      LENS.y + radius * Math.sin(turn + lead),
    ];
    return {
      outer: at(LENS.rim - 2, 0),
      middle: at((LENS.rim + LENS.bore) / 2, 0.16),
      inner: at(LENS.bore + 2, 0.42),
      open: ((i % PER_PART) + 0.5) / PER_PART > lost,
    };
  });
}
