/** The house in section: what drains into the works, a lit window at night, the vent on the roof. */

import { INK, mix, PENCIL } from './ink.ts';
import type { Layout } from './layout.ts';
import { newPath } from './path.ts';
import { box, draw, hatch, lined, type Pen, pipe, rect, stipple, within } from './pen.ts';

const GABLE = 'M-10 -114L92 -164L194 -112V0H-10Z';

/** House, roof and vent as one shape. */
export const HOUSE_OUTLINE =
  'M-10 11V-108L-26 -100L-22 -112L92 -173L164 -135V-163H172V-130L208 -111L205 -103L196 -108V11Z';

export interface HouseLook {
  readonly backingUp: boolean;
  readonly rimY: number;
}

/** The outline everybody knows of a house one has not been in. */
export function paintHousePencil(pen: Pen): void {
  shell(pen, { line: PENCIL, wall: '#f6f0e1', roof: PENCIL, pencil: true });
  fixtures(pen, { line: PENCIL, ware: '#f6f0e1', pipe: PENCIL, water: null });
}

export function paintHouseInk(pen: Pen, layout: Layout, look: HouseLook): void {
  shell(pen, { line: INK, wall: '#fbf6e8', roof: '#8a4b33', pencil: false });
  fixtures(pen, { line: INK, ware: '#e7ecea', pipe: '#6f6a5e', water: look.backingUp ? '#8a7f58' : '#6fa6ad' });
  if (look.backingUp) backUp(pen, layout, look);
}

function shell(pen: Pen, c: { line: string; wall: string; roof: string; pencil: boolean }): void {
  draw(pen, GABLE, { fill: c.wall, stroke: c.line, width: 1.6 });
  const siding = newPath();
  within(pen, newPath(GABLE), () => {
    for (let y = -150; y < 0; y += 9) {
      siding.moveTo(-10, y);
      siding.lineTo(194, y);
    }
    draw(pen, siding, { stroke: c.pencil ? PENCIL : '#cdbd98', width: 0.7, alpha: c.pencil ? 0.28 : 0.7 });
    if (!c.pencil) hatch(pen, box(160, -130, 36, 130), 4, -26, { stroke: '#b79f74', width: 0.6, alpha: 0.5 });
  });
  draw(pen, 'M-10 -66H194', { stroke: c.line, width: 1, alpha: 0.4 });
  lined(
    pen,
    'M-22 -110L92 -170L206 -108',
    { stroke: c.line, width: 7.4, cap: 'butt' },
    { stroke: c.pencil ? '#f6f0e1' : c.roof, width: 4.6, cap: 'butt' },
  );
  draw(pen, 'M168 3V-163', { stroke: c.line, width: 8, cap: 'butt' });
  draw(pen, 'M168 3V-162', { stroke: c.pencil ? '#f6f0e1' : '#8d877a', width: 5, cap: 'butt' });
  const floor = box(-10, -3, 206, 14);
  rect(pen, floor, 0, { fill: c.pencil ? '#ece4cf' : '#d6d2c6' });
  if (!c.pencil) stipple(pen, floor, 41);
  rect(pen, floor, 0, { stroke: c.line, width: 1.5 });
  if (c.pencil)
    within(pen, newPath(GABLE), () =>
      hatch(pen, box(-10, -170, 204, 170), 9, -120, { stroke: PENCIL, width: 0.7, alpha: 0.22 }),
    );
}

function fixtures(pen: Pen, c: { line: string; ware: string; pipe: string; water: string | null }): void {
  const s = { fill: c.ware, stroke: c.line, width: 1.5 };
  lined(
    pen,
    'M66 -3V12M152 -34V12',
    { stroke: c.line, width: 7, cap: 'butt' },
    { stroke: c.pipe, width: 4.4, cap: 'butt' },
  );
  draw(pen, 'M42 -58h17v27h25q2 17-13 21v8H54v-11q-12-6-12-21z', s);
  draw(pen, 'M60 -30h23', { stroke: c.line, width: 1.1 });
  draw(pen, 'M46 -52h9M46 -36h9', { stroke: c.line, width: 0.8, alpha: 0.6 });
  draw(pen, 'M98 -62h42l-6 15h-30zM118 -62v-9q0-4 5-4h5', s);
  lined(
    pen,
    'M119 -47v15q0 11 11 11t11-11v-3h11v9',
    { stroke: c.line, width: 6, cap: 'butt' },
    { stroke: c.pipe, width: 3.6, cap: 'butt' },
  );
  if (c.water !== null) draw(pen, 'M119 -33q0 12 11 12t11-12', { stroke: c.water, width: 3 });
  rect(pen, box(2, -48, 32, 45), 3, s);
  draw(pen, 'M2 -40h32', { stroke: c.line, width: 1 });
  draw(pen, 'M28 -22a10 10 0 1 1 -20 0a10 10 0 1 1 20 0z', {
    fill: c.water === null ? '#f6f0e1' : '#c9dbdc',
    stroke: c.line,
    width: 1.4,
  });
  draw(pen, 'M10 -20q4-3 8 0t8 0', { stroke: c.water ?? PENCIL, width: 1.4 });
  // A window with a cross stands for the rooms above.
  rect(pen, box(76, -110, 36, 34), 1, { fill: c.water === null ? '#f6f0e1' : '#cfe0de', stroke: c.line, width: 1.5 });
  draw(pen, 'M94 -110v34M76 -94h36', { stroke: c.line, width: 1.2 });
  if (c.water !== null)
    draw(pen, 'M77.5 -108.500h6q-2 14-6 20zM110.5 -108.500h-6q2 14 6 20z', { fill: '#b7623f', alpha: 0.8 });
}

/** Sewage in the lowest fixture. */
function backUp(pen: Pen, layout: Layout, look: HouseLook): void {
  const y = Math.min(-8, look.rimY);
  draw(pen, `M57 ${y - 4}q6 -3 12 0t14 0q-1 12 -12 16h-10q-5 -6 -4 -16z`, { fill: '#8a7f58', stroke: INK, width: 1 });
  draw(pen, `M20 -3q30 -6 74 0z`, { fill: mix('#8a7f58', '#4b3b28', 0.2), stroke: INK, width: 1 });
  draw(pen, `M${layout.cleanOuts[0] - 150} -4q20 -4 34 0`, { stroke: INK, width: 0.8 });
}

/** The sewer from the house through the clean-out pair to the trash tank. */
export function paintSewer(pen: Pen, layout: Layout, lining: string): void {
  const t = layout.trash;
  const y = t.inletY;
  const start = y - (t.inside.x - 40) * 0.045;
  pipe(pen, `M-200 ${start - 8}L60 ${start}L${t.inside.x + 2} ${y}`, 15, { lining });
  lined(
    pen,
    `M66 11V${start - 4}M152 11V${start + 4}`,
    { width: 8, cap: 'butt' },
    { stroke: '#8d877a', width: 5.2, cap: 'butt' },
  );
}
