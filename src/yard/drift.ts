/** Clouds on the wind: a cel wider than the view, moved by its place and painted anew only when it has run out of its width. */
import { Container } from 'pixi.js';
import { Cel } from './cel.ts';
import { PLATE_WIDTH } from './layout.ts';
import { type Box, box, type Pen } from './pen.ts';

/** Units of the plate a second for each m/s: clouds stand far off (convention). */
const PER_MS = 0.4;
/** What is painted beyond the view on either side, units. */
const SPARE = 64;

export class Drift {
  readonly root = new Container();
  readonly cel = new Cel();
  #wind_ms = 0;
  #scale = 1;
  /** How far they have gone, and had when they were painted, units. */
  #gone = 0;
  #painted = 0;
  #again: (() => void) | null = null;

  constructor() {
    this.root.addChild(this.cel.sprite);
  }

  /** `paint` gets how far all of them have gone. */
  show(area: Box, scale: number, key: string, wind_ms: number, paint: (pen: Pen, gone: number) => void): void {
    const wide = box(area.x - SPARE, area.y, area.width + 2 * SPARE, area.height);
    this.#wind_ms = wind_ms;
    this.#scale = scale;
    this.#again = () => {
      const gone = this.#painted;
      this.cel.show(wide, scale, `${key}|${gone}`, (pen) => paint(pen, gone));
    };
    this.#again();
  }

  hide(): void {
    this.#again = null;
    this.cel.hide();
  }

  step(dt: number): void {
    if (this.#again === null) return;
    this.#gone += dt * PER_MS * this.#wind_ms;
    if (Math.abs(this.#gone - this.#painted) > SPARE) {
      this.#painted = Math.round(this.#gone);
      this.#again();
    }
    // On whole pixels, which are copied and not smoothed.
    this.root.x = Math.round((this.#gone - this.#painted) * this.#scale) / this.#scale;
  }
}

/** Room beyond the plate on either side, in which clouds turn from one end to the other: wider than what a view has of it. */
const EDGE = 480;
/** The way round, units. */
export const ROUND = PLATE_WIDTH + 2 * EDGE;

/** Where something is that has come so far. */
export function around(x: number): number {
  return x - ROUND * Math.floor((x + EDGE) / ROUND);
}
