import type { DebriefView } from '../../calls/view.ts';

/** A stretch of the time line: drawn to scale, or a torn-out stretch in which nobody did anything. */
export interface Stretch {
  readonly from_ms: number;
  readonly to_ms: number;
  readonly x0: number;
  readonly x1: number;
  readonly torn: boolean;
}

export interface Scale {
  readonly width: number;
  readonly stretches: readonly Stretch[];
  x(at_ms: number): number;
  at(x: number): number;
}

const MINUTE = 60_000;
/** What stands around a busy moment so that it can be read. */
const MARGIN_MS = 4 * MINUTE;
/** An idle stretch longer than this is torn out. */
const TORN_FROM_MS = 20 * MINUTE;
const TORN_WIDTH = 64;
/** Most of the width that torn stretches take together, however many there are. */
const TORN_SHARE = 0.5;

/** What is laid out: when it begins and ends, and what makes parts of it busy. */
export type Laid = Pick<DebriefView, 'from_ms' | 'to_ms' | 'done' | 'reference' | 'events'>;

/** Lays the call out over `width` pixels. Long drives and waits take a fixed width, so that the steps stay legible. */
export function layOut(debrief: Laid, width: number): Scale {
  const { from_ms, to_ms } = debrief;
  const busy = merge(busySpans(debrief), from_ms, to_ms);
  const pieces: { from: number; to: number; torn: boolean }[] = [];
  let cursor = from_ms;
  for (const [start, end] of busy) {
    if (start > cursor) pieces.push({ from: cursor, to: start, torn: start - cursor > TORN_FROM_MS });
    pieces.push({ from: start, to: end, torn: false });
    cursor = end;
  }
  if (cursor < to_ms) pieces.push({ from: cursor, to: to_ms, torn: to_ms - cursor > TORN_FROM_MS });
  const torn = pieces.filter((one) => one.torn).length;
  const tornWidth = Math.min(TORN_WIDTH, (TORN_SHARE * width) / Math.max(torn, 1));
  const drawn_ms = pieces.reduce((sum, one) => sum + (one.torn ? 0 : one.to - one.from), 0);
  const perMs = (width - tornWidth * torn) / Math.max(drawn_ms, 1);
  let x = 0;
  const stretches = pieces.map((one): Stretch => {
    const x0 = x;
    x += one.torn ? tornWidth : (one.to - one.from) * perMs;
    return { from_ms: one.from, to_ms: one.to, x0, x1: x, torn: one.torn };
  });
  return {
    width,
    stretches: joined(stretches),
    x: (at_ms) => along(stretches, at_ms, 'from_ms', 'to_ms', 'x0', 'x1'),
    at: (px) => along(stretches, px, 'x0', 'x1', 'from_ms', 'to_ms'),
  };
}

type Edge = 'from_ms' | 'to_ms' | 'x0' | 'x1';

function along(stretches: readonly Stretch[], value: number, a0: Edge, a1: Edge, b0: Edge, b1: Edge): number {
  const on = stretches.find((one) => value <= one[a1]) ?? stretches[stretches.length - 1];
  if (on === undefined) return 0;
  const length = on[a1] - on[a0];
  const share = length === 0 ? 0 : Math.min(1, Math.max(0, (value - on[a0]) / length));
  return on[b0] + share * (on[b1] - on[b0]);
}

function busySpans(debrief: Laid): [number, number][] {
  const blocks = [...debrief.done, ...debrief.reference].filter((one) => one.kind !== 'wait' && one.kind !== 'drive');
  return [
    ...blocks.map((one): [number, number] => [one.from_ms, one.to_ms]),
    ...debrief.events.map((one): [number, number] => [one.at_ms, one.at_ms]),
  ];
}

function merge(spans: readonly [number, number][], from: number, to: number): [number, number][] {
  const merged: [number, number][] = [];
  for (const [a, b] of [...spans].sort((p, q) => p[0] - q[0])) {
    const start = Math.max(from, a - MARGIN_MS);
    const end = Math.min(to, b + MARGIN_MS);
    const last = merged[merged.length - 1];
    if (last !== undefined && start - last[1] <= TORN_FROM_MS) last[1] = Math.max(last[1], end);
    else if (end > start) merged.push([start, end]);
  }
  return merged;
}

/** Neighbours that are both to scale read as one. */
function joined(stretches: readonly Stretch[]): Stretch[] {
  const out: Stretch[] = [];
  for (const one of stretches) {
    const last = out[out.length - 1];
    if (last !== undefined && !last.torn && !one.torn) {
      out[out.length - 1] = { ...last, to_ms: one.to_ms, x1: one.x1 };
    } else out.push(one);
  }
  return out;
}

/** Whole steps of the clock that leave at least `least` pixels between two marks. */
export function clockMarks(scale: Scale, startOfDay_ms: number, least: number): number[] {
  const marks: number[] = [];
  for (const stretch of scale.stretches.filter((one) => !one.torn)) {
    const perMinute = ((stretch.x1 - stretch.x0) / (stretch.to_ms - stretch.from_ms)) * MINUTE;
    const step = [5, 10, 15, 20, 30, 60, 120, 240].find((one) => one * perMinute >= least) ?? 480;
    const first = Math.ceil((stretch.from_ms - startOfDay_ms) / (step * MINUTE));
    for (let n = first; startOfDay_ms + n * step * MINUTE <= stretch.to_ms; n++) {
      marks.push(startOfDay_ms + n * step * MINUTE);
    }
  }
  return marks;
}
