/** A hundred drops stand for the flush: each is in one place, and moves on when as much as it and those ahead have. */
import { MARK_PLACES, type MarkPlace } from '../plant/tracer.ts';
import type { DropLook } from './drop.ts';

export const HUNDRED = 100;

/** Place of each drop, the first to arrive first. Water that went astray is behind all that is on its way. */
export function placesOf(share: DropLook['share']): readonly MarkPlace[] {
  const order: readonly MarkPlace[] = ['field', 'pump', 'riser', 'clarifier', 'aeration', 'trash', 'astray'];
  const places: MarkPlace[] = [];
  let ahead = 0;
  for (const place of order) {
    ahead += share[place];
    while (places.length < Math.round(HUNDRED * ahead)) places.push(place);
  }
  while (places.length < HUNDRED) places.push('trash');
  return places;
}

/** How many of the hundred are in each place. */
export function countsOf(share: DropLook['share']): Readonly<Record<MarkPlace, number>> {
  const counts = Object.fromEntries(MARK_PLACES.map((place) => [place, 0])) as Record<MarkPlace, number>;
  for (const place of placesOf(share)) counts[place] += 1;
  return counts;
}
