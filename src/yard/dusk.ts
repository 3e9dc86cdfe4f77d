/** The dark that lies over what stands on the lawn and in the ground, and leaves the sky free: part of the open air. */
import { Container, Graphics } from 'pixi.js';
import { Cel } from './cel.ts';
import { HOUSE_OUTLINE } from './house.ts';
import { LAWN_FOOT, type Layout } from './layout.ts';
import { newPath } from './path.ts';
import { type Box, box, draw, type Pen } from './pen.ts';
import type { Print } from './sheet.ts';
import { farHill, nearHill, paintTreeShapes } from './sky.ts';

const NIGHT = '#121a2c';
/** With fewer of its leaves a crown lets the sky through. */
const MOST_LEAVES = 0.5;

export class Dusk {
  /** Over the land behind the works, and over what stands in front of it. */
  readonly far = new Container();
  readonly near = new Cel();
  readonly #land = new Cel();
  readonly #soil = new Graphics();

  constructor() {
    this.far.addChild(this.#land.sprite, this.#soil);
  }

  /** `dark` 0 by day to 1 in a night without a moon; `leaves` the share of them that the trees have. */
  print(layout: Layout, { area, scale }: Print, dark: number, leaves: number): void {
    this.far.visible = dark > 0.02;
    this.near.sprite.visible = dark > 0.02;
    if (dark <= 0.02) return;
    const above = box(area.x, area.y, area.width, Math.max(1, LAWN_FOOT - area.y));
    const inLeaf = leaves > MOST_LEAVES;
    // Flat shapes: half the resolution is plenty.
    for (const cel of [this.#land, this.near]) {
      cel.show(above, scale * 0.5, `${inLeaf}`, (pen) => paintLand(pen, above, layout, inLeaf));
    }
    this.#land.sprite.alpha = 0.4 * dark;
    this.near.sprite.alpha = 0.44 * dark;
    const grade = Math.max(area.y, LAWN_FOOT);
    this.#soil
      .clear()
      .rect(area.x, grade, area.width, Math.max(0, area.y + area.height - grade))
      .fill({ color: 0x141b2b, alpha: 0.56 * dark });
  }

  stale(): void {
    this.#land.stale();
    this.near.stale();
  }
}

/** Hills, trees, house and panel in the one dark. */
function paintLand(pen: Pen, view: Box, { panel }: Layout, inLeaf: boolean): void {
  const [left, right] = [Math.min(view.x, -200), Math.max(view.x + view.width, 1640)];
  const land = newPath(farHill(left, right, LAWN_FOOT));
  draw(pen, nearHill(left, right, LAWN_FOOT), { fill: NIGHT });
  paintTreeShapes(pen, NIGHT, inLeaf);
  land.addPath(newPath(HOUSE_OUTLINE));
  land.addPath(
    newPath(
      `M${panel.x - 9} ${panel.y - 1}l10 -11h${panel.width - 2}l10 11h-9v${panel.height + 40}h-${panel.width}v-${panel.height + 40}z`,
    ),
  );
  draw(pen, land, { fill: NIGHT });
}
