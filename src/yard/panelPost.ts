/** The control panel on its post, as it looks from the lawn. */

import type { LampId, LampScene, PanelScene } from '../scene/types.ts';
import { ALARM, CAUTION, INK, LID, PAPER, PENCIL } from './ink.ts';
import type { Layout } from './layout.ts';
import { newPath } from './path.ts';
import { box, disc, draw, hatch, lined, type Pen, rect, shadowed, within } from './pen.ts';

/** Where a lamp stands on the roof: one in the middle, of two the air lamp on the left. */
export function lampPoint({ panel }: Layout, id: LampId): readonly [number, number] {
  const aside = { lamp: 0, air: -15, water: 15 };
  return [panel.x + panel.width / 2 + aside[id], panel.y - 19];
}

/** Glass of a lamp, dark, and from its hot middle outwards when it is lit: the air lamp is amber. */
export function glassOf(id: LampId): {
  readonly dark: string;
  readonly lit: readonly [string, string, string, string];
} {
  return id === 'air'
    ? { dark: '#7d5a1c', lit: ['#fffbe6', '#ffdf9a', '#e8a33d', '#b06f12'] }
    : { dark: '#7a2c20', lit: ['#fff3d6', '#ffb07c', '#e2573a', '#b02f1c'] };
}

export function buzzerPoint(layout: Layout): readonly [number, number] {
  return [layout.panel.x + layout.panel.width - 12, layout.panel.y + layout.panel.height - 12];
}

function post(pen: Pen, layout: Layout, line: string, wood: string): void {
  const x = layout.panel.x + layout.panel.width / 2 + 6;
  const y = layout.panel.y + layout.panel.height;
  lined(
    pen,
    `M${x} 14V${y - 2}`,
    { stroke: line, width: 11.5, cap: 'butt' },
    { stroke: wood, width: 8.6, cap: 'butt' },
  );
}

function roof(pen: Pen, layout: Layout, line: string, fill: string): void {
  const { x, y, width } = layout.panel;
  draw(pen, `M${x - 8} ${y + 1}L${x + 6} ${y - 11}H${x + width - 6}L${x + width + 8} ${y + 1}Z`, {
    fill,
    stroke: line,
    width: 1.7,
  });
}

export function paintPanelPencil(pen: Pen, layout: Layout): void {
  post(pen, layout, PENCIL, PAPER);
  const b = layout.panel;
  rect(pen, b, 4, { fill: PAPER, stroke: PENCIL, width: 1.6 });
  within(pen, b, () => hatch(pen, b, 7, -64, { stroke: PENCIL, width: 0.7, alpha: 0.36 }));
  roof(pen, layout, PENCIL, PAPER);
  for (const i of [0, 1, 2])
    rect(pen, box(b.x + 9 + i * 16, b.y + 12, 12, 24), 2, { fill: PAPER, stroke: PENCIL, width: 1.2 });
  rect(pen, box(b.x + 9, b.y + 44, 44, 11), 2, { stroke: PENCIL, width: 1 });
  disc(pen, b.x + 16, b.y + 68, 5, { stroke: PENCIL, width: 1.2 });
  disc(pen, b.x + 33, b.y + 68, 5, { stroke: PENCIL, width: 1.2 });
}

export function paintPanelInk(pen: Pen, layout: Layout, s: PanelScene): void {
  post(pen, layout, INK, '#7b5a38');
  const b = layout.panel;
  const x = b.x + b.width / 2 + 6;
  draw(pen, `M${x - 2} 12V${b.y + b.height + 4}M${x + 2.5} 12V${b.y + b.height + 8}`, {
    stroke: '#5a4129',
    width: 0.9,
    alpha: 0.7,
  });
  shadowed(pen, () => rect(pen, b, 4, { fill: '#e2dfd5' }));
  within(pen, b, () =>
    hatch(pen, box(b.x + b.width - 16, b.y, 20, b.height), 4, -12, { stroke: '#8d8672', width: 0.7, alpha: 0.5 }),
  );
  rect(pen, b, 4, { width: 1.8 });
  draw(pen, `M${b.x + 4} ${b.y + b.height - 4}V${b.y + 4}H${b.x + b.width - 4}`, {
    stroke: '#fffdf5',
    width: 1.2,
    alpha: 0.9,
  });
  roof(pen, layout, INK, LID);
  draw(pen, `M${b.x + 9} ${b.y - 8}H${b.x + b.width - 9}`, { stroke: '#a9c0a0', width: 1.2 });
  if (s.door === 'closed') doors(pen, layout);
  else face(pen, layout, s);
  disc(pen, b.x + 14, b.y + 70, 5, { fill: '#2f5d73', stroke: INK, width: 1.2 });
  disc(pen, b.x + 31, b.y + 70, 5, { fill: CAUTION, stroke: INK, width: 1.2 });
  const [bx, by] = buzzerPoint(layout);
  disc(pen, bx, by, 6, { fill: '#4b483f', stroke: INK, width: 1.2 });
  disc(pen, bx, by, 3, { stroke: '#a8a294', width: 1 });
}

