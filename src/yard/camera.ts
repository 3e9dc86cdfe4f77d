/** Which part of a sheet is on the screen: fit, zoom, pan, and the way from one to the next. */
import { type Box, box } from './pen.ts';

export interface Frame {
  /** CSS pixels per unit, and the unit at the middle of the screen. */
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

/** Below this width the works do not fit legibly: a part of them is shown and one pans. */
export const NARROW = 860;

export class Camera {
  width = 1;
  height = 1;
  /** What may come into view at all. */
  limits: Box = box(0, 0, 1, 1);
  now: Frame = { scale: 1, x: 0, y: 0 };
  #from: Frame = this.now;
  #to: Frame = this.now;
  #way = 1;

  /** The visible box in units. */
  get view(): Box {
    return visible(this.now, this.width, this.height);
  }

  get target(): Frame {
    return this.#to;
  }

  get moving(): boolean {
    return this.#way < 1;
  }

  jump(to: Frame): void {
    this.#to = this.#kept(to);
    this.now = this.#to;
    this.#way = 1;
  }

  glide(to: Frame): void {
    this.#from = this.now;
    this.#to = this.#kept(to);
    this.#way = same(this.#from, this.#to) ? 1 : 0;
  }

  step(dt: number): boolean {
    if (this.#way >= 1) return false;
    this.#way = Math.min(1, this.#way + dt / 0.45);
    const k = this.#way * this.#way * (3 - 2 * this.#way);
    // Scale goes geometrically, so that a zoom looks even.
    const scale = this.#from.scale * (this.#to.scale / this.#from.scale) ** k;
    const spread = this.#to.scale - this.#from.scale;
    const share = Math.abs(spread) < 1e-6 ? k : ((scale - this.#from.scale) / spread) * (this.#to.scale / scale);
    this.now = {
      scale,
      x: this.#from.x + (this.#to.x - this.#from.x) * share,
      y: this.#from.y + (this.#to.y - this.#from.y) * share,
    };
    if (this.#way >= 1) this.now = this.#to;
    return this.#way < 1;
  }

  /** Keeps the frame within the limits; where the sheet is smaller than the screen it stays in the middle. */
  #kept(f: Frame): Frame {
    const hold = (at: number, size: number, from: number, span: number) => {
      const half = size / f.scale / 2;
      return span <= half * 2 ? from + span / 2 : Math.min(from + span - half, Math.max(from + half, at));
    };
    return {
      scale: f.scale,
      x: hold(f.x, this.width, this.limits.x, this.limits.width),
      y: hold(f.y, this.height, this.limits.y, this.limits.height),
    };
  }
}

export function visible(f: Frame, width: number, height: number): Box {
  return box(f.x - width / f.scale / 2, f.y - height / f.scale / 2, width / f.scale, height / f.scale);
}

function same(a: Frame, b: Frame): boolean {
  return Math.abs(a.scale - b.scale) < 1e-4 && Math.abs(a.x - b.x) < 0.05 && Math.abs(a.y - b.y) < 0.05;
}

/** Whether a box lies within another, half a unit allowed. */
export function holds(outer: Box, inner: Box): boolean {
  return (
    inner.x >= outer.x - 0.5 &&
    inner.y >= outer.y - 0.5 &&
    inner.x + inner.width <= outer.x + outer.width + 0.5 &&
    inner.y + inner.height <= outer.y + outer.height + 0.5
  );
}

/** The least box round two. */
export function union(a: Box, b: Box): Box {
  const x = Math.min(a.x, b.x);
  const y = Math.min(a.y, b.y);
  return box(x, y, Math.max(a.x + a.width, b.x + b.width) - x, Math.max(a.y + a.height, b.y + b.height) - y);
}
