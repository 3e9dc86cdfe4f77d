/** Close-up of the clarifier: sludge settles in its hopper and slides back into the chamber, clear water leaves above. */
import type { Scene } from '../scene/types.ts';
import { ChamberAir, PipeDrops } from './clarifierAir.ts';
import { ClarifierMotion } from './clarifierMotion.ts';
import { PIPE_WIDE, planClarifier, rise_mh } from './clarifierPlan.ts';
import { paintClarifierPlateInk, paintClarifierPlatePencil, type Seen } from './clarifierSection.ts';
import { CARD, INK, inkShare } from './ink.ts';
import { box, draw, type Pen } from './pen.ts';
import type { Plate, PlateWords } from './plate.ts';
import { label, length, type Reading, riseRate, solids } from './plateMessages.ts';
import { namer, readings } from './plateWords.ts';
import type { Sparks } from './sparks.ts';
import { paintStaff } from './staff.ts';
import { paintSoil } from './vault.ts';

export function makePlate(sparks: Sparks): Plate {
  return {
    focus: [568, 270],
    ink: ({ chambers }) => chambers.clarifier.ink,
    seen: (scene) => [seenOf(scene), rateOf(scene), scene.kind],
    ground: (pen, area, geometry) => paintSoil(pen, planClarifier(geometry), area),
    pencil: (pen, geometry) => paintClarifierPlatePencil(pen, planClarifier(geometry)),
    paint: (pen, scene) => paintClarifierPlateInk(pen, planClarifier(scene.geometry), seenOf(scene)),
    words,
    told,
    movers: [new ChamberAir(sparks), new ClarifierMotion(sparks), new PipeDrops(sparks)],
  };
}

/** The chamber is drawn as far as it was seen itself. */
function seenOf({ chambers: { aeration, clarifier } }: Scene): Seen {
  return { aeration: inkShare(aeration.ink) > 0 ? aeration : null, clarifier };
}

/** How fast water rises through the surface, as fine as it is told, m/h. */
function rateOf({ flows, geometry }: Scene): number | null {
  if (flows.clarifierOut_Ls === null) return null;
  return Math.round(rise_mh(flows.clarifierOut_Ls, geometry.aeration.clarifier.area_m2) * 100) / 100;
}

/** A line from the top of the blanket to its height on the staff. */
function reading(pen: Pen, from: number, to: number, y: number): void {
  draw(pen, `M${from} ${y}H${to}`, { stroke: CARD, width: 1.6, dash: [5, 4] });
  draw(pen, `M${to} ${y}l-11 -6v12z`, { fill: '#6f4a29', stroke: INK, width: 1.2 });
}

function words(pen: Pen, w: PlateWords): void {
  const { scene, seen } = w;
  const plan = planClarifier(scene.geometry);
  const { hopper: h, inside: b } = plan;
  const name = namer(pen, w);
  const c = scene.chambers.clarifier;
  const middle = (h.left + h.right) / 2;
  const blanket_m = seen ? c.sludge_m : null;
  const top = h.tip - (blanket_m ?? 0.22) * plan.perMetre;
  // It stands on the height of the slot, and ends where the outlet runs through the wall.
  const rule = { ...plan, inside: box(b.x, plan.outletY - 2, b.width, h.tip - plan.outletY + 2) };
  paintStaff(pen, rule, w.staff, seen, w.size);
  if (blanket_m !== null) reading(pen, plan.walls(top)[1] + 8, plan.rulerX, top);
  name('plate.clarifier.inlet', [34, plan.inletY - PIPE_WIDE / 2], [18, 94]);
  name('plate.clarifier.air', [212, 84], [228, 94]);
  name('plate.clarifier.liquor', [356, h.tip + 22], [372, h.tip + 6]);
  name('plate.clarifier.diffuser', [212, plan.diffuserY], [232, plan.diffuserY - 34]);
  name('plate.clarifier.hopper', [h.left + 1, h.straight - 20], [h.left + 18, h.straight - 44]);
  name('plate.clarifier.slot', [h.slot[1] - 8, h.tip], [h.slot[1] + 50, h.tip + 13]);
  name('plate.clarifier.tee', [plan.teeX - 10, plan.outletY + 28], [plan.teeX - 30, plan.outletY + 42], 'right');
  name('plate.clarifier.outlet', [b.x + b.width + 40, plan.outletY - 8], [b.x + b.width + 58, plan.outletY + 34]);
  const unknown = blanket_m === null ? w.text(label('yard.floats.unknown')) : undefined;
  const under = Math.min(h.tip - 8, top + 10);
  name('plate.clarifier.blanket', [middle - 20, under], [h.left + 60, h.tip - 62], 'right', unknown);
  if (!seen) return;
  const rate_mh = rateOf(scene);
  const at = Math.min(plan.outletY + 118, top - 34);
  if (rate_mh !== null && rate_mh > 0 && at > plan.outletY + 60) {
    const faster = w.text(label('plate.clarifier.faster'));
    name('plate.clarifier.rises', [middle - 106, at + 22], [middle - 92, at], 'left', faster);
  }
  if (c.scum_m !== null && c.scum_m > 0 && c.level_m !== null) {
    const level = plan.y(c.level_m);
    name('plate.clarifier.scum', [middle - 110, level + 4], [middle - 92, level - 16]);
  }
  readings(pen, w, [b.x + b.width + 60, plan.outletY + 62], told(scene));
}

function told(scene: Scene): readonly Reading[] {
  const c = scene.chambers.clarifier;
  const { slot_m } = planClarifier(scene.geometry);
  const rate_mh = rateOf(scene);
  return [
    ['plate.clarifier.level', c.level_m === null ? null : length(c.level_m - slot_m)],
    ['plate.clarifier.height', c.sludge_m === null ? null : length(c.sludge_m)],
    // Of water that was only looked at nobody knows a figure.
    ['plate.clarifier.solids', scene.kind === 'known' || c.water === null ? null : solids(c.water.solids_mgL)],
    ['plate.clarifier.rate', rate_mh === null ? null : riseRate(rate_mh)],
  ];
}