function doors(pen: Pen, layout: Layout): void {
  const b = layout.panel;
  rect(pen, box(b.x + 6, b.y + 7, b.width - 12, 53), 2, { fill: '#ebe8dd', stroke: INK, width: 1.2 });
  draw(pen, `M${b.x + b.width / 2} ${b.y + 7}v53`, { width: 1.2 });
  disc(pen, b.x + b.width / 2 + 4, b.y + 35, 2, { fill: '#8d8672', stroke: INK, width: 0.8 });
  draw(
    pen,
    `M${b.x + 10} ${b.y + 13}h13M${b.x + 10} ${b.y + 16}h13M${b.x + 39} ${b.y + 13}h13M${b.x + 39} ${b.y + 16}h13`,
    { width: 0.8, alpha: 0.6 },
  );
}

function face(pen: Pen, layout: Layout, s: PanelScene): void {
  const b = layout.panel;
  for (const [i, breaker] of s.breakers.entries()) {
    const slot = box(b.x + 8 + i * 16, b.y + 9, 13, 28);
    rect(pen, slot, 2, { fill: '#3b3933', stroke: INK, width: 1 });
    if (breaker.lever === null) {
      rect(pen, box(slot.x + 2, slot.y + 2, 9, 24), 1, { fill: PAPER, stroke: PENCIL, width: 0.8, dash: [2, 2] });
      continue;
    }
    const at = breaker.lever === 'on' ? 2 : breaker.lever === 'tripped' ? 9.5 : 17;
    rect(pen, box(slot.x + 2, slot.y + at, 9, 9), 1, { fill: '#f6f0e1', stroke: INK, width: 0.6 });
    if (breaker.lever === 'tripped')
      draw(pen, `M${slot.x - 1.5} ${slot.y + 14}h3M${slot.x + 11.5} ${slot.y + 14}h3`, { stroke: CAUTION, width: 2 });
    if (breaker.locked) rect(pen, box(slot.x + 2.5, slot.y + 27, 8, 7), 1, { fill: CAUTION, stroke: INK, width: 1 });
  }
  rect(pen, box(b.x + 9, b.y + 44, 44, 12), 2, { fill: '#bcd0bd', stroke: INK, width: 0.9 });
  draw(pen, `M${b.x + 13} ${b.y + 50}h14M${b.x + 32} ${b.y + 50}h8`, { stroke: '#4f6a5a', width: 1.4 });
}

/** Lamp on the roof. Unknown is pencil; lit and dark differ in form too: rays stand round a lit one. */
export function paintLamp(pen: Pen, layout: Layout, id: LampId, lamp: LampScene['state']): void {
  const [x, y] = lampPoint(layout, id);
  const dome = `M${x - 7.5} ${y + 8}V${y}q0 -8.5 7.5 -8.500t7.5 8.500V${y + 8}z`;
  const foot = box(x - 10, y + 7, 20, 5);
  if (lamp === null) {
    draw(pen, dome, { fill: PAPER, stroke: PENCIL, width: 1.4 });
    rect(pen, foot, 1.5, { fill: PAPER, stroke: PENCIL, width: 1.3 });
    return;
  }
  const glass = glassOf(id);
  let fill: string | CanvasGradient = glass.dark;
  if (lamp === 'lit') {
    const g = pen.createRadialGradient(x - 1, y, 1, x, y, 11);
    for (const [i, colour] of glass.lit.entries()) g.addColorStop([0, 0.3, 0.7, 1][i] ?? 1, colour);
    fill = g;
  }
  draw(pen, dome, { fill, width: 1.6 });
  draw(pen, `M${x - 4} ${y + 5}V${y}q0 -4 3 -5`, {
    stroke: '#ffffff',
    width: 1.4,
    alpha: lamp === 'lit' ? 0.85 : 0.35,
  });
  rect(pen, foot, 1.5, { fill: '#d8d2c2', stroke: INK, width: 1.3 });
  if (lamp === 'dark') return;
  const rays = newPath();
  // Of two lamps each keeps its rays on its own side.
  for (const a of [-2.75, -2.3, -1.85, -1.4, -0.95, -0.5, -3.1, -0.1]) {
    if ((id === 'air' && a > -0.9) || (id === 'water' && a < -2.2)) continue;
    rays.moveTo(x + Math.cos(a) * 13, y + Math.sin(a) * 13);
    rays.lineTo(x + Math.cos(a) * 18, y + Math.sin(a) * 18);
  }
  draw(pen, rays, { stroke: id === 'air' ? '#9a5a00' : ALARM, width: 1.8 });
}
