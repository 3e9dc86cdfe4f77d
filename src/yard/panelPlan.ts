/** Where things sit in the close-up of the panel. Units of that sheet, 1180 by 536. */
import type { ControlId } from '../calls/view.ts';
import type { BreakerId, LampId } from '../scene/types.ts';
import { type Box, box } from './pen.ts';

/** From over the rays of a lit lamp to the foot of the grass. */
export const PANEL_SHEET = box(0, -16, 1180, 536);
export const CABINET = box(330, 74, 520, 394);
export const RECESS = box(344, 92, 492, 300);
export const FRONT = box(354, 102, 472, 162);
export const LEFT_DOOR = box(80, 84, 246, 366);
export const RIGHT_DOOR = box(854, 84, 246, 366);
export const LAMPS: Readonly<Record<LampId, { readonly x: number; readonly y: number }>> = {
  lamp: { x: 590, y: 28 },
  air: { x: 532, y: 28 },
  water: { x: 648, y: 28 },
};
export const BUZZER = { x: 770, y: 430, r: 22 } as const;
export const DIAL = { x: 676, y: 190, r: 50 } as const;
export const GAUGE = { x: 404, y: 336, r: 38 } as const;
export const RELAY = box(470, 296, 92, 76);
export const SELECTOR = { x: 646, y: 340, r: 27 } as const;
export const COUNTERS = box(716, 290, 106, 90);
export const SILENCE = { x: 388, y: 430, r: 17 } as const;
export const TEST = { x: 530, y: 430, r: 17 } as const;

export const BREAKER_ORDER: readonly BreakerId[] = ['alarm', 'compressor', 'pump'];

export const TIMER = box(618, 112, 200, 142);

/** Slot of a lever: three stands in it, on above, tripped in the middle, off below. Without a timer they stand apart. */
export function slotOf(index: number, timed: boolean): Box {
  const [first, step] = timed ? [370, 80] : [408, 150];
  return box(first + index * step, 132, 32, 104);
}

const round = (c: { x: number; y: number; r: number }, more = 6): Box =>
  box(c.x - c.r - more, c.y - c.r - more, 2 * (c.r + more), 2 * (c.r + more));

/** Where a hand finds a control on a panel with or without a timer; null where it has none. */
export function controlBox(id: ControlId, timed: boolean): Box | null {
  switch (id) {
    case 'breaker-alarm':
    case 'breaker-compressor':
    case 'breaker-pump': {
      const s = slotOf(BREAKER_ORDER.indexOf(id.slice(8) as BreakerId), timed);
      return box(s.x - 8, s.y - 22, 78, s.height + 28);
    }
    case 'selector':
      return box(SELECTOR.x - 56, SELECTOR.y - 52, 112, 92);
    case 'silence':
      return round(SILENCE);
    case 'test':
      return round(TEST);
    case 'timer':
      return timed ? TIMER : null;
    default:
      return null;
  }
}
