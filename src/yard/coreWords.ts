/** Names and figures round the core tube: a staff beside it, how thick each layer is, and how near to being pumped out. */
import type { ChamberScene, Scene } from '../scene/types.ts';
import type { Message } from '../service/message.ts';
import { type CorePlan, coredOf, planCore, togetherOf } from './corePlan.ts';
import { paintPumpCores } from './corePump.ts';
import { surfaceIn } from './coreTube.ts';
import { ALARM, CARD, INK, PENCIL, SCUM, SLUDGE } from './ink.ts';
import { newPath } from './path.ts';
import { box, draw, hatch, type Pen, rect, within, write } from './pen.ts';
import type { PlateWords } from './plate.ts';
import { type CloseupLabel, label, percent, type Reading, thickness } from './plateMessages.ts';
import { CARD_TOP, namer, pointTo, readings } from './plateWords.ts';
import { staffMarks } from './staff.ts';

const SOFT = '#5d5648';
const HALO = 'rgba(246,240,225,0.85)';
const STAFF_WIDE = 52;
/** Under the hand a name has room. */
const HAND = 96;
/** Left of the cards on the board. */
const CARDS_X = 898;

export function coreWords(pen: Pen, w: PlateWords): void {
  const plan = planCore(w.scene.geometry);
  const { tank, cores } = coredOf(w.scene);
  const { trash_m, pump_m } = w.scene.geometry.fullAt;
  staff(pen, w, plan);
  tankNames(pen, w, plan, tank);
  const probed = tank !== null && (tank.scum_m !== null || tank.sludge_m !== null);
  if (probed) {
    layers(pen, w, plan, tank);
  } else {
    const at = plan.up(plan.depth_m * 0.5);
    const from = [plan.bore.x + plan.bore.width - 16, at] as const;
    pointTo(pen, w, { from, at: [plan.tube.x + plan.tube.width + 24, at], text: w.text(label('plate.core.unseen')) });
  }
  stack(pen, w, plan, tank, trash_m);
  readings(pen, w, [CARDS_X, CARD_TOP], rowsOf(plan, tank, trash_m));
  if (cores.length > 0) paintPumpCores(pen, w, cores, plan.boreScale, pump_m);
}

/** A board marked in whole units of the page, from the foot of the column up. */
function staff(pen: Pen, { size, staff: marked, seen }: PlateWords, plan: CorePlan): void {
  const { tube, bore, boreScale } = plan;
  const board = box(tube.x - 14 - STAFF_WIDE, bore.y, STAFF_WIDE, plan.up(0) - bore.y);
  const right = board.x + board.width;
  rect(pen, board, 2, { fill: CARD, stroke: seen ? INK : PENCIL, width: 1.4 });
  const ticks = newPath();
  for (const { m, long, figure } of staffMarks(marked, board.height / boreScale)) {
    const y = plan.up(m);
    ticks.moveTo(right, y);
    ticks.lineTo(right - (figure !== null ? 13 : long ? 9 : 5), y);
    if (figure === null || y < board.y + size) continue;
    const style = { size: size * 0.86, align: 'right', colour: seen ? INK : SOFT } as const;
    write(pen, String(figure), right - 17, y + size * 0.3, style);
  }
  draw(pen, ticks, { stroke: seen ? INK : PENCIL, width: 1.1 });
}

function tankNames(pen: Pen, w: PlateWords, plan: CorePlan, tank: ChamberScene | null): void {
  const { inside: b, inletY, outletY, standsX, grade } = plan;
  const name = namer(pen, w);
  const right = b.x + b.width;
  name('plate.core.inlet', [b.x + 34, inletY + 56], [b.x + 56, inletY + 84]);
  name('plate.core.outlet', [right - 34, outletY + 62], [right - 56, outletY + 92], 'right');
  if (tank?.lid === 'open') name('plate.core.tube', [standsX - 6, grade - 48], [standsX - 34, grade - 52], 'right');
}

interface Layer {
  readonly id: CloseupLabel;
  readonly from: number;
  readonly to: number;
  readonly thick: Message | null;
}

