import { lengthAt, shownAt, textAt, valueAt } from '../../build/draft.ts';
import { formatDate } from '../../words/calendar.ts';
import { formatClock } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import { dayAt, secondAt } from './days.ts';
import { useBuild } from './state.ts';
import type { Along } from './timeline.tsx';

const DAY_s = 86_400;
const ROW = 30;

export function DayHeads({ along }: { along: Along }) {
  const { words } = useDesk();
  const { preview, x } = along;
  const days = Array.from({ length: Math.ceil(preview.end_s / DAY_s) }, (_, i) => i);
  const every = Math.ceil(days.length / Math.max(1, along.width / 74));
  return (
    <ol class="day-heads" aria-hidden="true">
      {days
        .filter((i) => i % every === 0)
        .map((i) => (
          <li key={i} style={{ left: `${x(i * DAY_s)}px`, width: `${x(DAY_s * every)}px` }}>
            {formatDate(words.value, dayAt(preview.firstDay, i * DAY_s))}
          </li>
        ))}
    </ol>
  );
}

/** Storms as bars as high as their rain is heavy. */
export function WeatherStrip({ along }: { along: Along }) {
  const { t, speak } = useDesk();
  const { draft } = useBuild();
  const { preview, x, width } = along;
  const storms = Array.from({ length: lengthAt(draft, 'storms') }, (_, i) => {
    const [hours, depth_mm] = [
      Number(valueAt(draft, `storms[${i}].hours`)),
      Number(valueAt(draft, `storms[${i}].depth_mm`)),
    ];
    return { from_s: secondAt(preview.firstDay, shownAt(draft, `storms[${i}].start`)) ?? -1, hours, depth_mm };
  }).filter(({ from_s, hours }) => from_s >= 0 && hours > 0);
  return (
    <div class="strip">
      <p class="strip-name">{t('build.strip.weather')}</p>
      <svg width={width} height={ROW} aria-hidden="true">
        {storms.map(({ from_s, hours, depth_mm }, i) => {
          const height = Math.min(ROW, 4 + (depth_mm / hours) * 2);
          const wide = Math.max(4, x(hours * 3600));
          const left = x(from_s);
          return (
            <g key={i} class="storm">
              <rect x={left} y={ROW - height} width={wide} height={height} />
              <text x={left + wide + 6} y={ROW - 8}>
                {speak.value({ id: 'build.rain.of', values: { d: { measure: 'length_m', value: depth_mm / 1000 } } })}
              </text>
            </g>
          );
        })}
        {storms.length === 0 && (
          <text class="soft" x={8} y={20}>
            {t('build.strip.dry')}
          </text>
        )}
      </svg>
    </div>
  );
}

/** What the household lets run, hour by hour. */
export function UseStrip({ along }: { along: Along }) {
  const { t, speak } = useDesk();
  const { preview, x, width } = along;
  const most = Math.max(1, ...preview.use_L);
  const bar = Math.max(1, x(3600) - 1);
  return (
    <div class="strip">
      <p class="strip-name">{t('build.strip.use')}</p>
      <svg width={width} height={ROW} aria-hidden="true">
        {preview.use_L.map((litres, hour) => {
          const height = (litres / most) * (ROW - 4);
          return <rect key={hour} class="used" x={x(hour * 3600)} y={ROW - height} width={bar} height={height} />;
        })}
        <text class="soft end" x={width - 4} y={12}>
          {speak.value({ id: 'build.use.most', values: { q: { measure: 'volume_m3', value: most / 1000 } } })}
        </text>
      </svg>
    </div>
  );
}

/** When the phone rings, and the first thing said. */
export function SaidStrip({ along }: { along: Along }) {
  const desk = useDesk();
  const { draft } = useBuild();
  const { preview, x, width } = along;
  const at = x(preview.report_s);
  const said = textAt(draft, 'report.said[0]', desk.words.value.language);
  const before = at > width / 2;
  return (
    <div class="strip said">
      <p class="strip-name">{desk.t('build.strip.said')}</p>
      <div class="said-line" style={before ? { right: `${width - at}px` } : { left: `${at}px` }}>
        {before && said !== '' && <q>{said}</q>}
        <span class="rings">{desk.t('build.rings.at', { time: formatClock(preview.report_s) })}</span>
        {!before && said !== '' && <q>{said}</q>}
      </div>
    </div>
  );
}
