/** What the same tube brought out of the pump tank: one core for each spot, their average, and its limit. */
import type { ChamberScene } from '../scene/types.ts';
import { ACTION, ALARM, CARD, INK, SLUDGE } from './ink.ts';
import { type Box, box, disc, draw, type Pen, rect, shadowed, stipple, within, wrap, write } from './pen.ts';
import type { PlateWords } from './plate.ts';
import { label, thickness } from './plateMessages.ts';
import { isCut } from './plateWords.ts';

const CARD_BOX = box(1006, 280, 160, 216);
const TUBE = { wide: 26, top: 82, foot: 56 } as const;
const SOFT = '#5d5648';

export function paintPumpCores(
  pen: Pen,
  w: PlateWords,
  cores: ChamberScene['cores'],
  perMetre: number,
  limit_m: number,
): void {
  const { size, text } = w;
  const b = CARD_BOX;
  if (isCut(b, w.view)) return;
  shadowed(pen, () => rect(pen, b, 6, { fill: CARD }));
  rect(pen, b, 6, { width: 1.3 });
  for (const [i, line] of wrap(pen, text(label('plate.core.cores')), b.width - 20, { size, weight: 700 }).entries()) {
    write(pen, line, b.x + 10, b.y + size * (1.35 + 1.2 * i), { size, weight: 700 });
  }
  const foot = b.y + b.height - TUBE.foot;
  const top = b.y + TUBE.top;
  const step = b.width / cores.length;
  for (const [i, { sludge_m }] of cores.entries()) {
    core(pen, w, box(b.x + step * (i + 0.5) - TUBE.wide / 2, top, TUBE.wide, foot - top), sludge_m * perMetre, i);
    const said = { size: size * 0.84, weight: 700, align: 'center' } as const;
    write(pen, text(thickness(sludge_m)), b.x + step * (i + 0.5), foot + size * 1.05, said);
  }
  // Beside the limit the average counts, not one core.
  const mean_m = cores.reduce((sum, one) => sum + one.sludge_m, 0) / cores.length;
  const y = foot - limit_m * perMetre;
  draw(pen, `M${b.x + 8} ${y}h${b.width - 16}`, { stroke: ALARM, width: 2, dash: [7, 4], cap: 'butt' });
  const mean = foot - mean_m * perMetre;
  draw(pen, `M${b.x + 8} ${mean}h${b.width - 16}`, { stroke: ACTION, width: 2 });
  write(pen, text(label('plate.core.mean')), b.x + 10, foot + size * 2.35, { size: size * 0.9, colour: SOFT });
  write(pen, text(thickness(mean_m)), b.x + b.width - 10, foot + size * 2.35, {
    size: size * 0.9,
    weight: 700,
    align: 'right',
  });
}

function core(pen: Pen, { size }: PlateWords, tube: Box, high: number, index: number): void {
  const column = Math.min(high, tube.height);
  const foot = tube.y + tube.height;
  rect(pen, tube, 2, { fill: '#e8f1ee' });
  const sludge = box(tube.x, foot - column, tube.width, column);
  rect(pen, sludge, 0, { fill: SLUDGE });
  within(pen, sludge, () => stipple(pen, sludge, 71 + index, 30));
  rect(pen, tube, 2, { stroke: INK, width: 1.6 });
  draw(pen, `M${tube.x} ${foot - column}h${tube.width}`, { width: 1.6 });
  draw(pen, `M${tube.x + 6} ${tube.y + 8}V${foot - 10}`, { stroke: '#ffffff', width: 2.6, alpha: 0.7 });
  const [x, y] = [tube.x + tube.width / 2, tube.y - 12];
  disc(pen, x, y, size * 0.62, { fill: ACTION });
  write(pen, String(index + 1), x, y + size * 0.3, { size: size * 0.86, weight: 700, align: 'center', colour: CARD });
}
