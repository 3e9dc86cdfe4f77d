import type { Curve } from '../../calls/hood.ts';
import { formatClock } from '../../words/measure.ts';
import { placeLabels } from '../debrief/labels.ts';
import { clockMarks, layOut, type Scale } from '../debrief/scale.ts';
import { rangeOf, valueAt } from '../debrief/series.ts';
import { useWidth } from '../debrief/use-width.ts';
import { useDesk } from '../desk.ts';
import type { OpenCall } from '../protocol.ts';
import { Said } from '../screen.tsx';

const NARROWEST = 480;
/** Heights of the rows, CSS pixels: what happened, what was done, and a curve with few or with several levels. */
const CLOCK = 24;
const EVENTS = 34;
const DEEDS = 48;
const PLAIN = 52;
const LEVELLED = 104;
/** Half a clock label, and what the handle's own clock takes, CSS pixels. */
const EDGE = 20;
const NOW = 56;
/** Between the names of two levels of one curve, CSS pixels. */
const NAMES_APART = 112;

interface Props {
  readonly call: OpenCall;
  readonly at_ms: number;
  readonly onSeek: (at_ms: number) => void;
}

/** Curves of the works over the call so far, with what happened and what was done on the same clock. */
export function Strips({ call, at_ms, onSeek }: Props) {
  const { t } = useDesk();
  const { box, width } = useWidth(NARROWEST);
  const span = { from_ms: call.from_ms, to_ms: Math.max(call.now_ms, call.from_ms + 60_000) };
  // Both ends count as busy: what stands there now is what is looked at most.
  const ends = [span.from_ms, span.to_ms].map((at_ms) => ({ at_ms, label: { id: 'text' }, tone: 'plain' as const }));
  const events = [...call.events, ...ends];
  const scale = layOut({ ...span, done: call.blocks, reference: [], events }, Math.max(width, NARROWEST));
  const rows = rowsOf(call.curves);
  return (
    <div class="strips">
      <div class="row-names" style={{ height: `${rows.whole}px` }}>
        <p style={{ top: `${CLOCK + 4}px` }}>{t('instructor.row.events')}</p>
        <p style={{ top: `${CLOCK + EVENTS + 8}px` }}>{t('instructor.row.deeds')}</p>
        {call.curves.map((curve, i) => {
          const value = valueAt(curve, at_ms);
          return (
            <p key={curve.id} class={curve.id} style={{ top: `${(rows.tops[i] ?? 0) + 4}px` }}>
              <Said message={curve.label} />
              <strong>{value !== null && t('debrief.value', { v: { measure: curve.measure, value } })}</strong>
            </p>
          );
        })}
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region that the keyboard must reach */}
      <section class="timeline-scroll" ref={box} aria-label={t('instructor.strips')} tabIndex={0}>
        <Drawing call={call} scale={scale} rows={rows} at_ms={at_ms} onSeek={onSeek} />
      </section>
    </div>
  );
}

interface Rows {
  readonly tops: readonly number[];
  readonly whole: number;
}

function heightOf({ marks }: Curve): number {
  return marks.length > 2 ? LEVELLED : PLAIN;
}

function rowsOf(curves: readonly Curve[]): Rows {
  const tops: number[] = [];
  let top = CLOCK + EVENTS + DEEDS;
  for (const curve of curves) {
    tops.push(top);
    top += heightOf(curve) + 6;
  }
  return { tops, whole: top };
}

