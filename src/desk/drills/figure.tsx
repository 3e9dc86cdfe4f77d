import type { Figure } from '../../quiz/figure.ts';
import { FloatsView } from './figures/floats.tsx';
import { JarView } from './figures/jar.tsx';
import { LineView } from './figures/line.tsx';
import { MeterView } from './figures/meter.tsx';
import { PanelView } from './figures/panel.tsx';

/** What a drill shows, drawn, and the same in words for who does not see it. */
export function FigureView({ figure }: { figure: Figure }) {
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
  }
}
