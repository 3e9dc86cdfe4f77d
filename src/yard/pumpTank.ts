/** Pump tank: treated water, the float tree, the pump and the start of its discharge. */
import type { ChamberScene, PumpScene } from '../scene/types.ts';
import {
  paintContentPencil,
  paintCores,
  paintNeckWater,
  paintShellInk,
  paintShellPencil,
  paintSludge,
  paintWater,
} from './basin.ts';
import { INK, PAPER, PENCIL } from './ink.ts';
import type { Layout } from './layout.ts';
import { box, draw, fade, type Pen, pipe, rect, within } from './pen.ts';

/** Path of the discharge from the pump to the disc filter. */
function dischargePath(layout: Layout): string {
  const { inside } = layout.pump;
  const top = inside.y + inside.height - 74;
  return `M${layout.pumpX} ${top}V${layout.dischargeY + 9}q0 -9 9 -9H${layout.discFilter.x + 3}`;
}

export function paintPumpTankPencil(pen: Pen, layout: Layout): void {
  paintShellPencil(pen, layout.pump);
  // Half full stands for "somewhere": no true level is in it.
  paintContentPencil(pen, layout.pump.inside, layout.pump.inside.y + layout.pump.inside.height * 0.42);
  draw(pen, `M${layout.treeX} ${layout.pump.inside.y + 8}V${layout.pump.inside.y + layout.pump.inside.height - 14}`, {
    stroke: PENCIL,
    width: 2,
  });
}

export function paintPumpTankInk(pen: Pen, layout: Layout, c: ChamberScene, levelY: number | null): void {
  const t = layout.pump;
  paintShellInk(pen, t, 303, c.lid === 'open');
  within(pen, t.inside, () => {
    if (levelY === null) paintContentPencil(pen, t.inside, t.inside.y + t.inside.height * 0.42);
    else {
      paintWater(pen, t.inside, levelY, c.water);
      if (c.sludge_m !== null) paintSludge(pen, t.inside, c.sludge_m * layout.perMetre, 0.4);
      if (c.scum_m !== null && c.scum_m > 0) {
        rect(pen, box(t.inside.x, levelY - 2, t.inside.width, c.scum_m * layout.perMetre + 2), 1, {
          fill: '#6b5637',
          stroke: INK,
          width: 0.8,
        });
      }
    }
  });
  if (levelY !== null) paintNeckWater(pen, t.neck, t.inside.y, levelY, c.water, 0);
  paintCores(pen, t.inside, c.cores, layout.perMetre);
  tree(pen, layout);
  draw(pen, `M${t.inside.x} ${t.inside.y}v${t.inside.height}h${t.inside.width}v${-t.inside.height}`, { width: 1.2 });
}

function tree(pen: Pen, layout: Layout): void {
  const { inside } = layout.pump;
  const x = layout.treeX;
  draw(pen, `M${x} ${inside.y + 6}V${inside.y + inside.height - 8}`, { width: 5.4 });
  draw(pen, `M${x} ${inside.y + 7}V${inside.y + inside.height - 9}`, { stroke: '#d9d2bf', width: 2.8 });
  draw(pen, `M${x - 11} ${inside.y + inside.height - 2}l5 -7h12l5 7z`, { fill: '#a8a294', width: 1.3 });
  draw(pen, `M${x} ${inside.y + 9}H${inside.x + inside.width * 0.5 + 12}`, { width: 2.4 });
}

/** The pump's foot stands on the floor; its intake slots sit at their true height. */
export function paintPump(pen: Pen, layout: Layout, pump: PumpScene, ink: boolean): void {
  const { inside } = layout.pump;
  const x = layout.pumpX;
  const floor = inside.y + inside.height;
  const line = ink ? INK : PENCIL;
  const path = dischargePath(layout);
  pipe(pen, path, 10, { line, wall: ink ? '#e6e2d4' : PAPER });
  const body = box(x - 19, floor - 62, 38, 54);
  const metal = ink
    ? fade(pen, body.y, floor, [
        [0, '#5f8597'],
        [1, '#35505e'],
      ])
    : PAPER;
  rect(pen, box(x - 13, floor - 74, 26, 13), 4, { fill: ink ? '#2f4a58' : PAPER, stroke: line, width: 1.5 });
  rect(pen, body, 8, { fill: metal, stroke: line, width: 1.8 });
  draw(pen, `M${x - 13} ${floor - 8}v6h7v-6M${x + 6} ${floor - 8}v6h7v-6`, { fill: metal, stroke: line, width: 1.3 });
  if (!ink) return;
  const intake = layout.y(pump.intake_m);
  draw(pen, `M${x - 15} ${floor - 56}v36`, { stroke: '#c9dbdc', width: 1.6, alpha: 0.5 });
  draw(pen, `M${x - 19} ${floor - 46}h38M${x - 19} ${floor - 41}h38`, { width: 1, alpha: 0.6 });
  const slots = Array.from({ length: 8 }, (_, i) => `M${x - 15 + i * 4.3} ${intake - 6}v12`).join('');
  draw(pen, slots, { stroke: '#1f2f38', width: 2.2, cap: 'butt' });
  // The cord leaves through the riser; nobody lifts a pump by it.
  draw(
    pen,
    `M${x + 10} ${floor - 70}C${x + 26} ${floor - 110} ${x + 6} ${inside.y + 74} ${x + 17} ${inside.y + 28}S${x - 22} ${inside.y + 4} ${x - 26} ${inside.y - 26}`,
    {
      stroke: '#3a3730',
      width: 2.2,
    },
  );
}
