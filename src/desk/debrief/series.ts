import type { Series } from '../../calls/view.ts';
import type { Quantity } from '../../service/message.ts';

const MEASURE = {
  airPressure_kPa: 'pressure_kPa',
  oxygen_mgL: 'concentration_mgL',
  pumpTank_m: 'length_m',
} as const;

/** A curve: its points, and levels worth a line. */
type Line = Pick<Series, 'points' | 'marks'>;

/** A value of a series, in its own measure. */
export function seriesQuantity(series: Series, value: number): Quantity {
  return { measure: MEASURE[series.id], value };
}

/** The value at an instant, along the straight line between the two points around it; null outside of them. */
export function valueAt(series: Line, at_ms: number): number | null {
  const after = series.points.findIndex(([t]) => t >= at_ms);
  const [b, a] = [series.points[after], series.points[after - 1]];
  if (b === undefined) return series.points[series.points.length - 1]?.[1] ?? null;
  if (a === undefined) return b[1];
  const share = b[0] === a[0] ? 1 : (at_ms - a[0]) / (b[0] - a[0]);
  return a[1] + share * (b[1] - a[1]);
}

/** Bottom and top of the drawn range: all points and marks, from zero where the values are near it. */
export function rangeOf(series: Line): readonly [number, number] {
  const values = [...series.points.map(([, v]) => v), ...series.marks.map((one) => one.value)];
  const low = Math.min(...values);
  const high = Math.max(...values);
  const bottom = low >= 0 && low < (high - low) * 1.5 ? 0 : low;
  const pad = (high - bottom) * 0.12 || 1;
  return [bottom === 0 ? 0 : bottom - pad, high + pad];
}
