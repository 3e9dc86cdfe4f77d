/** What shines from the house by night. */
import { INK } from './ink.ts';
import { box, draw, type Pen, rect } from './pen.ts';

/** The middle of the lit window on the plate. */
export const WINDOW = [94, -92] as const;

/** Warm light in the window, laid over the night. */
export function paintHouseLight(pen: Pen): void {
  const [x, y] = WINDOW;
  const g = pen.createRadialGradient(x, y, 4, x, y, 96);
  g.addColorStop(0, 'rgba(255,206,120,0.75)');
  g.addColorStop(0.4, 'rgba(255,190,96,0.22)');
  g.addColorStop(1, 'rgba(255,180,80,0)');
  pen.fillStyle = g;
  pen.fillRect(-20, -200, 240, 220);
  rect(pen, box(76, -110, 36, 34), 1, { fill: '#f8d58a', stroke: INK, width: 1.5 });
  draw(pen, 'M94 -110v34M76 -94h36', { width: 1.2 });
  draw(pen, 'M77.5 -108.500h6q-2 14-6 20zM110.5 -108.500h-6q2 14 6 20z', { fill: '#b7623f' });
}
