/** The clear tube held up with its column: scum on water on sludge, as thick as each was probed. */
import type { ChamberScene } from '../scene/types.ts';
import { paintScum, paintSludge, paintWater } from './basin.ts';
import { paintFingers, paintPalm } from './coreHand.ts';
import type { CorePlan } from './corePlan.ts';
import { INK, PAPER, PENCIL } from './ink.ts';
import { box, draw, type Pen, pencilHatch, rect, shadowed, within } from './pen.ts';

export function paintTubePencil(pen: Pen, plan: CorePlan): void {
  const { tube, bore } = plan;
  board(pen, plan, false);
  rect(pen, tube, 4, { fill: PAPER, stroke: PENCIL, width: 2 });
  pencilHatch(pen, box(bore.x, plan.up(plan.depth_m), bore.width, plan.up(0) - plan.up(plan.depth_m)));
  for (const m of [plan.depth_m, plan.depth_m * 0.86, plan.depth_m * 0.2]) {
    draw(pen, `M${bore.x} ${plan.up(m)}h${bore.width}`, { stroke: PENCIL, width: 1.3, dash: [6, 5] });
  }
  ends(pen, plan, false);
}

export function paintTube(pen: Pen, plan: CorePlan, tank: ChamberScene): void {
  const { scum_m, sludge_m } = tank;
  if (scum_m === null && sludge_m === null) {
    paintTubePencil(pen, plan);
    return;
  }
  const { tube, bore } = plan;
  board(pen, plan, true);
  paintPalm(pen, plan);
  rect(pen, tube, 4, { fill: '#e3eeec' });
  rect(pen, bore, 0, { fill: '#f3f6ef' });
  within(pen, bore, () => column(pen, plan, tank));
  rect(pen, tube, 4, { stroke: INK, width: 2.4 });
  draw(pen, `M${bore.x} ${bore.y}V${plan.up(0)}M${bore.x + bore.width} ${bore.y}V${plan.up(0)}`, {
    width: 1.1,
    alpha: 0.65,
  });
  draw(pen, `M${bore.x + 13} ${bore.y + 20}V${plan.up(0) - 24}`, { stroke: '#ffffff', width: 6, alpha: 0.45 });
  draw(pen, `M${bore.x + 23} ${bore.y + 40}V${plan.up(0) - 120}`, { stroke: '#ffffff', width: 2.2, alpha: 0.45 });
  ends(pen, plan, true);
  paintFingers(pen, plan);
}

/** A column no higher than the tube: of a tank that backs up it holds what fits. */
function column(pen: Pen, plan: CorePlan, { level_m, scum_m, sludge_m, water }: ChamberScene): void {
  const { bore, boreScale } = plan;
  const surface = surfaceIn(plan, level_m);
  paintWater(pen, box(bore.x, surface, bore.width, plan.up(0) - surface), surface, water);
  const dashed = { stroke: PENCIL, width: 1.5, dash: [6, 5] };
  const lying = box(bore.x, bore.y, bore.width, plan.up(0) - bore.y);
  if (sludge_m !== null) paintSludge(pen, lying, sludge_m * boreScale, 0.04);
  else draw(pen, `M${bore.x} ${plan.up(plan.depth_m * 0.2)}h${bore.width}`, dashed);
  if (scum_m !== null) paintScum(pen, box(bore.x, bore.y, bore.width, bore.height), surface, scum_m * boreScale);
  else draw(pen, `M${bore.x} ${surface + 0.08 * boreScale}h${bore.width}`, dashed);
}

/** Where the water stands in the tube; at its usual depth where nobody saw the level. */
export function surfaceIn(plan: CorePlan, level_m: number | null): number {
  const depth_m = level_m === null ? plan.depth_m : level_m - plan.floor_m;
  return Math.max(plan.bore.y + 8, plan.up(depth_m));
}

/** A board in a brass rim, and lines to it from the tube in the tank. */
function board(pen: Pen, { standsX, board: b, inside, outletY }: CorePlan, ink: boolean): void {
  const line = ink ? INK : PENCIL;
  const foot = inside.y + inside.height - 8;
  const from = standsX + 10;
  draw(pen, `M${from} ${outletY}L${b.x} ${b.y + 26}M${from} ${foot}L${b.x} ${b.y + b.height - 26}`, {
    stroke: line,
    width: 1.3,
    alpha: 0.75,
  });
  shadowed(pen, () => rect(pen, b, 16, { fill: ink ? '#c08a35' : PAPER }));
  rect(pen, b, 16, { stroke: line, width: 2 });
  rect(pen, box(b.x + 7, b.y + 7, b.width - 14, b.height - 14), 10, { fill: PAPER, stroke: line, width: 1.5 });
}

/** The check at its foot that holds the column, and the grip. */
function ends(pen: Pen, { tube }: CorePlan, ink: boolean): void {
  const line = ink ? INK : PENCIL;
  const foot = tube.y + tube.height;
  const brass = { fill: ink ? '#c99a55' : PAPER, stroke: line, width: 1.9 };
  rect(pen, box(tube.x - 7, foot - 9, tube.width + 14, 20), 4, brass);
  draw(pen, `M${tube.x + 14} ${foot + 1}h${tube.width - 28}`, { stroke: line, width: 1.4 });
  rect(pen, box(tube.x - 5, tube.y - 4, tube.width + 10, 9), 3, brass);
}
