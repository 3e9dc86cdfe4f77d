/** Minutes and money of a call, and the two as one cost in minutes. */
import { costIn_min } from '../service/index.ts';
import type { CallSession } from './session.ts';
import { DRIVE_MIN } from './session.ts';

export interface Spent {
  readonly minutes: number;
  readonly money_usd: number;
}

export function spent(session: CallSession): Spent {
  let minutes = session.drove ? DRIVE_MIN : 0;
  let money_usd = 0;
  for (const { def, outcome } of session.done) {
    minutes += (outcome.to_ms - outcome.from_ms) / 60_000;
    money_usd += def.cost_usd ?? 0;
  }
  return { minutes: Math.round(minutes * 10) / 10, money_usd };
}

/** What was spent as one cost in minutes. */
export function costOf({ minutes, money_usd }: Spent): number {
  return costIn_min(minutes, money_usd);
}
