import { QUANTITIES } from '../../home/quantities.ts';
import { useDesk } from '../desk.ts';
import type { Came, HomeCurve } from './protocol.ts';

const WIDTH = 560;
const HEIGHT = 130;
const TOP = 36;
/** Nearer than this share of the whole, words stand one under the other; farther than that, on the left of their line. */
const NEAR = 0.2;
const FAR = 0.8;

/** One quantity over the days, with what happened and, dotted, without it. Its ends are said in words. */
export function HomeCurveStrip({ came, curve }: { came: Came; curve: HomeCurve }) {
  const { t, speak } = useDesk();
  const { measure } = QUANTITIES[curve.id];
  const said = (value: number) => speak.value({ id: 'word.quantity', values: { q: { measure, value } } });
  const [low, high] = rangeOf(curve.touched);
  const [without, most] = rangeOf(curve.twin);
  const name = t(`home.quantity.${curve.id}`);
  const ends = t('home.whatif.low-high', { a: said(low), b: said(high), c: said(without), d: said(most) });
  const top = Math.max(high, most) || 1;
  const x = (at_s: number) => (WIDTH * at_s) / came.end_s;
  const y = (value: number) => TOP + (HEIGHT - TOP - 2) * (1 - value / top);
  const line = (points: HomeCurve['twin']) =>
    `M${points.map(([at, value]) => `${x(at).toFixed(1)} ${y(value).toFixed(1)}`).join('L')}`;
  const late = came.over_s !== undefined && came.over_s - came.begins_s < NEAR * came.end_s;
  return (
    <figure class="home-curve">
      <figcaption>
        <strong>{name.charAt(0).toUpperCase() + name.slice(1)}</strong>
        <span class="small">{ends}</span>
      </figcaption>
      <div class="home-plot">
        <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} preserveAspectRatio="none" aria-hidden="true">
          <path class="without" d={line(curve.twin)} />
          <path class="with" d={line(curve.touched)} />
        </svg>
        <Mark share={came.begins_s / came.end_s} text={t('home.whatif.begins')} />
        {came.over_s !== undefined && (
          <Mark share={came.over_s / came.end_s} text={t('home.whatif.over')} lower={late} />
        )}
      </div>
      <p class="home-legend small" aria-hidden="true">
        <span class="key with" /> {t('home.whatif.with')} <span class="key without" /> {t('home.whatif.without')}
      </p>
    </figure>
  );
}

/** A line at a share of the whole time, with its word beside it. */
function Mark({ share, text, lower = false }: { share: number; text: string; lower?: boolean }) {
  const side = share > FAR ? ' left' : '';
  return (
    <span class={`home-mark${side}${lower ? ' lower' : ''}`} style={{ left: `${100 * share}%` }} aria-hidden="true">
      <span>{text}</span>
    </span>
  );
}

function rangeOf(points: HomeCurve['twin']): readonly [number, number] {
  const values = points.map(([, value]) => value);
  return [Math.min(...values), Math.max(...values)];
}
