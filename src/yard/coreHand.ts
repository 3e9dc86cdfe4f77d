/** The gloved hand that holds the core tube up: the palm behind it, the fingers round it. */
import type { CorePlan } from './corePlan.ts';
import { INK, mix } from './ink.ts';
import { box, draw, type Pen, rect, within } from './pen.ts';

const GLOVE = '#6b9a82';
const SHADE = mix(GLOVE, '#2b2a26', 0.3);
const FINGER = 17;
/** How far each finger reaches round. */
const REACH = [64, 74, 72, 60] as const;

export function paintPalm(pen: Pen, plan: CorePlan): void {
  const { tube, board } = plan;
  const x = tube.x + tube.width;
  const y = tube.y;
  const inner = box(board.x + 8, board.y + 8, board.width - 16, board.height - 16);
  within(pen, inner, () => {
    // Sleeve, then cuff, then palm.
    draw(pen, `M${x + 96} ${y - 40}L${x + 52} ${y + 4}l44 36l60 -62z`, { fill: '#7b6a8c', stroke: INK, width: 2 });
    draw(pen, `M${x + 58} ${y - 8}l48 40l-22 22q-10 10 -22 -2l-24 -22q-10 -12 0 -20z`, {
      fill: SHADE,
      stroke: INK,
      width: 2,
    });
    const palm = `M${x + 42} ${y + 10}q18 8 28 34q-14 26 -40 34q-24 6 -44 0V${y + 14}q26 -12 56 -4z`;
    draw(pen, palm, { fill: GLOVE, stroke: INK, width: 2 });
    draw(pen, `M${x + 14} ${y + 24}q22 4 34 24`, { stroke: SHADE, width: 2.4 });
  });
}

export function paintFingers(pen: Pen, plan: CorePlan): void {
  const { tube } = plan;
  const right = tube.x + tube.width + 14;
  for (const [i, reach] of REACH.entries()) {
    const finger = box(right - reach, tube.y + 10 + i * (FINGER - 1), reach, FINGER);
    rect(pen, finger, FINGER / 2, { fill: GLOVE, stroke: INK, width: 1.9 });
    draw(pen, `M${finger.x + 10} ${finger.y + 5}h${reach - 30}`, { stroke: '#a9cbb8', width: 2.2, alpha: 0.8 });
    draw(pen, `M${finger.x + reach * 0.56} ${finger.y + 3}v${FINGER - 6}`, { stroke: SHADE, width: 1.3 });
  }
}
