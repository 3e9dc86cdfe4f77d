/** Trash tank: what floats, what settles, and the two tees that keep both in. */
import type { ChamberScene } from '../scene/types.ts';
import {
  paintContentPencil,
  paintCores,
  paintNeckWater,
  paintScum,
  paintShellInk,
  paintShellPencil,
  paintSludge,
  paintWater,
} from './basin.ts';
import { INK, PAPER, PENCIL } from './ink.ts';
import type { Layout } from './layout.ts';
import { type Box, draw, type Pen, pipe, within } from './pen.ts';

function tees(pen: Pen, layout: Layout, line: string, wall: string): void {
  const t = layout.trash;
  const left = t.inside.x;
  const right = t.inside.x + t.inside.width;
  const dip = layout.perMetre * 0.42;
  for (const d of [
    `M${left} ${t.inletY}h22M${left + 22} ${t.inletY - 12}v${dip + 12}`,
    `M${right} ${t.outletY}h-20M${right - 20} ${t.outletY - 12}v${dip + 16}`,
  ]) {
    pipe(pen, d, 11, { line, wall });
  }
}

/** Where scum ends and sludge begins in such a tank, dashed: nobody has measured it. */
function unknownSolids(pen: Pen, inside: Box, scumY: number | null, sludge: boolean): void {
  const dashed = { stroke: PENCIL, width: 1, dash: [3, 5] };
  if (scumY !== null) draw(pen, `M${inside.x + 4} ${scumY + 8}H${inside.x + inside.width - 4}`, dashed);
  const b = inside.y + inside.height;
  if (sludge) draw(pen, `M${inside.x + 2} ${b - 34}q${inside.width * 0.36} -9 ${inside.width - 4} 0`, dashed);
}

export function paintTrashPencil(pen: Pen, layout: Layout): void {
  paintShellPencil(pen, layout.trash);
  const { inside } = layout.trash;
  paintContentPencil(pen, inside, layout.trash.outletY);
  tees(pen, layout, PENCIL, PAPER);
  unknownSolids(pen, inside, layout.trash.outletY, true);
}

export function paintTrashInk(pen: Pen, layout: Layout, c: ChamberScene, levelY: number | null): void {
  const t = layout.trash;
  paintShellInk(pen, t, 101, c.lid === 'open');
  within(pen, t.inside, () => {
    if (levelY === null) paintContentPencil(pen, t.inside, t.outletY);
    else {
      paintWater(pen, t.inside, levelY, c.water);
      if (c.sludge_m !== null) paintSludge(pen, t.inside, c.sludge_m * layout.perMetre);
      if (c.scum_m !== null) paintScum(pen, t.inside, Math.max(levelY, t.inside.y - 4), c.scum_m * layout.perMetre);
      unknownSolids(pen, t.inside, c.scum_m === null ? levelY : null, c.sludge_m === null);
    }
  });
  if (levelY !== null) paintNeckWater(pen, t.neck, t.inside.y, levelY, c.water, (c.scum_m ?? 0) * layout.perMetre);
  tees(pen, layout, INK, '#efe9da');
  paintCores(pen, t.inside, c.cores, layout.perMetre);
  draw(pen, `M${t.inside.x} ${t.inside.y}v${t.inside.height}h${t.inside.width}v${-t.inside.height}`, { width: 1.2 });
}
