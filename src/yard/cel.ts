/**
 * A cel: one sheet painted on a 2D canvas and shown as a sprite. It is painted again only when its key or its scale
 * changes, so a frame costs one copy of it. The canvas stays, so a lost graphics context loses nothing.
 */
import { CanvasSource, Sprite, Texture } from 'pixi.js';
import type { Box, Pen } from './pen.ts';

/** Longest side of a cel in device pixels: every graphics chip still in use takes it. */
const LONGEST = 4096;

/** The cel that a sprite shows, for who draws it again elsewhere. */
export const celOf = new WeakMap<Sprite, Cel>();

export class Cel {
  readonly sprite = new Sprite(Texture.EMPTY);
  #canvas: HTMLCanvasElement | null = null;
  #key = '';
  /** How it was painted last, and on what area. */
  paint: ((pen: Pen) => void) | null = null;
  area: Box | null = null;

  constructor() {
    celOf.set(this.sprite, this);
  }

  /** Paints if anything changed. `scale` is device pixels per unit; the sprite lands on whole pixels of it. */
  show(area: Box, scale: number, key: string, paint: (pen: Pen) => void): boolean {
    const k = Math.min(scale, LONGEST / Math.max(area.width, area.height));
    const left = Math.floor(area.x * k);
    const top = Math.floor(area.y * k);
    const width = Math.max(1, Math.ceil((area.x + area.width) * k) - left);
    const height = Math.max(1, Math.ceil((area.y + area.height) * k) - top);
    const whole = `${key}|${k}|${left}|${top}|${width}|${height}`;
    this.sprite.visible = true;
    if (whole === this.#key) return false;
    this.#key = whole;
    this.paint = paint;
    this.area = area;
    const canvas = this.#fit(width, height);
    const pen = canvas.getContext('2d');
    if (pen === null) return false;
    pen.setTransform(1, 0, 0, 1, 0, 0);
    pen.clearRect(0, 0, width, height);
    pen.setTransform(k, 0, 0, k, -left, -top);
    paint(pen);
    this.sprite.texture.source.update();
    this.sprite.position.set(left / k, top / k);
    this.sprite.scale.set(1 / k);
    return true;
  }

  hide(): void {
    this.sprite.visible = false;
  }

  /** Forgets what was painted: fonts came in, the language changed, the graphics context came back. */
  stale(): void {
    this.#key = '';
  }

  dispose(): void {
    if (this.sprite.texture !== Texture.EMPTY) this.sprite.texture.destroy(true);
    this.sprite.destroy();
  }

  #fit(width: number, height: number): HTMLCanvasElement {
    if (this.#canvas !== null && this.#canvas.width === width && this.#canvas.height === height) return this.#canvas;
    const canvas = document.createElement('canvas');
    canvas.width = width;
    canvas.height = height;
    const old = this.sprite.texture;
    this.sprite.texture = new Texture({ source: new CanvasSource({ resource: canvas }) });
    if (old !== Texture.EMPTY) old.destroy(true);
    this.#canvas = canvas;
    return canvas;
  }
}
