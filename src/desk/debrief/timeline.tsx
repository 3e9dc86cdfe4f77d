import type { DebriefView, Series, TimelineBlock } from '../../calls/view.ts';
import { formatClock } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import { placeLabels } from './labels.ts';
import { clockMarks, type Scale, type Stretch } from './scale.ts';
import { rangeOf } from './series.ts';

/** Half a clock label: nearer to the edge than this it would be cut off. */
const EDGE = 20;
/** What the handle's own clock takes, CSS pixels. */
const NOW_WIDTH = 56;

/** Heights of the drawing's rows, CSS pixels; the labels beside it use the same. */
export const ROWS = { clock: 30, events: 30, series: 52, gap: 10, blocks: 84 } as const;

/** Top of each row for a debrief with `n` series. */
export function tops(n: number) {
  const series = ROWS.clock + ROWS.events;
  const done = series + n * ROWS.series + ROWS.gap;
  const reference = done + ROWS.blocks + ROWS.gap;
  return { events: ROWS.clock, series, done, reference, whole: reference + ROWS.blocks };
}

interface Props {
  readonly debrief: DebriefView;
  readonly scale: Scale;
  readonly at_ms: number;
  readonly onSeek: (at_ms: number) => void;
}

/** Plant, what was done and the reference, over one clock. The text version says the same. */
export function Timeline({ debrief, scale, at_ms, onSeek }: Props) {
  const desk = useDesk();
  const top = tops(debrief.series.length);
  const clock = (ms: number) => formatClock((ms - debrief.startOfDay_ms) / 1000);
  const current = debrief.done.find((one) => one.from_ms <= at_ms && at_ms < one.to_ms);
  const drag = (event: PointerEvent) => {
    if (event.type === 'pointermove' && event.buttons === 0) return;
    const svg = event.currentTarget as SVGSVGElement;
    onSeek(scale.at(event.clientX - svg.getBoundingClientRect().left));
  };
  const nowX = scale.x(at_ms);
  const pill = Math.min(scale.width - NOW_WIDTH / 2, Math.max(NOW_WIDTH / 2, nowX));
  return (
    <svg
      class="timeline-drawing"
      width={scale.width}
      height={top.whole}
      aria-hidden="true"
      onPointerDown={drag}
      onPointerMove={drag}
    >
      {scale.stretches.map((one) => (
        <Ground key={one.from_ms} stretch={one} top={top} />
      ))}
      {clockMarks(scale, debrief.startOfDay_ms, 72)
        .map((ms) => ({ ms, x: scale.x(ms) }))
        .filter(({ x }) => x > EDGE && x < scale.width - EDGE && Math.abs(x - nowX) > NOW_WIDTH)
        .map(({ ms, x }) => (
          <g key={ms}>
            <text class="clock-mark" x={x} y={16}>
              {clock(ms)}
            </text>
            <path class="tick" d={`M${x} 22v6`} />
          </g>
        ))}
      {debrief.series.map((one, index) => (
        <SeriesLine key={one.id} series={one} scale={scale} top={top.series + index * ROWS.series} />
      ))}
      {current !== undefined && (
        <rect
          class="current"
          x={scale.x(current.from_ms)}
          y={top.events}
          width={Math.max(2, scale.x(current.to_ms) - scale.x(current.from_ms))}
          height={top.done + ROWS.blocks - top.events}
        />
      )}
      <Events debrief={debrief} scale={scale} />
      <Blocks blocks={debrief.done} scale={scale} top={top.done} kind="done" current={current} />
      <Blocks blocks={debrief.reference} scale={scale} top={top.reference} kind="reference" />
      {scale.stretches
        .filter((one) => one.torn)
        .map((one) => (
          <Tear key={one.from_ms} stretch={one} top={top} text={desk.t('debrief.idle', idle(one))} />
        ))}
      <g class="now" transform={`translate(${nowX} 0)`}>
        <path d={`M0 24V${top.whole}`} />
        <rect
          x={nowX < 28 ? -nowX : nowX > scale.width - 28 ? scale.width - nowX - 56 : -28}
          y={0}
          width={56}
          height={24}
          rx={12}
        />
        <text x={pill - nowX} y={17}>
          {clock(at_ms)}
        </text>
      </g>
    </svg>
  );
}

function idle(stretch: Stretch) {
  return { m: { measure: 'duration_min', value: (stretch.to_ms - stretch.from_ms) / 60_000 } } as const;
}

type Tops = ReturnType<typeof tops>;

function Ground({ stretch, top }: { stretch: Stretch; top: Tops }) {
  if (stretch.torn) return null;
  const { x0, x1 } = stretch;
  const width = x1 - x0;
  return (
    <g class="ground">
      <rect x={x0} y={top.events} width={width} height={top.done - ROWS.gap - top.events} />
      <rect x={x0} y={top.done} width={width} height={ROWS.blocks} />
      <rect x={x0} y={top.reference} width={width} height={ROWS.blocks} />
    </g>
  );
}

