/** What every telling of a number is made from, and how its parts are written. */
import { CHAMBERS } from '../../plant/index.ts';
import { type Measure, type Message, type Quantity, quantity, say } from '../../service/message.ts';
import type { Readout, Unit } from '../../unit/index.ts';

/** One part of a sum, with its sign. */
export interface WhyPart {
  readonly label: Message;
  readonly value: Quantity;
  readonly minus: boolean;
}

export interface Told {
  readonly value: Quantity;
  /** Parts that add up to the value; none where it is no sum. */
  readonly parts: readonly WhyPart[];
  /** The equation or the reason, in words. */
  readonly how: Message;
}

export interface Instant {
  readonly unit: Unit;
  readonly t: number;
  readonly now: Readout;
  /** The state, with the processes caught up. */
  readonly y: Float64Array;
}

/** `resolution`: the smallest step it is told in, where the measure's own is too coarse or too fine. */
export function part(id: string, measure: Measure, value: number, minus = false, resolution?: number): WhyPart {
  return { label: say(`because.part.${id}`), value: quantity(measure, value, resolution), minus };
}

/** Small terms are left out of a sum only where they are nothing. */
export const there = (parts: readonly WhyPart[]) => parts.filter(({ value }) => value.value !== 0);

type Held = Readonly<Record<'trash' | 'aeration' | 'clarifier' | 'riser' | 'pump', number>>;

export function heldIn(unit: Unit, y: Float64Array): Held {
  const [trash = 0, aeration = 0, clarifier = 0, riser = 0, pump = 0] = unit.works.volumes(
    y,
    new Float64Array(CHAMBERS),
  );
  return { trash, aeration, clarifier, riser, pump };
}
