/** Minutes and money of a call, and the two as one cost in minutes. */
import type { CallSession } from './session.ts';
import { DRIVE_MIN } from './session.ts';

/** An hour of a technician's time, USD (our choice, no source). */
const HOUR_usd = 72;

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

/** Cost in minutes: minutes + money / 1.2 USD. */
export function costOf({ minutes, money_usd }: Spent): number {
  return minutes + money_usd / (HOUR_usd / 60);
}
