/** The staff on the wall of a tank, marked in whole units of the page. */

import type { FloatsPlan } from './floatsPlan.ts';
import { CARD, INK, PENCIL } from './ink.ts';
import { newPath } from './path.ts';
import { box, draw, type Pen, rect, write } from './pen.ts';
import type { Staff } from './types.ts';

/** How far up the staff reaches where the tank is deep enough, m. */
const TALLEST_m = 1.82;
const SOFT = '#5d5648';

export interface StaffMark {
  readonly m: number;
  readonly long: boolean;
  /** Count of units, where one is written. */
  readonly figure: number | null;
}

/** The marks above the foot and below `height_m`, from the lowest up. */
export function staffMarks(staff: Staff, height_m: number): readonly StaffMark[] {
  const marks: StaffMark[] = [];
  for (let n = staff.mark; n * staff.unit_m < height_m; n += staff.mark) {
    marks.push({ m: n * staff.unit_m, long: n % staff.long === 0, figure: n % staff.figure === 0 ? n : null });
  }
  return marks;
}

/** Stands on the foot of the box, from `rulerX` to its right side. */
export function paintStaff(
  pen: Pen,
  plan: Pick<FloatsPlan, 'inside' | 'perMetre' | 'rulerX'>,
  staff: Staff,
  seen: boolean,
  size: number,
): void {
  const b = plan.inside;
  const foot = b.y + b.height;
  const top = Math.max(b.y + 4, foot - TALLEST_m * plan.perMetre);
  const board = box(plan.rulerX, top, b.x + b.width - plan.rulerX, foot - top);
  rect(pen, board, 0, { fill: CARD, stroke: seen ? INK : PENCIL, width: 1.3, alpha: 0.86 });
  const ticks = newPath();
  for (const { m, long, figure } of staffMarks(staff, board.height / plan.perMetre)) {
    const y = foot - m * plan.perMetre;
    ticks.moveTo(board.x, y);
    ticks.lineTo(board.x + (figure !== null ? 12 : long ? 8 : 5), y);
    // The number alone: its unit stands on every card beside the staff.
    if (figure !== null && y > board.y + size * 0.6) {
      write(pen, String(figure), board.x + board.width - 3, y + size * 0.32, {
        size: size * 0.78,
        align: 'right',
        colour: seen ? INK : SOFT,
      });
    }
  }
  draw(pen, ticks, { stroke: seen ? INK : PENCIL, width: 1.1 });
}
