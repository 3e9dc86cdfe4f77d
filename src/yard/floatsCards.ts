/** Names, set heights and readings round the float tree. */
import type { ChamberScene, FloatScene } from '../scene/types.ts';
import type { Message } from '../service/message.ts';
import type { FloatsPlan } from './floatsPlan.ts';
import { paintContactSign } from './floatsTank.ts';
import { ACTION, CARD, FLOAT_COLOURS, INK, inkShare, mix, PAPER, PENCIL, SLUDGE } from './ink.ts';
import { type Box, box, disc, draw, lined, type Pen, rect, shadowed, textWidth, write } from './pen.ts';
import { floatName, label, length } from './plateMessages.ts';
import { paintStaff } from './staff.ts';
import type { Staff } from './types.ts';

export interface CardsLook {
  readonly floats: readonly FloatScene[];
  readonly chamber: ChamberScene;
  readonly floor_m: number;
  readonly intake_m: number;
  readonly inlet_m: number;
  readonly seen: boolean;
  readonly size: number;
  /** What is on the screen: a name that would be cut is left out, the level moves along. */
  readonly view: Box;
  readonly text: (m: Message) => string;
  readonly staff: Staff;
}

const SOFT = '#5d5648';
const LEAST_CARD = 164;

export function paintCards(pen: Pen, plan: FloatsPlan, look: CardsLook, levelY: number | null): void {
  paintStaff(pen, plan, look.staff, look.seen, look.size);
  floatCards(pen, plan, look);
  names(pen, plan, look);
  if (!look.seen) return;
  cores(pen, plan, look);
  if (levelY !== null) level(pen, plan, look, levelY);
}

function floatCards(pen: Pen, plan: FloatsPlan, look: CardsLook): void {
  const { size, text } = look;
  const high = size * 2.75;
  const width = Math.max(LEAST_CARD, ...look.floats.map((f) => cardWidth(pen, look, f)));
  const x = plan.rulerX - 18 - width;
  // From the lowest up, each card no lower than its float and clear of the card below.
  let free = plan.inside.y + plan.inside.height - 10;
  const order = [...look.floats].sort((a, b) => a.makes_m - b.makes_m);
  for (const f of order) {
    const at = plan.y(f.makes_m);
    const y = Math.min(free - high, at - high / 2);
    free = y - 5;
    const seen = inkShare(f.ink) > 0;
    const line = seen ? INK : PENCIL;
    const b = box(x, y, width, high);
    draw(pen, `M${plan.treeX + 8} ${plan.y(f.tether_m)}H${x - 26}L${x} ${y + high / 2}`, {
      stroke: line,
      width: 1,
      dash: [2, 4],
      alpha: 0.8,
    });
    draw(pen, `M${b.x + b.width} ${y + high / 2}L${plan.rulerX - 8} ${at}h6`, { stroke: line, width: 1.2 });
    draw(pen, `M${plan.rulerX} ${at}l-9 -5v10z`, { fill: FLOAT_COLOURS[f.id], stroke: line, width: 1 });
    shadowed(pen, () => rect(pen, b, 5, { fill: seen ? CARD : PAPER }));
    rect(pen, box(b.x + 1, b.y + 1, 7, b.height - 2), 2, { fill: seen ? FLOAT_COLOURS[f.id] : '#ddd3bd' });
    rect(pen, b, 5, { stroke: line, width: 1.3, ...(seen ? {} : { dash: [5, 4] }) });
    write(pen, text(floatName(f.id)), b.x + 15, b.y + size * 1.15, { size, weight: 700, colour: seen ? INK : SOFT });
    write(pen, heightOf(look, f), b.x + b.width - 9, b.y + size * 1.15, {
      size,
      align: 'right',
      colour: seen ? INK : SOFT,
    });
    const made = seen ? f.made : null;
    const state = made === null ? 'yard.floats.unknown' : made ? 'yard.floats.made' : 'yard.floats.open';
    write(pen, text(label(state)), b.x + 15, b.y + size * 2.3, { size: size * 0.94, colour: SOFT });
    paintContactSign(pen, b.x + b.width - 44, b.y + size * 2.02, made);
  }
}

function heightOf(look: CardsLook, f: FloatScene): string {
  return look.text(length(f.makes_m - look.floor_m));
}

/** Room for a float's name and its height in one line. */
function cardWidth(pen: Pen, look: CardsLook, f: FloatScene): number {
  const { size } = look;
  return (
    textWidth(pen, look.text(floatName(f.id)), { size, weight: 700 }) +
    textWidth(pen, heightOf(look, f), { size }) +
    24 +
    size * 0.6
  );
}

