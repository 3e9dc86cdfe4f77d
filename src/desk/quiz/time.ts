import { MOCK } from './mock.ts';
import type { Sitting } from './sitting.ts';

export const MORE_min = 10;

/** More time, counted from the time that was given or, where that is used up, from now. */
export function withMore(sitting: Sitting): Sitting {
  return { ...sitting, minutes: Math.max(sitting.minutes ?? 0, sitting.used_s / 60) + MORE_min };
}

export function withoutClock(sitting: Sitting): Sitting {
  return { ...sitting, minutes: null };
}

/** The clock again: what is usual, at least some minutes from now. */
export function withClock(sitting: Sitting): Sitting {
  return { ...sitting, minutes: Math.max(MOCK.minutes, sitting.used_s / 60 + MORE_min) };
}

/** Minutes at which the time left is told, and not oftener. */
const TOLD_min = [30, 10, 5, 1];

/** The last of these that was passed. */
export function toldOf(left_s: number): number | undefined {
  return TOLD_min.findLast((minutes) => left_s <= minutes * 60);
}