/** Each layer by name with its thickness, kept apart where layers are thin. */
function layers(pen: Pen, w: PlateWords, plan: CorePlan, { level_m, scum_m, sludge_m }: ChamberScene): void {
  const { boreScale, tube, bore } = plan;
  const surface = surfaceIn(plan, level_m);
  const foot = plan.up(0);
  const under = surface + (scum_m ?? 0) * boreScale;
  const lies = foot - (sludge_m ?? 0) * boreScale;
  const high = (y0: number, y1: number) => Math.max(0, (y1 - y0) / boreScale);
  // How much water lies between is known where all three heights are.
  const whole = level_m !== null && scum_m !== null && sludge_m !== null && surface > bore.y + 8;
  const all: readonly Layer[] = [
    { id: 'plate.core.scum', from: surface, to: under, thick: scum_m === null ? null : thickness(scum_m) },
    { id: 'plate.core.clear', from: under, to: lies, thick: whole ? thickness(high(under, lies)) : null },
    { id: 'plate.core.sludge', from: lies, to: foot, thick: sludge_m === null ? null : thickness(sludge_m) },
  ];
  const gap = w.size * 2.7;
  let free = foot + w.size * 0.2;
  for (const { id, from, to, thick } of [...all].reverse()) {
    if (thick === null && id !== 'plate.core.clear') continue;
    const middle = (from + to) / 2;
    const at = Math.max(tube.y + HAND, Math.min(middle, free - w.size * 1.2));
    free = at - gap + w.size * 1.2;
    const more = thick === null ? {} : { more: w.text(thick) };
    const text = w.text(label(id));
    const x = tube.x + tube.width;
    // Of a layer that the hand half covers, what shows is pointed at.
    const dot = Math.max(middle, Math.min(to - 4, tube.y + HAND - 8));
    pointTo(pen, w, { from: [x - 20, dot], at: [x + 26, at], text, ...more });
  }
}

/** Scum on sludge without the water, to the scale of the tube, and how much of both is too much. */
function stack(pen: Pen, w: PlateWords, plan: CorePlan, tank: ChamberScene | null, limit_m: number): void {
  const { size, text } = w;
  const [x, wide] = [836, 46];
  const foot = plan.up(0);
  const sludge = (tank?.sludge_m ?? 0) * plan.boreScale;
  const scum = (tank?.scum_m ?? 0) * plan.boreScale;
  for (const [y, high, fill] of [
    [foot - sludge, sludge, SLUDGE],
    [foot - sludge - scum, scum, SCUM],
  ] as const) {
    if (high < 1) continue;
    const part = box(x, y, wide, high);
    rect(pen, part, 0, { fill, stroke: INK, width: 1.6 });
    if (fill === SCUM) within(pen, part, () => hatch(pen, part, 8, 14, { stroke: '#c2a468', width: 1.2 }));
  }
  draw(pen, `M${x - 14} ${foot}h${wide + 28}`, { width: 2 });
  const y = plan.up(limit_m);
  draw(pen, `M${x - 14} ${y}h${wide + 28}`, { stroke: CARD, width: 5 });
  draw(pen, `M${x - 14} ${y}h${wide + 28}`, { stroke: ALARM, width: 2.4, dash: [7, 4], cap: 'butt' });
  write(pen, text(thickness(limit_m)), x + wide + 19, y + size * 0.34, { size, weight: 700, halo: HALO });
  const name = { size: size * 0.94, weight: 700, align: 'center', halo: HALO } as const;
  write(pen, text(label('plate.core.together')), x + wide / 2, foot + size * 1.5, name);
}

function rowsOf(plan: CorePlan, tank: ChamberScene | null, limit_m: number): readonly Reading[] {
  const both = togetherOf(tank);
  if (both === null) return [['plate.core.limit', thickness(limit_m)]];
  return [
    ['plate.core.together', thickness(both)],
    ['plate.core.share', percent(both / plan.depth_m)],
    ['plate.core.limit', thickness(limit_m)],
    ['plate.core.state', label(both < limit_m ? 'plate.core.below' : 'plate.core.reached')],
  ];
}

/** Layers, what they come to, and the pump tank's cores. */
export function coreTold(scene: Scene): readonly Reading[] {
  const { tank, cores } = coredOf(scene);
  const thick = (m: number | null | undefined) => (m == null ? null : thickness(m));
  return [
    ['plate.core.scum', thick(tank?.scum_m)],
    ['plate.core.sludge', thick(tank?.sludge_m)],
    ...rowsOf(planCore(scene.geometry), tank, scene.geometry.fullAt.trash_m),
    ...cores.map((core): Reading => ['plate.core.cores', thickness(core.sludge_m)]),
  ];
}
