/** A day as the visitor's calendar has it: its number since 1 January 1970, and its date. */
export interface Day {
  readonly number: number;
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

const DAY_ms = 86_400_000;

/** The day that a wall instant falls on where the visitor is. */
export function dayOf(wall_ms: number): Day {
  const at = new Date(wall_ms);
  const [year, month, day] = [at.getFullYear(), at.getMonth(), at.getDate()] as const;
  return { number: Date.UTC(year, month, day) / DAY_ms, year, month: month + 1, day };
}
