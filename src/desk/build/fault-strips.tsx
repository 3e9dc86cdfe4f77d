import { lengthAt, shownAt, valueAt } from '../../build/draft.ts';
import { useDesk } from '../desk.ts';
import { instantAt, momentWords, secondAt } from './days.ts';
import { offeredAt, presenceAt } from './fault-at.ts';
import { useBuild } from './state.ts';
import type { Along } from './timeline.tsx';

const ROW = 30;
const HOUR_s = 3600;
/** Room that a long name takes, CSS pixels. */
const NAME = 260;
/** What an arrow key moves an end by, s; with Shift by a day. */
const NUDGE_s = HOUR_s;

interface Bar {
  readonly place: number;
  readonly onset_s: number;
  readonly ramp_s: number;
  readonly severity: number;
  readonly until_s: number | undefined;
  readonly spells: boolean;
}

/** One bar for each fault: where it begins, how it grows, how long it is there. Both ends can be drawn along. */
export function FaultStrips({ along }: { along: Along }) {
  const { t } = useDesk();
  const build = useBuild();
  const { draft } = build;
  const n = lengthAt(draft, 'faults');
  const bars = Array.from({ length: n }, (_, place) => barAt(place)).filter((bar) => bar !== undefined);
  function barAt(place: number): Bar | undefined {
    const at = `faults[${place}]`;
    const onset_s = secondAt(along.preview.firstDay, shownAt(draft, `${at}.onset`));
    if (onset_s === undefined) return undefined;
    const offered = offeredAt(build, place);
    const presence = presenceAt(build, place);
    return {
      place,
      onset_s,
      ramp_s: Number(valueAt(draft, `${at}.ramp_h`) ?? offered?.ramp_h ?? 0) * HOUR_s,
      severity: Number(valueAt(draft, `${at}.severity`) ?? offered?.severity ?? 1),
      until_s: typeof presence === 'object' ? onset_s + presence.for_h * HOUR_s : undefined,
      spells: presence === 'spells',
    };
  }
  return (
    <div class="strip">
      <p class="strip-name">{t('build.strip.faults')}</p>
      {bars.length === 0 && <p class="strip-empty">{t('build.fault.none')}</p>}
      {bars.map((bar) => (
        <FaultBar key={bar.place} bar={bar} along={along} />
      ))}
    </div>
  );
}

function FaultBar({ bar, along }: { bar: Bar; along: Along }) {
  const desk = useDesk();
  const build = useBuild();
  const { place, onset_s, ramp_s, severity, until_s, spells } = bar;
  const { preview, x, width } = along;
  const at = `faults[${place}]`;
  const offered = offeredAt(build, place);
  const name = offered ? desk.speak.value(offered.name) : shownAt(build.draft, `${at}.fault`);
  const from = x(onset_s);
  const grown = Math.min(width, x(onset_s + ramp_s));
  const to = Math.min(width, until_s === undefined ? width : x(until_s));
  const setOnset = (next_s: number) => {
    const clamped = Math.min(Math.max(0, next_s), preview.end_s);
    build.set(`${at}.onset`, instantAt(preview.firstDay, clamped), true);
  };
  const setRamp = (next_s: number) =>
    build.set(`${at}.ramp_h`, Math.max(0, Math.round((next_s - onset_s) / 360) / 10), true);
  const clock = (at_s: number) => momentWords(desk.words.value, preview.firstDay, at_s);
  /** The name stands before a bar that is too short for it. */
  const before = width - from < NAME && from > NAME;
  const low = ROW - 4;
  const high = ROW - 4 - (ROW - 8) * severity;
  return (
    <div class={build.fault === place ? 'fault-bar on' : 'fault-bar'}>
      <svg width={width} height={ROW} aria-hidden="true" onPointerDown={() => build.chooseFault(place)}>
        <path
          class={spells ? 'there spells' : 'there'}
          d={`M${from} ${low}L${Math.min(grown, to)} ${high}H${to}V${low}Z`}
        />
        <text x={before ? from - 14 : from + 14} y={20} class={before ? 'name end' : 'name'}>
          {`${place + 1} ${name}, ${severity.toFixed(2)}`}
        </text>
      </svg>
      <Handle
        left={from}
        label={desk.t('build.handle.onset', { fault: name })}
        text={clock(onset_s)}
        value_s={onset_s}
        along={along}
        onMove={setOnset}
        onTake={() => build.chooseFault(place)}
      />
      {grown > from + 2 && grown < width && (
        <Handle
          left={grown}
          label={desk.t('build.handle.grown', { fault: name })}
          text={clock(onset_s + ramp_s)}
          value_s={onset_s + ramp_s}
          along={along}
          onMove={setRamp}
          onTake={() => build.chooseFault(place)}
        />
      )}
    </div>
  );
}

interface HandleProps {
  readonly left: number;
  readonly label: string;
  readonly text: string;
  readonly value_s: number;
  readonly along: Along;
  readonly onMove: (to_s: number) => void;
  readonly onTake: () => void;
}

/** One end of a bar: drawn with the pointer, or moved by arrow keys, an hour a step and a day with Shift. */
function Handle({ left, label, text, value_s, along, onMove, onTake }: HandleProps) {
  const key = (event: KeyboardEvent) => {
    const way = event.key === 'ArrowLeft' ? -1 : event.key === 'ArrowRight' ? 1 : 0;
    if (way === 0) return;
    event.preventDefault();
    onTake();
    onMove(value_s + way * (event.shiftKey ? 24 * NUDGE_s : NUDGE_s));
  };
  const move = (event: PointerEvent) => {
    if (event.buttons === 0) return;
    const strip = (event.currentTarget as HTMLElement).parentElement;
    if (strip === null) return;
    onMove(along.at(event.clientX - strip.getBoundingClientRect().left));
  };
  return (
    <button
      type="button"
      role="slider"
      class="handle"
      style={{ left: `${left}px` }}
      aria-label={label}
      aria-valuenow={Math.round(value_s)}
      aria-valuemin={0}
      aria-valuemax={Math.round(along.preview.end_s)}
      aria-valuetext={text}
      onKeyDown={key}
      onPointerDown={(event) => {
        (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
        onTake();
      }}
      onPointerMove={move}
    />
  );
}
