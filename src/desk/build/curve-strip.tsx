import type { Curve } from '../../build/preview.ts';
import { formatClock } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import type { Along } from './timeline.tsx';

const HEIGHT = 170;
const TOP = 18;
const LABEL = 16;
const ASIDE = 150;

interface Props {
  readonly along: Along;
  readonly curve: Curve;
  /** The instant that the picture shows. */
  readonly at_s: number;
  readonly onSeek: (at_s: number) => void;
}

/** One quantity over the days, with the faults and, dotted, without them. */
export function CurveStrip({ along, curve, at_s, onSeek }: Props) {
  const desk = useDesk();
  const { preview, width, x } = along;
  const { id } = curve;
  const [low, high] = rangeOf(curve);
  const y = (value: number) => TOP + (HEIGHT - TOP - 2) * (1 - (value - low) / (high - low || 1));
  const line = (points: Curve['faulty']) => points.map(([t, v]) => `${x(t).toFixed(1)} ${y(v).toFixed(1)}`).join('L');
  const spoken = (value: number) =>
    desk.speak.value({ id: 'word.quantity', values: { q: { measure: curve.measure, value } } });
  const seek = (event: PointerEvent) => {
    if (event.type === 'pointermove' && event.buttons === 0) return;
    onSeek(along.at(event.clientX - (event.currentTarget as SVGElement).getBoundingClientRect().left));
  };
  const alarms = preview.events.filter(({ what }) => /^(lamp|airLamp|waterLamp)\.on$/.test(what));
  return (
    <div class="strip curve">
      <p class="strip-name">
        {desk.t(`build.curve.${id}`)}
        <span class="small">
          {spoken(low)} – {spoken(high)}
        </span>
      </p>
      <svg
        class={`curve-drawing ${id}`}
        width={width}
        height={HEIGHT}
        aria-hidden="true"
        onPointerDown={seek}
        onPointerMove={seek}
      >
        <rect class="ground" width={width} height={HEIGHT} />
        <path class="without" d={`M${line(curve.sound)}`} />
        <path class="under" d={`M0 ${HEIGHT}L${line(curve.faulty)}L${width} ${HEIGHT}Z`} />
        <path class="line" d={`M${line(curve.faulty)}`} />
        {placedMarks(curve, y).map(({ label, at, above, left }) => (
          <g key={label.id} class={label.id === 'float.highWaterFloat' ? 'mark high' : 'mark'}>
            <path d={`M0 ${at}H${width}`} />
            <text x={left} y={above}>
              {desk.speak.value(label)}
            </text>
          </g>
        ))}
        {alarms.slice(0, 4).map(({ at_s: alarm, label }, i) => {
          const left = x(alarm);
          const end = left > width - 190;
          return (
            <g key={i} class="alarm">
              <path d={`M${left} ${TOP}V${HEIGHT}`} />
              <text x={end ? left - 6 : left + 6} y={13} class={end ? 'end' : ''}>
                {`${formatClock(alarm)} ${desk.speak.value(label)}`}
              </text>
            </g>
          );
        })}
        <path class="report" d={`M${x(preview.report_s)} 0V${HEIGHT}`} />
        <path class="now" d={`M${x(at_s)} 0V${HEIGHT}`} />
      </svg>
      <p class="legend small" aria-hidden="true">
        <span class="key with" /> {desk.t('build.with')} <span class="key without" /> {desk.t('build.without')}
      </p>
    </div>
  );
}

/** Marks with their words over them; words that would stand on others stand beside those. */
function placedMarks({ marks }: Curve, y: (value: number) => number) {
  let [last, aside] = [Number.NEGATIVE_INFINITY, 0];
  return [...marks]
    .map(({ label, value }) => ({ label, at: y(value) }))
    .sort((a, b) => a.at - b.at)
    .map((one) => {
      const above = one.at - 4;
      aside = above - last < LABEL ? aside + 1 : 0;
      last = above;
      return { ...one, above, left: 4 + aside * ASIDE };
    });
}

function rangeOf({ faulty, sound, marks }: Curve): readonly [number, number] {
  const values = [...faulty.map(([, v]) => v), ...sound.map(([, v]) => v), ...marks.map(({ value }) => value)];
  const high = Math.max(...values);
  return [Math.min(0, ...values), high <= 0 ? 1 : high * 1.1];
}
