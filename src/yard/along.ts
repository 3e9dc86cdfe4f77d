/** Ways of straight legs that things drift along in a close-up. */
export type Point = readonly [number, number];

function legs(points: readonly Point[]): readonly number[] {
  return points.slice(1).map(([x, y], i) => {
    const [px, py] = points[i] ?? [x, y];
    return Math.hypot(x - px, y - py);
  });
}

export function wayLength(points: readonly Point[]): number {
  return legs(points).reduce((sum, one) => sum + one, 0);
}

/** The point at a share of a way. */
export function along(points: readonly Point[], share: number): Point {
  const far = legs(points);
  let left = share * wayLength(points);
  for (const [i, one] of far.entries()) {
    const [x0, y0] = points[i] ?? [0, 0];
    const [x1, y1] = points[i + 1] ?? [x0, y0];
    if (left <= one) return [x0 + ((x1 - x0) * left) / one, y0 + ((y1 - y0) * left) / one];
    left -= one;
  }
  return points.at(-1) ?? [0, 0];
}
