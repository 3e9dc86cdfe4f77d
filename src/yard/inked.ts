/** A part as two cels: its generic pencil section, and the ink of what was seen laid over it. */
import { Container } from 'pixi.js';
import type { Ink } from '../scene/types.ts';
import { Cel } from './cel.ts';
import { inkShare } from './ink.ts';
import type { Box, Pen } from './pen.ts';

export class Inked {
  readonly root = new Container();
  readonly #pencil = new Cel();
  readonly #ink = new Cel();

  constructor() {
    this.root.addChild(this.#pencil.sprite, this.#ink.sprite);
  }

  /** The pencil painter gets no scene, so no state can show through it. */
  show(
    area: Box,
    scale: number,
    ink: Ink,
    pencil: { readonly key: string; readonly paint: (pen: Pen) => void },
    inked: { readonly key: string; readonly paint: (pen: Pen) => void },
  ): void {
    const share = inkShare(ink);
    if (share < 1) this.#pencil.show(area, scale, pencil.key, pencil.paint);
    else this.#pencil.hide();
    if (share > 0) {
      this.#ink.show(area, scale, inked.key, inked.paint);
      this.#ink.sprite.alpha = share;
    } else this.#ink.hide();
  }

  stale(): void {
    this.#pencil.stale();
    this.#ink.stale();
  }
}