function Drawing({ call, scale, rows, at_ms, onSeek }: Props & { readonly scale: Scale; readonly rows: Rows }) {
  const { t } = useDesk();
  const clock = (ms: number) => formatClock((ms - call.startOfDay_ms) / 1000);
  const x = scale.x(at_ms);
  const pill = Math.min(scale.width - NOW / 2, Math.max(NOW / 2, x));
  const drag = (event: PointerEvent) => {
    if (event.type === 'pointermove' && event.buttons === 0) return;
    const svg = event.currentTarget as SVGSVGElement;
    onSeek(scale.at(event.clientX - svg.getBoundingClientRect().left));
  };
  return (
    <svg
      class="timeline-drawing"
      width={scale.width}
      height={rows.whole}
      aria-hidden="true"
      onPointerDown={drag}
      onPointerMove={drag}
    >
      {scale.stretches
        .filter((one) => !one.torn)
        .map((one) => (
          <g key={one.from_ms} class="ground">
            <rect x={one.x0} y={CLOCK} width={one.x1 - one.x0} height={rows.whole - CLOCK} />
          </g>
        ))}
      {clockMarks(scale, call.startOfDay_ms, 72)
        .map((ms) => ({ ms, at: scale.x(ms) }))
        .filter(({ at }) => at > EDGE && at < scale.width - EDGE && Math.abs(at - x) > NOW)
        .map(({ ms, at }) => (
          <text key={ms} class="clock-mark" x={at} y={16}>
            {clock(ms)}
          </text>
        ))}
      {call.curves.map((curve, i) => (
        <CurveRow key={curve.id} curve={curve} scale={scale} top={rows.tops[i] ?? 0} />
      ))}
      {scale.stretches
        .filter((one) => one.torn)
        .map((one) => (
          <g key={one.from_ms} class="tear">
            <rect x={one.x0} y={CLOCK} width={one.x1 - one.x0} height={rows.whole - CLOCK} />
            <path d={`M${one.x0} ${CLOCK}V${rows.whole}M${one.x1} ${CLOCK}V${rows.whole}`} />
            <text x={(one.x0 + one.x1) / 2} y={CLOCK + EVENTS + 17}>
              {t('debrief.idle', { m: { measure: 'duration_min', value: (one.to_ms - one.from_ms) / 60_000 } })}
            </text>
          </g>
        ))}
      <Happened call={call} scale={scale} clock={clock} />
      <Done call={call} scale={scale} whole={rows.whole} />
      <g class="now" transform={`translate(${x} 0)`}>
        <path d={`M0 ${CLOCK}V${rows.whole}`} />
        <rect x={pill - x - NOW / 2} y={0} width={NOW} height={22} rx={11} />
        <text x={pill - x} y={16}>
          {clock(at_ms)}
        </text>
      </g>
    </svg>
  );
}

function CurveRow({ curve, scale, top }: { curve: Curve; scale: Scale; top: number }) {
  const { speak } = useDesk();
  // From nothing up: what hardly changes is not to look as if it did.
  const [low, high] = rangeOf({ points: [...curve.points, [0, 0]], marks: curve.marks });
  const height = heightOf(curve);
  const y = (value: number) => top + 4 + (height - 8) * (1 - (value - low) / (high - low));
  const line = curve.points.map(([at, value]) => `${scale.x(at).toFixed(1)} ${y(value).toFixed(1)}`).join('L');
  return (
    <g class={`series ${curve.id}`}>
      <path class="foot" d={`M0 ${top + height}H${scale.width}`} />
      {line !== '' && <path class="line" d={`M${line}`} />}
      <g class="mark">
        <path d={curve.marks.map(({ value }) => `M0 ${y(value)}H${scale.width}`).join('')} />
        {curve.marks.map(({ value, label }, i) => (
          <text key={label.id} x={6 + (i % 3) * NAMES_APART} y={y(value) < top + 16 ? y(value) + 14 : y(value) - 3}>
            {speak.value(label)}
          </text>
        ))}
      </g>
    </g>
  );
}

interface RowProps {
  readonly call: OpenCall;
  readonly scale: Scale;
}

function Happened({ call, scale, clock }: RowProps & { readonly clock: (ms: number) => string }) {
  const { speak } = useDesk();
  const texts = call.events.map((one) => ({
    x: scale.x(one.at_ms),
    text: `${clock(one.at_ms)} ${speak.value(one.label)}`,
  }));
  const placed = placeLabels(texts, scale.width, 1, 'start');
  return (
    <g class="events">
      {call.events.map((one, i) => {
        const x = scale.x(one.at_ms);
        const label = placed[i];
        return (
          <g key={`${one.at_ms} ${one.label.id} ${i}`} class={one.tone}>
            <path class="pin" d={`M${x - 5} ${CLOCK + 2}h10l-5 9z`} />
            {label && (
              <text x={label.x} y={CLOCK + 24} text-anchor={label.anchor}>
                {texts[i]?.text}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

/** What was done, each with a line through all the curves. */
function Done({ call, scale, whole }: RowProps & { readonly whole: number }) {
  const { speak } = useDesk();
  const top = CLOCK + EVENTS;
  const steps = call.blocks.filter(({ kind }) => kind !== 'drive' && kind !== 'wait');
  const texts = steps.map((one) => ({ x: scale.x(one.from_ms), text: speak.value(one.label) }));
  const placed = placeLabels(texts, scale.width, 2, 'start');
  return (
    <g class="deed-marks">
      {steps.map((one, i) => {
        const x = scale.x(one.from_ms);
        const label = placed[i];
        return (
          <g key={`${one.from_ms} ${one.label.id} ${i}`}>
            <path d={`M${x} ${top}V${whole}`} />
            {label && (
              <text x={label.x} y={top + 17 + label.row * 19} text-anchor={label.anchor}>
                {texts[i]?.text}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
