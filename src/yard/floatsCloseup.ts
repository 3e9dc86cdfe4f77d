import { Container } from 'pixi.js';
import type { Scene } from '../scene/types.ts';
import { box } from './pen.ts';
import type { Sheet, Spot } from './sheet.ts';
import type { Sparks } from './sparks.ts';
export class FloatsCloseup implements Sheet {
  readonly root = new Container();
  constructor(_s: Sparks) {}
  fit(_s: Scene, w: number, h: number) {
    return { limits: box(0, 0, w, h), home: { scale: 1, x: w / 2, y: h / 2 } };
  }
  print() {}
  step() {
    return false;
  }
  spots(): readonly Spot[] {
    return [];
  }
  stale() {}
  dispose() {}
}
