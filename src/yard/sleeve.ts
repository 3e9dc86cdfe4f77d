/** The ultraviolet lamp's sleeve in the riser: seen from the side, a faint light in the water while it is lit. */
import { INK, PAPER, PENCIL } from './ink.ts';
import { type Box, box, draw, type Pen, rect } from './pen.ts';

const LIGHT = '#8f7fd6';
/** How far the light reaches beside the sleeve. */
const HALO = 9;

export function sleeveArea(b: Box): Box {
  return box(b.x - HALO - 2, b.y - 4, b.width + 2 * HALO + 4, b.height + 8);
}

export function paintSleevePencil(pen: Pen, b: Box): void {
  rect(pen, b, 6, { fill: PAPER, stroke: PENCIL, width: 1.2 });
  draw(pen, `M${b.x + b.width / 2} ${b.y + 12}V${b.y + b.height - 8}`, { stroke: PENCIL, width: 1.2, dash: [4, 3] });
}

export function paintSleeveInk(pen: Pen, b: Box, lit: boolean): void {
  const middle = b.x + b.width / 2;
  if (lit) {
    const halo = pen.createLinearGradient(b.x - HALO, 0, b.x + b.width + HALO, 0);
    halo.addColorStop(0, 'rgba(143,127,214,0)');
    halo.addColorStop(0.5, 'rgba(143,127,214,0.5)');
    halo.addColorStop(1, 'rgba(143,127,214,0)');
    pen.fillStyle = halo;
    pen.fillRect(b.x - HALO, b.y + 14, b.width + 2 * HALO, b.height - 14);
  }
  rect(pen, b, 6, { fill: lit ? '#ded8f2' : '#dfe3df', stroke: INK, width: 1.3 });
  const lamp = box(middle - 2, b.y + 12, 4, b.height - 19);
  rect(pen, lamp, 2, { fill: lit ? '#b9aef0' : '#8d8f8c', stroke: lit ? LIGHT : '#5d5a52', width: 0.9 });
  draw(pen, `M${b.x + 2.4} ${b.y + 16}V${b.y + b.height - 8}`, { stroke: '#ffffff', width: 1.1, alpha: 0.75 });
  // The cap with its cord, dry above the water.
  rect(pen, box(b.x - 1.5, b.y - 1, b.width + 3, 10), 2, { fill: '#4b483f', stroke: INK, width: 1.1 });
  draw(pen, `M${middle} ${b.y - 1}q0 -6 6 -7`, { stroke: '#3a3730', width: 1.8 });
}
