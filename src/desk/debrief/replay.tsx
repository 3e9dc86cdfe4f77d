import type { ComponentChildren, RefObject } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { DebriefView } from '../../calls/view.ts';
import type { Scene } from '../../scene/types.ts';
import { formatClock } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { XrayPicture } from '../picture/xray-picture.tsx';
import { Said } from '../screen.tsx';
import { WhyList } from '../why-list.tsx';
import { layOut } from './scale.ts';
import { seriesQuantity, valueAt } from './series.ts';
import { TextVersion } from './text-version.tsx';
import { ROWS, Timeline, tops } from './timeline.tsx';
import { usePlay } from './use-play.ts';
import { useWidth } from './use-width.ts';
import { useXray } from './use-xray.ts';

const NARROWEST = 760;

interface Props {
  readonly debrief: DebriefView;
  readonly at_ms: number;
  readonly onSeek: (at_ms: number) => void;
}

/** The call again, everything open: the picture at an instant, the time line under it, and a handle to move along. */
export function Replay({ debrief, at_ms, onSeek: setAt }: Props) {
  const desk = useDesk();
  const [asText, setAsText] = useState(false);
  const truth = useXray(desk, at_ms);
  const play = usePlay(debrief, at_ms, setAt);
  const { box, width } = useWidth(NARROWEST);
  const scale = layOut(debrief, Math.max(width, NARROWEST));
  const x = scale.x(at_ms);
  // On a narrow screen the drawing scrolls; the handle stays in its sight.
  useEffect(() => {
    const at = box.current;
    if (at === null) return;
    if (x < at.scrollLeft || x > at.scrollLeft + at.clientWidth) at.scrollLeft = x - at.clientWidth / 3;
  }, [box, x]);
  const clock = formatClock((at_ms - debrief.startOfDay_ms) / 1000);
  const current = debrief.done.find((one) => one.from_ms <= at_ms && at_ms < one.to_ms);
  return (
    <section class="card replay" aria-labelledby="replay-title">
      <header>
        <h2 id="replay-title">{desk.t('replay.title')}</h2>
        <div class="replay-buttons">
          <button type="button" class="round" onClick={() => play.jump(-1)}>
            <Icon name="back" />
            <span class="vh">{desk.t('replay.previous')}</span>
          </button>
          <button type="button" class="round strong" aria-pressed={play.on} onClick={play.toggle}>
            <Icon name={play.on ? 'pause' : 'play'} />
            <span class="vh">{desk.t('replay.play')}</span>
          </button>
          <button type="button" class="round" onClick={() => play.jump(1)}>
            <Icon name="next" />
            <span class="vh">{desk.t('replay.next')}</span>
          </button>
        </div>
        <p class="replay-now">
          <strong>{clock}</strong> {current === undefined ? desk.t('replay.between') : <Said message={current.label} />}
        </p>
        <button type="button" class="secondary small-button" aria-expanded={asText} onClick={() => setAsText(!asText)}>
          <Icon name="list" /> {desk.t('replay.text')}
        </button>
      </header>
      {desk.openPicture !== undefined && truth !== null && <ReplayPicture scene={truth.scene} />}
      <input
        class="scrubber"
        type="range"
        min={debrief.from_ms}
        max={debrief.to_ms}
        step={60_000}
        value={at_ms}
        aria-label={desk.t('replay.handle')}
        aria-valuetext={current === undefined ? clock : `${clock} ${desk.speak.value(current.label)}`}
        onInput={(event) => setAt(Number(event.currentTarget.value))}
      />
      <div class="timeline">
        <RowNames debrief={debrief} at_ms={at_ms} />
        <TimelineScroll box={box}>
          <Timeline debrief={debrief} scale={scale} at_ms={at_ms} onSeek={setAt} />
        </TimelineScroll>
      </div>
      {asText && <TextVersion debrief={debrief} />}
      {truth !== null && <WhyList whys={truth.whys} />}
    </section>
  );
}

/** The drawing is wider than a phone: this scrolls it, by finger and by arrow keys. */
function TimelineScroll({ box, children }: { box: RefObject<HTMLElement | null>; children: ComponentChildren }) {
  const desk = useDesk();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region that the keyboard must reach
    <section class="timeline-scroll" ref={box} aria-label={desk.t('replay.line')} tabIndex={0}>
      {children}
    </section>
  );
}

function ReplayPicture({ scene }: { scene: Scene }) {
  const desk = useDesk();
  return (
    <section class="replay-picture" aria-label={desk.t('replay.picture')}>
      <XrayPicture scene={scene} />
    </section>
  );
}

/** Names beside the rows, which stay in sight when the drawing scrolls; the plant's carry their value now. */
function RowNames({ debrief, at_ms }: { debrief: DebriefView; at_ms: number }) {
  const desk = useDesk();
  const top = tops(debrief.series.length);
  const minutes = (blocks: DebriefView['done']) => ({
    m: {
      measure: 'duration_min' as const,
      value: blocks.reduce((sum, one) => sum + (one.to_ms - one.from_ms) / 60_000, 0),
    },
  });
  return (
    <div class="row-names" style={{ height: `${top.whole}px` }}>
      {debrief.series.map((series, index) => {
        const value = valueAt(series, at_ms);
        return (
          <p key={series.id} class={series.id} style={{ top: `${top.series + index * ROWS.series + 6}px` }}>
            <Said message={series.label} />
            <strong>{value === null ? '' : desk.t('debrief.value', { v: seriesQuantity(series, value) })}</strong>
          </p>
        );
      })}
      <p style={{ top: `${top.done + 20}px` }}>
        <strong>{desk.t('debrief.row.done')}</strong>
        {desk.t('call.minutes', minutes(debrief.done))}
      </p>
      <p style={{ top: `${top.reference + 20}px` }}>
        <strong>{desk.t('debrief.row.reference')}</strong>
        {desk.t('call.minutes', minutes(debrief.reference))}
      </p>
    </div>
  );
}

/** The replay opens where something first went wrong, if anything did. */
export function firstLook(debrief: DebriefView): number {
  return debrief.events.find((one) => one.tone === 'bad')?.at_ms ?? debrief.done[0]?.from_ms ?? debrief.from_ms;
}
