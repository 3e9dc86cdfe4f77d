/** Where the drip field's pipes lie: a header below, and from it two lines of emitters just under the lawn. */

export interface DripZone {
  readonly from: number;
  readonly to: number;
  readonly emitters: readonly number[];
}

export interface Drip {
  /** Where the header leaves the disc filter. */
  readonly start: readonly [x: number, y: number];
  /** Height of the header and of the lines, y down from grade. */
  readonly headerY: number;
  readonly lineY: number;
  readonly zones: readonly DripZone[];
}

const ZONES = 2;
/** Between emitters, drawn closer than true: the picture shows a stretch of a long line. */
const SPACING = 17;

export function layDrip(left: number, right: number): Drip {
  const first = left + 30;
  const span = (right - 14 - first) / ZONES;
  const zones = Array.from({ length: ZONES }, (_, i): DripZone => {
    const from = Math.round(first + i * span);
    const to = Math.round(from + span - 18);
    const count = Math.max(2, Math.floor((to - from - 8) / SPACING));
    const gap = (to - from - 8) / count;
    return { from, to, emitters: Array.from({ length: count }, (_, k) => Math.round(from + 8 + gap * (k + 0.5))) };
  });
  return { start: [left, 22], headerY: 64, lineY: 25, zones };
}
