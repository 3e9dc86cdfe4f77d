/**
 * What was worked out of records that were handed in, by what was done in them: the same record chosen again costs nothing.
 * It holds no names, and lives as long as the page.
 */
import { signal } from '@preact/signals';
import type { Counts } from '../../records/marked.ts';
import { regretIn } from '../../records/regret.ts';
import type { Review } from '../debrief/review-shape.ts';

export const reviews = signal<ReadonlyMap<string, Review>>(new Map());

export function keepReview(deeds: string, review: Review): void {
  reviews.value = new Map(reviews.value).set(deeds, review);
}

/** Minutes of a record's regret, where they are known. */
export function regretOf({ deeds }: Counts): number | undefined {
  const review = reviews.value.get(deeds);
  return review && regretIn(review.steps);
}
