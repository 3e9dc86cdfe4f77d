/** The pipes between the tanks. */
import type { Layout } from './layout.ts';
import { type Pen, pipe } from './pen.ts';

export function paintPipes(pen: Pen, layout: Layout): void {
  const { trash, aeration, riser, pump } = layout;
  const right = (b: { x: number; width: number }) => b.x + b.width;
  const lining = '#cfc6b2';
  pipe(pen, `M${right(trash.inside) - 2} ${trash.outletY}L${aeration.inside.x + 8} ${trash.outletY}`, 13, { lining });
  pipe(pen, `M${right(aeration.inside) - 6} ${aeration.outletY}H${riser.shell.x + 1}`, 13, { lining });
  pipe(pen, `M${riser.shell.x + 33} ${pump.inletY}H${pump.inside.x + 8}`, 13, { lining });
}
