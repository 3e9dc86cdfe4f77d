/** The way from a first hint to the plainest: one rung at a time, with an act and some seconds in between. */
export interface Ladder {
  /** Hints given so far on this ladder, 0 to 4. */
  readonly level: 0 | 1 | 2 | 3 | 4;
  /** Wall time and number of acts when the last was given. */
  readonly asked_ms: number;
  readonly acts: number;
  /** The action that the hints lead to. */
  readonly check: string;
}

export const FOOT: Ladder = { level: 0, asked_ms: 0, acts: 0, check: '' };
const TOP = 4;
/** Wall time between two hints: enough to read one and think (convention). */
export const WAIT_MS = 8000;

/** Whether the next hint may be had now, or what is wanted before it. Who sits at the foot may always ask. */
export function mayAsk(ladder: Ladder, now_ms: number, acts: number): 'now' | 'wait' | 'act-first' {
  if (ladder.level === 0) return 'now';
  if (acts === ladder.acts) return 'act-first';
  return now_ms - ladder.asked_ms < WAIT_MS ? 'wait' : 'now';
}

/** One rung up; at the top one stays there. */
export function climb({ level }: Ladder, asked_ms: number, acts: number, check: string): Ladder {
  return { level: Math.min(TOP, level + 1) as Ladder['level'], asked_ms, acts, check };
}

/** What the hints led to was done: whatever is asked next is another question. */
export function afterAct(ladder: Ladder, id: string): Ladder {
  return id === ladder.check ? FOOT : ladder;
}