function names(pen: Pen, plan: FloatsPlan, look: CardsLook): void {
  const { size, text } = look;
  const b = plan.inside;
  const foot = b.y + b.height;
  const at = plan.y(look.intake_m);
  const style = { size, weight: 700, colour: INK, halo: 'rgba(246,240,225,0.85)' } as const;
  const point = (fx: number, fy: number, x: number, y: number, id: Message, align: 'left' | 'right' = 'right') => {
    if (align === 'right' && x - textWidth(pen, text(id), style) < look.view.x) return;
    const end = align === 'right' ? x + 5 : x - 5;
    lined(pen, `M${fx} ${fy}L${end} ${y - size * 0.3}`, { stroke: PAPER, width: 3, alpha: 0.7 }, { width: 1.2 });
    disc(pen, fx, fy, 2.8, { fill: INK });
    write(pen, text(id), x, y, { ...style, align });
  };
  const left = plan.pumpX - 68;
  point(plan.pumpX - 12, plan.dischargeY + 80, left, plan.dischargeY + 92, label('yard.floats.discharge'));
  point(plan.pumpX - 18, b.y + b.height * 0.42, left, b.y + b.height * 0.42 + 4, label('yard.floats.checkValve'));
  point(plan.pumpX - 34, foot - 104, left, foot - 106, label('yard.floats.pump'));
  point(plan.pumpX - 36, at, left, at + 4, label('yard.floats.intake'));
  const intake = text(length(look.intake_m - look.floor_m));
  if (left - textWidth(pen, intake, { size }) > look.view.x) {
    write(pen, intake, left, at + 4 + size * 1.15, {
      size: size * 0.94,
      align: 'right',
      halo: 'rgba(246,240,225,0.85)',
    });
  }
  const inlet = text(label('yard.floats.inlet'));
  const rise = text(length(look.inlet_m - look.floor_m));
  draw(pen, `M${b.x} ${plan.inletY}H${plan.rulerX}`, { stroke: ACTION, width: 1, dash: [3, 5], alpha: 0.7 });
  write(pen, `${inlet}  ${rise}`, plan.rulerX - 18, plan.inletY - 6, {
    size: size * 0.94,
    align: 'right',
    halo: 'rgba(239,231,210,0.9)',
  });
  // Over the inlet's name, which ends on the same side.
  const over = Math.min(b.y + size * 1.2, plan.inletY - 6 - size * 1.3);
  point(plan.treeX, over - 2, plan.treeX + 34, over + size * 0.2, label('yard.floats.tree'), 'left');
}

/** The level, read off the staff. */
function level(pen: Pen, plan: FloatsPlan, look: CardsLook, levelY: number): void {
  const { size, text } = look;
  const m = (plan.inside.y + plan.inside.height - levelY) / plan.perMetre;
  const said = text(length(m));
  const width = textWidth(pen, said, { size: size * 1.1, weight: 700 }) + 24;
  const top = Math.max(levelY, plan.inside.y + size * 5.4);
  const left = Math.max(plan.inside.x + 84, Math.min(look.view.x + 10, plan.treeX - 30));
  const b = box(left, top - size * 2.6, width, size * 1.8);
  shadowed(pen, () => rect(pen, b, 5, { fill: CARD }));
  rect(pen, b, 5, { width: 1.3 });
  write(pen, said, b.x + 12, b.y + size * 1.26, { size: size * 1.1, weight: 700 });
  draw(pen, `M${b.x + b.width / 2} ${b.y + b.height}V${top - 2}`, { width: 1.3 });
  draw(pen, `M${b.x + b.width / 2} ${top}l-4 -6h8z`, { fill: INK });
}

/** Clear tubes with what they brought up, numbered, thickness below. */
function cores(pen: Pen, plan: FloatsPlan, look: CardsLook): void {
  const { size, text } = look;
  const b = plan.inside;
  const foot = b.y + b.height;
  for (const [i, c] of look.chamber.cores.entries()) {
    const x = b.x + 24 + c.across * (plan.rulerX - b.x - 48);
    const h = Math.max(2, c.sludge_m * plan.perMetre);
    rect(pen, box(x - 8, foot - h - 70, 16, h + 70), 2, { fill: 'rgba(255,250,240,0.6)', stroke: INK, width: 1.4 });
    rect(pen, box(x - 8, foot - h, 16, h), 0, { fill: SLUDGE, stroke: INK, width: 1.1 });
    rect(pen, box(x - 8, foot - h, 16, Math.min(6, h)), 0, { fill: mix(SLUDGE, '#a08f78', 0.55) });
    draw(pen, `M${x - 15} ${foot - h}h30`, { stroke: CARD, width: 2 });
    const said = text(length(c.sludge_m));
    const width = textWidth(pen, said, { size, weight: 700 }) + size * 2.7;
    const chip = box(x - width / 2, foot + 3, width, size * 1.55);
    rect(pen, chip, size * 0.78, { fill: CARD, stroke: INK, width: 1.2 });
    disc(pen, chip.x + size * 0.85, chip.y + chip.height / 2, size * 0.58, { fill: ACTION });
    write(pen, String(i + 1), chip.x + size * 0.85, chip.y + chip.height / 2 + size * 0.29, {
      size: size * 0.84,
      weight: 700,
      align: 'center',
      colour: CARD,
    });
    write(pen, said, chip.x + size * 1.8, chip.y + size * 1.13, { size, weight: 700 });
  }
}
