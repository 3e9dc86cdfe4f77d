/** Boxes of a sheet as places on the screen: clipped to it, never smaller than a finger may miss. */
import type { Camera } from './camera.ts';
import { type Box, box } from './pen.ts';
import type { Spot } from './sheet.ts';
import type { Hotspot } from './types.ts';

/** Least side of a target, CSS pixels (WCAG 2.2, 2.5.8). */
const LEAST_TARGET = 24;

export function onScreen(b: Box, { view, now: { scale } }: Camera): Box {
  return box((b.x - view.x) * scale, (b.y - view.y) * scale, b.width * scale, b.height * scale);
}

export function toHotspots(spots: readonly Spot[], camera: Camera): readonly Hotspot[] {
  const { width, height } = camera;
  const found: Hotspot[] = [];
  for (const s of spots) {
    const b = onScreen(s.box, camera);
    let { x: x0, y: y0 } = b;
    let x1 = x0 + b.width;
    let y1 = y0 + b.height;
    if (Math.min(x1, width) - Math.max(x0, 0) < 12 || Math.min(y1, height) - Math.max(y0, 0) < 12) continue;
    x0 = Math.max(0, x0);
    y0 = Math.max(0, y0);
    x1 = Math.min(width, x1);
    y1 = Math.min(height, y1);
    const wide = Math.max(0, LEAST_TARGET - (x1 - x0));
    const high = Math.max(0, LEAST_TARGET - (y1 - y0));
    const left = Math.round(Math.min(Math.max(0, x0 - wide / 2), Math.max(0, width - (x1 - x0) - wide)));
    const top = Math.round(Math.min(Math.max(0, y0 - high / 2), Math.max(0, height - (y1 - y0) - high)));
    found.push({
      id: s.id,
      x: left,
      y: top,
      width: Math.ceil(x1 - x0 + wide),
      height: Math.ceil(y1 - y0 + high),
      label: s.label,
    });
  }
  return found;
}
