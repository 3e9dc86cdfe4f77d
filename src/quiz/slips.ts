/** Which slips a question of numbers can name. */
import { type NumberAsked, type Slip, slipReach } from './drill.ts';

/** A slip that comes nearer to the answer than so many tolerances is not told from it (convention). */
const APART_tolerances = 2;

/** The slips that come neither near the answer nor near one another: of two that do, the first. */
export function toldApart(
  slips: readonly Slip[],
  ask: Pick<NumberAsked, 'value' | 'tolerance' | 'decimals'>,
): readonly Slip[] {
  const kept: Slip[] = [];
  for (const slip of slips) {
    const reach = slipReach(slip, ask);
    const clear = Math.abs(slip.value - ask.value) > Math.max(APART_tolerances * ask.tolerance, ask.tolerance + reach);
    const alone = kept.every((one) => Math.abs(one.value - slip.value) > reach + slipReach(one, ask));
    if (clear && alone) kept.push(slip);
  }
  return kept;
}