function Tear({ stretch, top, text }: { stretch: Stretch; top: Tops; text: string }) {
  const zigzag = (x: number, way: number) => {
    let d = `M${x} ${top.events - 4}`;
    for (let y = top.events - 4, n = 0; y < top.whole; y += 8, n++) d += `l${(n % 2 === 0 ? 5 : -5) * way} 8`;
    return d;
  };
  return (
    <g class="tear">
      <rect x={stretch.x0} y={top.events - 4} width={stretch.x1 - stretch.x0} height={top.whole - top.events + 4} />
      <path d={zigzag(stretch.x0, 1)} />
      <path d={zigzag(stretch.x1, -1)} />
      <text x={(stretch.x0 + stretch.x1) / 2} y={top.done + ROWS.blocks / 2}>
        {text}
      </text>
    </g>
  );
}

function SeriesLine({ series, scale, top }: { series: Series; scale: Scale; top: number }) {
  const desk = useDesk();
  const [low, high] = rangeOf(series);
  const inner = ROWS.series - 8;
  const y = (value: number) => top + 4 + inner * (1 - (value - low) / (high - low));
  const first = scale.x(series.points[0]?.[0] ?? 0);
  const last = scale.x(series.points[series.points.length - 1]?.[0] ?? 0);
  const foot = top + ROWS.series - 4;
  const line = series.points.map(([t, v]) => `${scale.x(t).toFixed(1)} ${y(v).toFixed(1)}`).join('L');
  const mark = series.marks.map((one) => ({ ...one, y: y(one.value) }));
  return (
    <g class={`series ${series.id}`}>
      {line !== '' && (
        <>
          <path class="under" d={`M${first} ${foot}L${line}L${last} ${foot}Z`} />
          <path class="line" d={`M${line}`} />
        </>
      )}
      {mark.map((one) => (
        <g key={one.label.id} class="mark">
          <path d={`M0 ${one.y}H${scale.width}`} />
          <text x={scale.width - 6} y={one.y < top + 16 ? one.y + 14 : one.y - 4}>
            {desk.speak.value(one.label)}
          </text>
        </g>
      ))}
    </g>
  );
}

function Events({ debrief, scale }: { debrief: DebriefView; scale: Scale }) {
  const desk = useDesk();
  const top = tops(debrief.series.length);
  const texts = debrief.events.map((one) => {
    const time = formatClock((one.at_ms - debrief.startOfDay_ms) / 1000);
    return { x: scale.x(one.at_ms), text: `${time} ${desk.speak.value(one.label)}` };
  });
  const placed = placeLabels(texts, scale.width, 1, 'start');
  return (
    <g class="events">
      {debrief.events.map((one) => {
        const x = scale.x(one.at_ms);
        return (
          <g key={`${one.at_ms}${one.label.id}`} class={one.tone}>
            <path class="drop" d={`M${x} ${top.events + 9}V${top.done - ROWS.gap}`} />
            <path class="pin" d={`M${x - 5} ${top.events}h10l-5 9z`} />
          </g>
        );
      })}
      {debrief.events.map((one, index) => {
        const label = placed[index];
        return (
          label !== null &&
          label !== undefined && (
            <g key={`${one.at_ms}${one.label.id}`} class={one.tone}>
              <text x={label.x} y={top.events + 25} text-anchor={label.anchor}>
                {texts[index]?.text}
              </text>
            </g>
          )
        );
      })}
    </g>
  );
}

interface BlocksProps {
  readonly blocks: readonly TimelineBlock[];
  readonly scale: Scale;
  readonly top: number;
  readonly kind: 'done' | 'reference';
  readonly current?: TimelineBlock | undefined;
}

function Blocks({ blocks, scale, top, kind, current }: BlocksProps) {
  const desk = useDesk();
  const steps = blocks.map((block) => ({
    block,
    x: scale.x(block.from_ms),
    width: Math.max(3, scale.x(block.to_ms) - scale.x(block.from_ms) - 1),
    text: desk.speak.value(block.label),
    idle: block.kind === 'wait' || block.kind === 'drive',
  }));
  const placed = placeLabels(
    steps.map((one) => ({ x: one.x + one.width / 2, text: one.idle ? '' : one.text, first: one.block === current })),
    scale.width,
    2,
    'middle',
  );
  return (
    <g class={`blocks ${kind}`}>
      {steps.map(({ block, x, width, text, idle: waits }, index) => {
        const minutes = Math.round((block.to_ms - block.from_ms) / 60_000);
        const label = placed[index];
        const flagged = block.flag !== undefined;
        const look = [waits ? 'idle' : 'step', flagged ? 'flagged' : '', block === current ? 'on' : ''].join(' ');
        return (
          <g key={`${block.from_ms}${block.label.id}`} class={look}>
            <title>{text}</title>
            <rect x={x} y={top + 30} width={width} height={24} rx={waits ? 2 : 4} />
            {flagged && width >= 12 && <path class="flag" d={`M${x + 4} ${top + 49}v-14h8l-2 3 2 3h-8`} />}
            {!waits && width >= (flagged ? 34 : 20) && (
              <text class="minutes" x={x + width / 2 + (flagged ? 6 : 0)} y={top + 47}>
                {minutes}
              </text>
            )}
            {label !== null && label !== undefined && (
              <text class="name" x={label.x} y={label.row === 0 ? top + 22 : top + 71} text-anchor={label.anchor}>
                {text}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
