import { useEffect, useState } from 'preact/hooks';
import type { DrawnId, Preview } from '../../build/preview.ts';
import { useWidth } from '../debrief/use-width.ts';
import { useDesk } from '../desk.ts';
import { CurveStrip } from './curve-strip.tsx';
import { momentWords } from './days.ts';
import { FaultStrips } from './fault-strips.tsx';
import { useBuild } from './state.ts';
import { DayHeads, SaidStrip, UseStrip, WeatherStrip } from './strips.tsx';

/** Time to place: the drawing's width, and where an instant stands in it. */
export interface Along {
  readonly width: number;
  readonly preview: Preview;
  x(at_s: number): number;
  at(x: number): number;
}

const NARROWEST = 640;
/** Room for the strips' names, CSS pixels; the style sheet has the same. */
const NAMES = 104;

/** The days of the call over one clock: faults, weather, use, what was said, and one curve of the works. */
export function Timeline() {
  const { t } = useDesk();
  const { looked } = useBuild();
  if (looked?.preview !== undefined) return <Days preview={looked.preview} />;
  return (
    <section class="card build-days" aria-labelledby="days-title">
      <h2 id="days-title">{t('build.days')}</h2>
      <p class="small">{t(looked === undefined ? 'build.looking' : 'build.impossible')}</p>
    </section>
  );
}

function Days({ preview }: { preview: Preview }) {
  const desk = useDesk();
  const build = useBuild();
  const { t } = desk;
  const { box, width: room } = useWidth(NARROWEST + NAMES);
  const [chosen, choose] = useState<DrawnId>('pumpTank_m');
  const curve = preview.curves.find(({ id }) => id === chosen) ?? preview.curves[0];
  // Where there is no room for all the days, those before the call are seen first.
  useEffect(() => {
    const at = box.current;
    if (at !== null) at.scrollLeft = at.scrollWidth;
  }, []);
  const width = Math.max(NARROWEST, room - NAMES);
  const along: Along = {
    width,
    preview,
    x: (at_s) => (at_s / preview.end_s) * width,
    at: (x) => Math.min(Math.max(0, (x / width) * preview.end_s), preview.end_s),
  };
  const at_s = build.at_s ?? preview.report_s;
  const words = (second: number) => momentWords(desk.words.value, preview.firstDay, second);
  return (
    <section class="card build-days" aria-labelledby="days-title" aria-busy={build.busy}>
      <header>
        <h2 id="days-title">{t('build.days')}</h2>
        <p class="small">{t('build.days.help')}</p>
        <fieldset class="curve-choice">
          <legend class="vh">{t('build.curve')}</legend>
          {preview.curves.map(({ id }) => (
            <button
              key={id}
              type="button"
              class="pill-button"
              aria-pressed={curve?.id === id}
              onClick={() => choose(id)}
            >
              {t(`build.curve.${id}`)}
            </button>
          ))}
        </fieldset>
      </header>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard */}
      <section class="days-scroll" ref={box} tabIndex={0} aria-label={t('build.strips')}>
        <div class="days-drawing" style={{ width: `${width}px` }}>
          <DayHeads along={along} />
          <FaultStrips along={along} />
          <WeatherStrip along={along} />
          <UseStrip along={along} />
          <SaidStrip along={along} />
          {curve !== undefined && <CurveStrip along={along} curve={curve} at_s={at_s} onSeek={build.show} />}
        </div>
      </section>
      <label class="vh" for="days-scrubber">
        {t('build.scrub')}
      </label>
      <input
        id="days-scrubber"
        class="scrubber"
        type="range"
        min={0}
        max={preview.end_s}
        step={600}
        value={at_s}
        aria-valuetext={words(at_s)}
        onInput={(event) => build.show(event.currentTarget.valueAsNumber)}
      />
      <Told preview={preview} words={words} />
    </section>
  );
}

/** The same in words. */
function Told({ preview, words }: { preview: Preview; words: (at_s: number) => string }) {
  const { t, speak } = useDesk();
  return (
    <details class="days-told">
      <summary>{t('build.told')}</summary>
      <ul>
        {preview.events.map(({ at_s, what, label }, i) => (
          <li key={`${i}${what}`}>
            <span class="time">{words(at_s)}</span> {speak.value(label)}
          </li>
        ))}
        <li>
          <span class="time">{words(preview.report_s)}</span> {t('build.rings')}{' '}
          {preview.symptoms.map((id) => t(`symptom.${id}`)).join('; ')}
        </li>
      </ul>
    </details>
  );
}
