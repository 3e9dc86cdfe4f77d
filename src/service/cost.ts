/** Minutes and money as one cost. */

/** An hour of a technician's time, USD (our choice, no source). */
const HOUR_usd = 72;

/** Cost in minutes: minutes + money / 1.2 USD. */
export function costIn_min(minutes: number, money_usd = 0): number {
  return minutes + money_usd / (HOUR_usd / 60);
}
