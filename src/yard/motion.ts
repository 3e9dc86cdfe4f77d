/** A thing that moves: bubbles, drops, spray. The yard steps those that have something to do and sleeps otherwise. */
import type { Container } from 'pixi.js';

export interface Mover {
  readonly root: Container;
  /** Moves on by `dt` seconds; `t` is the plate's own clock. Returns whether there is more to come. */
  step(t: number, dt: number): boolean;
}
