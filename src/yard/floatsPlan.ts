/** Where things sit in the close-up of the pump tank. Heights are true; units of that sheet, 1180 by 520. */
import type { FloatScene, GeometryScene } from '../scene/types.ts';
import { floatAngle } from './floats.ts';
import { type Box, box } from './pen.ts';

export const FLOATS_SHEET = box(0, 0, 1180, 520);

export const TETHER = 26;

export interface FloatsPlan {
  readonly perMetre: number;
  readonly grade: number;
  readonly inside: Box;
  readonly neck: Box;
  readonly inletY: number;
  readonly treeX: number;
  readonly pumpX: number;
  readonly dischargeY: number;
  readonly rulerX: number;
  y(elevation_m: number): number;
}

export function planFloats(g: GeometryScene): FloatsPlan {
  const grade = 40;
  // The whole depth with its floor slab fits the sheet, however deep the tank.
  const perMetre = 430 / -g.pump.floor_m;
  const y = (m: number) => grade - m * perMetre;
  const inside = box(200, y(g.pump.ceiling_m), 700, y(g.pump.floor_m) - y(g.pump.ceiling_m));
  return {
    perMetre,
    grade,
    inside,
    neck: box(402, 14, 240, inside.y - 14),
    inletY: y(g.pump.inlet_m),
    treeX: 566,
    pumpX: 432,
    dischargeY: 58,
    rulerX: 858,
    y,
  };
}

/** Odd floats swing to the right of the tree, even ones to the left. */
export const sideOf = (index: number): 1 | -1 => (index % 2 === 0 ? -1 : 1);

/** Size of the floats: on a tree of five they would touch otherwise. */
export function floatSize(floats: readonly FloatScene[]): number {
  return floats.length > 4 ? 1.25 : 1.42;
}

/** Angle of a float's tether: free in water or air, or lying on the floor. */
export function lieOf(plan: FloatsPlan, f: FloatScene, size: number): number {
  const floor = plan.inside.y + plan.inside.height;
  return floatAngle(f.position, floor - plan.y(f.tether_m), TETHER, size);
}

/** Places of the floats for a hand, in their order: about each body, divided halfway to the next on the same side. */
export function floatBoxes(plan: FloatsPlan, floats: readonly FloatScene[]): readonly Box[] {
  const size = floatSize(floats);
  const middles = floats.map((f) => plan.y(f.tether_m) + Math.cos(lieOf(plan, f, size)) * (TETHER + 11 * size));
  return middles.map((y, i) => {
    const others = middles.filter((_, k) => k !== i && sideOf(k) === sideOf(i));
    const halfway = (other: number) => (y + other) / 2;
    const top = Math.max(y - 40, ...others.filter((o) => o < y).map(halfway));
    const foot = Math.min(y + 40, ...others.filter((o) => o > y).map(halfway));
    return box(sideOf(i) < 0 ? plan.treeX - 88 : plan.treeX + 4, top, 84, foot - top);
  });
}
