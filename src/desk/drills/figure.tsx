import type { Figure } from '../../quiz/figure.ts';
import { FloatsView } from './figures/floats.tsx';
import { JarView } from './figures/jar.tsx';
import { LineView } from './figures/line.tsx';
import { MeterView } from './figures/meter.tsx';
import { PanelView } from './figures/panel.tsx';
import { PlanView, type Pointed } from './figures/plan.tsx';
import { SheetView } from './figures/sheet.tsx';

/** What a drill shows, drawn, and the same in words for who does not see it. */
export function FigureView({ figure, pointing }: { figure: Figure; pointing?: Pointed | undefined }) {
  switch (figure.kind) {
    case 'floats':
      return <FloatsView figure={figure} />;
    case 'line':
      return <LineView figure={figure} />;
    case 'jar':
      return <JarView figure={figure} />;
    case 'panel':
      return <PanelView figure={figure} />;
    case 'meter':
      return <MeterView figure={figure} />;
    case 'sheet':
      return <SheetView figure={figure} />;
    case 'plan':
      return <PlanView figure={figure} pointing={pointing} />;
  }
}
