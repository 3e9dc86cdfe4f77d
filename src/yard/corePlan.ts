/** Where things stand in the close-up of the core tube. Heights are true, each side to its own scale; units of a plate. */
import type { ChamberScene, GeometryScene, Scene } from '../scene/types.ts';
import { inkShare } from './ink.ts';
import { type Box, box } from './pen.ts';

/** Where the lawn begins, and the floor of the tank. */
const GRADE_Y = 118;
const FLOOR_Y = 462;
/** Foot of the tube that is held up, and how much of its length is more than the water's usual depth. */
const FOOT_Y = 470;
const TOP_Y = 28;
const SPARE = 1.25;

export interface CorePlan {
  readonly grade: number;
  readonly perMetre: number;
  readonly inside: Box;
  readonly neck: Box;
  readonly inletY: number;
  readonly outletY: number;
  /** Middle of the tube as it stands in the tank. */
  readonly standsX: number;
  /** The board it is held up before. */
  readonly board: Box;
  /** The tube held up, what it holds at most, and its scale. */
  readonly tube: Box;
  readonly bore: Box;
  readonly boreScale: number;
  /** Depth of the water where it stands as high as its way out, m. */
  readonly depth_m: number;
  readonly floor_m: number;
  /** Elevation in the tank. */
  y(m: number): number;
  /** Height in the tube over its foot. */
  up(m: number): number;
}

export function planCore({ trash }: GeometryScene): CorePlan {
  const perMetre = (FLOOR_Y - GRADE_Y) / -trash.floor_m;
  const y = (m: number) => GRADE_Y - m * perMetre;
  const inside = box(64, y(trash.ceiling_m), 352, FLOOR_Y - y(trash.ceiling_m));
  const depth_m = trash.outlet_m - trash.floor_m;
  const boreScale = (FOOT_Y - 8 - TOP_Y) / (SPARE * depth_m);
  const tube = box(634, TOP_Y, 104, FOOT_Y - TOP_Y);
  return {
    grade: GRADE_Y,
    perMetre,
    inside,
    neck: box(186, GRADE_Y - 24, 108, inside.y - GRADE_Y + 24),
    inletY: y(trash.inlet_m),
    outletY: y(trash.outlet_m),
    standsX: 240,
    board: box(548, 10, 628, 500),
    tube,
    bore: box(tube.x + 7, TOP_Y, tube.width - 14, FOOT_Y - 8 - TOP_Y),
    boreScale,
    depth_m,
    floor_m: trash.floor_m,
    y,
    up: (m) => FOOT_Y - 8 - m * boreScale,
  };
}

/** What is known of the tank, and the pump tank's cores that were taken: null and none where nobody saw them. */
export function coredOf({ chambers }: Scene): {
  readonly tank: ChamberScene | null;
  readonly cores: ChamberScene['cores'];
} {
  const tank = chambers['trash-tank'];
  const pump = chambers['pump-tank'];
  return {
    tank: inkShare(tank.ink) > 0 ? tank : null,
    cores: inkShare(pump.ink) > 0 ? pump.cores : [],
  };
}

/** Scum and sludge together, m; null where one of them was not probed. */
export function togetherOf(tank: ChamberScene | null): number | null {
  return tank === null || tank.scum_m === null || tank.sludge_m === null ? null : tank.scum_m + tank.sludge_m;
}
