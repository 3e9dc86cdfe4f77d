import { describe, expect, it } from 'vitest';
import type { DebriefView, Series, TimelineBlock } from '../../../src/calls/view.ts';
import { placeLabels } from '../../../src/desk/debrief/labels.ts';
import { clockMarks, layOut } from '../../../src/desk/debrief/scale.ts';
import { rangeOf, valueAt } from '../../../src/desk/debrief/series.ts';
import { readRoute, writeRoute } from '../../../src/desk/routes.ts';

const MINUTE = 60_000;
const block = (from: number, to: number, kind: TimelineBlock['kind']): TimelineBlock => ({
  from_ms: from * MINUTE,
  to_ms: to * MINUTE,
  kind,
  label: { id: 'x' },
});
const debrief = {
  done: [block(10, 20, 'say'), block(20, 110, 'drive'), block(110, 130, 'look')],
  reference: [],
  events: [],
  from_ms: 0,
  to_ms: 140 * MINUTE,
} as unknown as DebriefView;

describe('the time line', () => {
  const scale = layOut(debrief, 1000);

  it('tears out the long drive and keeps everything else to one scale', () => {
    const torn = scale.stretches.filter((one) => one.torn);
    expect(torn).toHaveLength(1);
    expect(torn[0]?.from_ms).toBe(24 * MINUTE);
    expect(torn[0]?.to_ms).toBe(106 * MINUTE);
    const perMinute = (from: number, to: number) => (scale.x(to * MINUTE) - scale.x(from * MINUTE)) / (to - from);
    expect(perMinute(10, 20)).toBeCloseTo(perMinute(110, 130), 9);
    expect(scale.x(0)).toBe(0);
    expect(scale.x(140 * MINUTE)).toBeCloseTo(1000, 9);
  });

  it('runs from left to right however often somebody waited', () => {
    const often = { ...debrief, done: Array.from({ length: 30 }, (_, i) => block(i * 120, i * 120 + 10, 'look')) };
    const { stretches } = layOut({ ...often, to_ms: 30 * 120 * MINUTE }, 760);
    expect(stretches.filter((one) => one.torn)).toHaveLength(30);
    for (const { x0, x1 } of stretches) expect(x1).toBeGreaterThan(x0);
    expect(stretches.at(-1)?.x1).toBeCloseTo(760, 6);
  });

  it('finds the instant under a pixel again', () => {
    for (const minute of [0, 5, 15, 60, 120, 140]) {
      expect(scale.at(scale.x(minute * MINUTE))).toBeCloseTo(minute * MINUTE, 3);
    }
  });

  it('marks whole clock steps outside of the torn stretch only', () => {
    const marks = clockMarks(scale, 0, 70).map((ms) => ms / MINUTE);
    expect(marks.length).toBeGreaterThan(3);
    expect(marks.filter((m) => m > 24 && m < 106)).toEqual([]);
  });

  it('never lets two labels of a row overlap, and gives the wanted one its place', () => {
    const wanted = Array.from({ length: 12 }, (_, i) => ({
      x: 40 + i * 30,
      text: 'Follow the air line',
      first: i === 7,
    }));
    const placed = placeLabels(wanted, 600, 2, 'middle');
    expect(placed[7]).not.toBeNull();
    for (const row of [0, 1]) {
      const xs = placed.flatMap((one) => (one !== null && one.row === row && one.anchor === 'middle' ? [one.x] : []));
      xs.sort((a, b) => a - b);
      for (const [i, x] of xs.slice(1).entries()) expect(x - (xs[i] ?? 0)).toBeGreaterThan(19 * 7);
    }
  });

  it('reads a series between its points', () => {
    const points = [
      [0, 2],
      [10, 4],
    ] as const;
    const series: Series = { id: 'oxygen_mgL', label: { id: 'x' }, points, marks: [{ value: 9, label: { id: 'y' } }] };
    expect(valueAt(series, 5)).toBe(3);
    expect(valueAt(series, -1)).toBe(2);
    expect(valueAt(series, 99)).toBe(4);
    expect(rangeOf(series)[0]).toBe(0);
    expect(rangeOf(series)[1]).toBeGreaterThan(9);
  });
});

describe('the address', () => {
  it('goes there and back', () => {
    for (const route of [
      { screen: 'start' },
      { screen: 'call', callId: 'sunny-line' },
      { screen: 'call', callId: 'sunny-line', rung: 'coached' },
      { screen: 'debrief', key: 3 },
    ] as const) {
      expect(readRoute(writeRoute(route))).toEqual(route);
    }
  });

  it('leads to the start when it makes no sense', () => {
    for (const hash of ['', '#/call', '#/call/<img>', '#/debrief/x', '#/nowhere']) {
      expect(readRoute(hash)).toEqual({ screen: 'start' });
    }
  });
});
