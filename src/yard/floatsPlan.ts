/** Where things sit in the close-up of the pump tank. Heights are true; units of that sheet, 1180 by 520. */
import type { FloatScene, GeometryScene } from '../scene/types.ts';
import { type Box, box } from './pen.ts';

export const FLOATS_SHEET = box(0, 0, 1180, 520);

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

export function floatBox(plan: FloatsPlan, f: FloatScene, index: number): Box {
  const y = plan.y(f.tether_m);
  return box(sideOf(index) < 0 ? plan.treeX - 84 : plan.treeX + 2, y - 58, 82, 112);
}
