/** The drip field in section: header, two lines of emitters under the lawn, and the soil they wet. */

import type { Drip, DripZone } from './dripLayout.ts';
import { noise } from './hash.ts';
import { CARD, INK, PAPER, PENCIL, PURPLE } from './ink.ts';
import { newPath } from './path.ts';
import { box, disc, draw, type Pen, pipe, rect } from './pen.ts';

/** Deepest reach of wet soil below a line, units of the plate. */
const WET_REACH = 30;

function headerPath({ start: [x, y], headerY, lineY, zones }: Drip): string {
  const last = zones[zones.length - 1];
  const to = last === undefined ? x : last.from;
  const down = `M${x - 3} ${y}h9q8 0 8 8V${headerY - 8}q0 8 8 8H${to - 8}q8 0 8 -8V${lineY}`;
  const others = zones.slice(0, -1).map((z) => `M${z.from} ${headerY}V${lineY}`);
  return [down, ...others].join('');
}

export function paintDripPencil(pen: Pen, drip: Drip): void {
  pipe(pen, headerPath(drip), 8, { line: PENCIL, wall: PAPER });
  for (const zone of drip.zones) {
    draw(pen, `M${zone.from} ${drip.lineY}H${zone.to}`, { stroke: PENCIL, width: 6.4, cap: 'butt' });
    draw(pen, `M${zone.from} ${drip.lineY}H${zone.to}`, { stroke: PAPER, width: 4, cap: 'butt' });
    for (const x of zone.emitters) disc(pen, x, drip.lineY, 1.7, { stroke: PENCIL, width: 1 });
    vent(pen, zone, drip.lineY, false);
  }
}

/** `wet` is the share of its water the field gets, 0 to 1: so far the soil round each emitter is wet. */
export function paintDripInk(pen: Pen, drip: Drip, wet: number): void {
  if (wet > 0) for (const [i, zone] of drip.zones.entries()) bulbs(pen, drip, zone, wet, i);
  pipe(pen, headerPath(drip), 8, { lining: wet > 0 ? '#8fbfc3' : '#cfc6b2' });
  for (const zone of drip.zones) {
    const line = `M${zone.from - 3} ${drip.lineY}H${zone.to}`;
    draw(pen, line, { stroke: INK, width: 7, cap: 'butt' });
    draw(pen, line, { stroke: PURPLE, width: 4.6, cap: 'butt' });
    draw(pen, `M${zone.from} ${drip.lineY - 1.2}H${zone.to}`, { stroke: CARD, width: 0.9, alpha: 0.5, cap: 'butt' });
    for (const x of zone.emitters) {
      disc(pen, x, drip.lineY, 2.3, { fill: '#4b483f', stroke: CARD, width: 0.9 });
      if (wet > 0.05) drop(pen, x, drip.lineY + 7.5);
    }
    vent(pen, zone, drip.lineY, true);
  }
}

/** The air vent at the end of a zone, its purple cap level with the lawn. */
function vent(pen: Pen, { to }: DripZone, lineY: number, ink: boolean): void {
  const line = ink ? INK : PENCIL;
  draw(pen, `M${to} ${lineY + 2.4}V3`, { stroke: line, width: 6, cap: 'butt' });
  draw(pen, `M${to} ${lineY + 2.4}V3`, { stroke: ink ? '#e6e2d4' : PAPER, width: 3.6, cap: 'butt' });
  rect(pen, box(to - 7, -3, 14, 7), 2.5, { fill: ink ? PURPLE : PAPER, stroke: line, width: 1.2 });
}

/** Wet soil is darker soil: an onion below each emitter, wider and deeper with more water, in two tones. */
function bulbs(pen: Pen, { lineY }: Drip, { emitters }: DripZone, wet: number, zone: number): void {
  const r = noise(720 + zone);
  const outer = newPath();
  const inner = newPath();
  for (const x of emitters) {
    const uneven = 0.88 + 0.24 * r();
    onion(outer, x, lineY, (4 + 6 * wet) * uneven, (8 + (WET_REACH - 8) * wet) * uneven);
    onion(inner, x, lineY, (2.5 + 2.5 * wet) * uneven, (5 + 14 * wet) * uneven);
  }
  draw(pen, outer, { fill: '#2b1a0c', alpha: 0.42 });
  draw(pen, inner, { fill: '#16303c', alpha: 0.5 });
}

function onion(p: Path2D, x: number, y: number, half: number, deep: number): void {
  p.moveTo(x, y - half * 0.5);
  p.bezierCurveTo(x + half * 1.5, y - half * 0.3, x + half, y + deep, x, y + deep);
  p.bezierCurveTo(x - half, y + deep, x - half * 1.5, y - half * 0.3, x, y - half * 0.5);
  p.closePath();
}

function drop(pen: Pen, x: number, y: number): void {
  draw(pen, `M${x} ${y - 2.6}q-3 4.6 0 5.200q3 -0.6 0 -5.200z`, { fill: '#bfe0e2', stroke: '#2f5d73', width: 0.7 });
}
