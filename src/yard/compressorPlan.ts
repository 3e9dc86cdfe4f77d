/** Where things sit in the close-up of the compressor, units of a plate. */
import { type Box, box } from './pen.ts';

/** Left and right of the coils. */
export type Side = -1 | 1;
export const SIDES: readonly Side[] = [-1, 1];

/** Top of the slab it stands on. */
export const PAD_Y = 430;
export const HOUSING = box(264, 96, 560, 334);
export const COIL_X = HOUSING.x + HOUSING.width / 2;
export const SHAFT_Y = 269;
export const FILTER = box(COIL_X - 110, 112, 220, 46);
/** The valve chests: air comes in through the upper flap, leaves through the lower. */
export const CHEST: Readonly<Record<Side, Box>> = {
  [-1]: box(292, 194, 62, 150),
  1: box(HOUSING.x + HOUSING.width - 90, 194, 62, 150),
};
/** The rubber is clamped this far from the middle, and held by its washer this far. */
const RIM = 66;
const HUB = 20;
/** Where the tee to the air switch stands, and the hose that goes by. */
export const TEE = 900;
export const HOSE = `M${HOUSING.x + HOUSING.width - 8} 394H1060q26 0 26 26V1400`;

export const shell = () => {
  const { x, y, width, height } = HOUSING;
  return `M${x} ${y + height}V${y + 40}q0 -40 40 -40h${width - 80}q40 0 40 40V${y + height}z`;
};

/** Where the rubber of a side is clamped. */
export function rimX(side: Side): number {
  return side < 0 ? CHEST[-1].x + CHEST[-1].width + 8 : CHEST[1].x - 8;
}

/** The rubber in section, its middle moved along by so much. */
export function rubber(side: Side, moved: number): string {
  const x = rimX(side);
  const hub = x + moved;
  const roll = -side * 9;
  const [y0, y1, y2, y3] = [SHAFT_Y - RIM, SHAFT_Y - HUB, SHAFT_Y + HUB, SHAFT_Y + RIM];
  const q = (y: number) => `${(x + hub) / 2 + roll} ${y}`;
  return `M${x} ${y0}Q${q((y0 + y1) / 2)} ${hub} ${y1}V${y2}Q${q((y2 + y3) / 2)} ${x} ${y3}`;
}
