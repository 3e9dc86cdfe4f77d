/** The trash tank in section beside its core: concrete, tees, water, scum and sludge at true heights, the tube in it. */
import type { ChamberScene } from '../scene/types.ts';
import { paintNeckWater, paintScum, paintSludge, paintWater, ripple } from './basin.ts';
import type { CorePlan } from './corePlan.ts';
import { CARD, INK, LID, PAPER, PENCIL, SCUM, SLUDGE } from './ink.ts';
import { box, draw, type Pen, pencilHatch, pipe, rect, within } from './pen.ts';
import { paintVault } from './vault.ts';

const TUBE_WIDE = 18;
const TEE_DIP_m = 0.42;

export function paintTankPencil(pen: Pen, plan: CorePlan): void {
  paintVault(pen, plan, false);
  unseenWater(pen, plan);
  tees(pen, plan, false);
  lid(pen, plan, false, false);
}

function unseenWater(pen: Pen, { inside: b, outletY: y }: CorePlan): void {
  pencilHatch(pen, box(b.x, y, b.width, b.y + b.height - y));
  draw(pen, ripple(b.x, b.x + b.width, y, 3), { stroke: PENCIL, width: 1.4, dash: [7, 5] });
}

export function paintTank(pen: Pen, plan: CorePlan, tank: ChamberScene): void {
  const { inside: b, perMetre, neck } = plan;
  const { level_m, scum_m, sludge_m, water } = tank;
  paintVault(pen, plan, true);
  const surface = level_m === null ? null : plan.y(level_m);
  within(pen, b, () => {
    if (surface === null) unseenWater(pen, plan);
    else paintWater(pen, b, surface, water);
    if (sludge_m !== null) paintSludge(pen, b, sludge_m * perMetre);
    if (surface !== null && scum_m !== null) paintScum(pen, b, Math.max(surface, b.y - 4), scum_m * perMetre);
  });
  if (surface !== null) paintNeckWater(pen, neck, b.y, surface, water, (scum_m ?? 0) * perMetre);
  unprobed(pen, plan, tank);
  tees(pen, plan, true);
  if (tank.lid === 'open') tubeIn(pen, plan, tank);
  else if (tank.sludge_m !== null || tank.scum_m !== null) tubeStood(pen, plan);
  draw(pen, `M${b.x} ${b.y}v${b.height}h${b.width}v${-b.height}`, { width: 1.5 });
  lid(pen, plan, true, tank.lid === 'open');
}

/** Where scum would end and sludge begin, dashed: nobody has measured it. */
function unprobed(pen: Pen, plan: CorePlan, { level_m, scum_m, sludge_m }: ChamberScene): void {
  const { inside: b } = plan;
  const dashed = { stroke: PENCIL, width: 1.3, dash: [4, 6] };
  const foot = b.y + b.height;
  if (sludge_m === null) draw(pen, `M${b.x} ${foot - 60}q${b.width * 0.36} -14 ${b.width} 0`, dashed);
  if (scum_m === null && level_m !== null) draw(pen, `M${b.x} ${plan.y(level_m) + 14}h${b.width}`, dashed);
}

function lid(pen: Pen, { neck: n, grade }: CorePlan, ink: boolean, open: boolean): void {
  const style = ink ? { fill: LID, stroke: INK, width: 1.8 } : { stroke: PENCIL, width: 1.4 };
  if (open) {
    rect(pen, box(n.x + n.width + 26, grade - 15, 150, 14), 6, style);
    draw(pen, `M${n.x + n.width + 40} ${grade - 11}h118`, { stroke: '#b8cdb0', width: 1.3 });
    return;
  }
  rect(pen, box(n.x - 20, n.y - 11, n.width + 40, 13), 4, style);
  if (ink) draw(pen, `M${n.x - 10} ${n.y - 7}h${n.width + 20}`, { stroke: '#b8cdb0', width: 1.3 });
}

function tees(pen: Pen, plan: CorePlan, ink: boolean): void {
  const { inside: b, inletY, outletY, perMetre } = plan;
  const dip = TEE_DIP_m * perMetre;
  const right = b.x + b.width;
  const colours = ink ? { wall: '#efe9da' } : { line: PENCIL, wall: PAPER };
  pipe(pen, `M-1200 ${inletY - 9}H${b.x + 30}M${b.x + 30} ${inletY - 26}v${dip + 26}`, 22, colours);
  pipe(pen, `M${right - 30} ${outletY - 9}H${right + 160}M${right - 30} ${outletY - 26}v${dip + 30}`, 22, colours);
}

/** Under a lid: where the tube stood when the core was taken. */
function tubeStood(pen: Pen, { standsX: x, inside: b }: CorePlan): void {
  const shaft = box(x - TUBE_WIDE / 2, b.y + 6, TUBE_WIDE, b.height - 8);
  rect(pen, shaft, 2, { fill: 'rgba(240,247,245,0.28)', stroke: CARD, width: 1.8, dash: [7, 5] });
}

/** The clear tube down to the floor, its bore showing the same layers. */
function tubeIn(pen: Pen, plan: CorePlan, { level_m, scum_m, sludge_m }: ChamberScene): void {
  const { standsX: x, inside: b, perMetre } = plan;
  const foot = b.y + b.height;
  const top = plan.grade - 82;
  const shaft = box(x - TUBE_WIDE / 2, top, TUBE_WIDE, foot - top - 2);
  rect(pen, shaft, 2, { fill: 'rgba(240,247,245,0.5)' });
  if (sludge_m !== null) {
    const high = sludge_m * perMetre;
    rect(pen, box(shaft.x, foot - 2 - high, TUBE_WIDE, high), 0, { fill: SLUDGE });
  }
  if (scum_m !== null && level_m !== null) {
    rect(pen, box(shaft.x, plan.y(level_m), TUBE_WIDE, scum_m * perMetre), 0, { fill: SCUM });
  }
  rect(pen, shaft, 2, { stroke: INK, width: 1.9 });
  draw(pen, `M${shaft.x + 4.5} ${top + 12}V${foot - 14}`, { stroke: '#ffffff', width: 2.6, alpha: 0.75 });
  rect(pen, box(x - TUBE_WIDE / 2 - 2, foot - 9, TUBE_WIDE + 4, 8), 2, { fill: '#c99a55', stroke: INK, width: 1.4 });
  rect(pen, box(x - 30, top - 9, 60, 12), 6, { fill: '#c99a55', stroke: INK, width: 1.7 });
  rect(pen, box(x - 9, top, 18, 14), 3, { fill: '#8f897b', stroke: INK, width: 1.4 });
}
