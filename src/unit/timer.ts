/** The night timer's dial: at which instants of the panel's own clock a dose may start. Pure; seconds throughout. */

const DAY_s = 86_400;
/** Instants of the panel clock that close are one: its hours are whole seconds, engine time is rounded at 1e-9 s. */
const SAME_INSTANT_s = 1e-6;

/** Panel time, s since its day 0, of the first start after a panel time. */
export function nextStart(starts_h: readonly number[], panel_s: number): number {
  const day_s = DAY_s * Math.floor((panel_s + SAME_INSTANT_s) / DAY_s);
  let next = Number.POSITIVE_INFINITY;
  for (const hour of starts_h) {
    const start = day_s + hour * 3600;
    next = Math.min(next, start > panel_s + SAME_INSTANT_s ? start : start + DAY_s);
  }
  return next;
}

/** Which start, in hours, a panel time is; undefined when it is none. */
export function startAt(starts_h: readonly number[], panel_s: number): number | undefined {
  const ofDay = panel_s - DAY_s * Math.floor(panel_s / DAY_s);
  return starts_h.find((hour) => {
    const apart = Math.abs(ofDay - hour * 3600);
    return Math.min(apart, DAY_s - apart) < SAME_INSTANT_s;
  });
}
