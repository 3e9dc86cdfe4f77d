/** The five chambers, each in pencil or ink, with levels that glide to where the scene has them. */
import { Container } from 'pixi.js';
import type { ChamberId, ChamberScene } from '../scene/types.ts';
import { paintAerationInk, paintAerationPencil, paintClarifierInk, paintClarifierPencil } from './aeration.ts';
import type { Eased } from './eased.ts';
import { Inked } from './inked.ts';
import type { Layout } from './layout.ts';
import { type Box, box, overlap, type Pen } from './pen.ts';
import { paintPumpTankInk, paintPumpTankPencil } from './pumpTank.ts';
import { paintRiserInk, paintRiserPencil } from './riser.ts';
import { keyOf, type Print } from './sheet.ts';
import { paintTrashInk, paintTrashPencil } from './trashTank.ts';

interface Painters {
  readonly area: (l: Layout) => Box;
  readonly pencil: (pen: Pen, l: Layout) => void;
  readonly ink: (pen: Pen, l: Layout, c: ChamberScene, levelY: number | null) => void;
}

const room = (b: Box, right = 70): Box => box(b.x - 12, b.y - 66, b.width + 24 + right, b.height + 72);

const PAINTERS: Readonly<Record<ChamberId, Painters>> = {
  'trash-tank': { area: (l) => room(l.parts['trash-tank']), pencil: paintTrashPencil, ink: paintTrashInk },
  aeration: { area: (l) => room(tankBox(l)), pencil: paintAerationPencil, ink: paintAerationInk },
  clarifier: {
    area: (l) => {
      const c = l.clarifier;
      return box(c.left - 14, c.top - 6, c.right - c.left + 28, c.tip - c.top + 30);
    },
    pencil: paintClarifierPencil,
    ink: paintClarifierInk,
  },
  disinfection: { area: (l) => room(l.parts.disinfection, 30), pencil: paintRiserPencil, ink: paintRiserInk },
  'pump-tank': { area: (l) => room(l.parts['pump-tank']), pencil: paintPumpTankPencil, ink: paintPumpTankInk },
};

function tankBox(l: Layout): Box {
  const a = l.parts.aeration;
  const c = l.parts.clarifier;
  return box(a.x, a.y, c.x + c.width - a.x, a.height);
}

export class Chambers {
  readonly root = new Container();
  readonly #all = new Map<ChamberId, Inked>();

  constructor() {
    for (const id of Object.keys(PAINTERS) as ChamberId[]) {
      const inked = new Inked();
      this.#all.set(id, inked);
      this.root.addChild(inked.root);
    }
  }

  print(layout: Layout, p: Print, eased: Eased): void {
    for (const [id, inked] of this.#all) {
      const c = p.scene.chambers[id];
      const painters = PAINTERS[id];
      const area = painters.area(layout);
      inked.root.visible = overlap(area, p.area);
      if (!inked.root.visible) continue;
      const level = eased.get(id);
      const y = level === null ? null : layout.y(level);
      const { ink: _ink, level_m: _level, bubbles_Lmin: _air, ...look } = c;
      inked.show(
        area,
        p.scale,
        c.ink,
        { key: `${layout.perMetre}`, paint: (pen) => painters.pencil(pen, layout) },
        {
          key: `${layout.perMetre}|${y?.toFixed(1)}|${keyOf(look)}`,
          paint: (pen) => painters.ink(pen, layout, c, y),
        },
      );
    }
  }

  stale(): void {
    for (const i of this.#all.values()) i.stale();
  }
}
