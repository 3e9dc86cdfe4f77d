/** Where things stand in the close-up of the jar, units of a plate. */
import type { JarScene } from '../scene/types.ts';
import { type Box, box } from './pen.ts';
import { CARD_TOP } from './plateWords.ts';

/** The full litre, and the foot of the glass. */
const FULL_Y = 86;
const FOOT_Y = 424;
/** What the glass holds, and its rim. */
export const GLASS = box(292, 44, 140, FOOT_Y - 44);
export const FULL = box(GLASS.x, FULL_Y, GLASS.width, FOOT_Y - FULL_Y);
/** Top of the board it stands on, and where the lawn begins. */
export const BOARD_Y = 450;
export const LAWN_Y = 494;
export const CARD_AT = box(622, CARD_TOP, 500, 306);
export const SLIP_Y = CARD_AT.y + CARD_AT.height + 8;

export function markY(mLL: number): number {
  return FOOT_Y - (mLL / 1000) * FULL.height;
}

/** Where the sludge lies: on the foot, or against the surface where gas has lifted it; null where nobody knows. */
export function sludgeBox({ settled_mLL, floats }: JarScene): Box | null {
  if (settled_mLL === null) return null;
  const high = FOOT_Y - markY(settled_mLL);
  return box(FULL.x, floats ? FULL_Y : FOOT_Y - high, FULL.width, high);
}

/** The water beside it. */
export function clearBox(jar: JarScene): Box | null {
  const sludge = sludgeBox(jar);
  if (sludge === null) return null;
  const high = FULL.height - sludge.height;
  return box(FULL.x, jar.floats ? FOOT_Y - high : FULL_Y, FULL.width, high);
}
