/** A sheet is one drawing the camera can look at: the whole works, or a close-up. */
import type { Container } from 'pixi.js';
import type { ControlId } from '../calls/view.ts';
import type { PartId, Scene } from '../scene/types.ts';
import type { Message } from '../service/message.ts';
import type { Frame } from './camera.ts';
import type { Box } from './pen.ts';
import type { Staff } from './types.ts';

/** What a sheet is painted for. */
export interface Print {
  readonly scene: Scene;
  /** What has to be there, in units of the sheet: the screen and some way round it. */
  readonly area: Box;
  /** What is on the screen, or will be when the camera stands. */
  readonly view: Box;
  /** CSS pixels per unit, and device pixels per unit. */
  readonly unit: number;
  readonly scale: number;
  readonly text: (m: Message) => string;
  readonly staff: Staff;
  readonly selected: PartId | null;
  /** No motion: values stand where they go. */
  readonly still: boolean;
}

export interface Spot {
  readonly id: PartId | ControlId;
  readonly box: Box;
  readonly label: Message;
}

export interface Sheet {
  readonly root: Container;
  /** Lays out for a screen, CSS pixels; gives what may be looked at and the frame to start from. */
  fit(scene: Scene, width: number, height: number): { readonly limits: Box; readonly home: Frame };
  print(p: Print): void;
  /** One frame of motion; false when nothing moves any more. */
  step(t: number, dt: number): boolean;
  spots(): readonly Spot[];
  /** What its words cover that keep to the screen, units of the sheet. */
  labels(): readonly Box[];
  /** Figures that stand on it and nowhere else on the page. */
  told?(): readonly (readonly [name: Message, value: Message])[];
  stale(): void;
  dispose(): void;
}

/** A short key of plain values: numbers to three figures, which is finer than the drawing. */
export function keyOf(value: unknown): string {
  return JSON.stringify(value, (_, v: unknown) => (typeof v === 'number' ? Number(v.toPrecision(3)) : v));
}
