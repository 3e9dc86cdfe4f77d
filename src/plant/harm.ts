/** When water may not go to the field: 30 TAC 285.91(4), a grab sample. */
import type { Sample } from './sample.ts';

const MOST_CBOD5_mgL = 65;
const MOST_SOLIDS_mgL = 65;
const LEAST_RESIDUAL_mgL = 0.1;
const MOST_COLIFORM_per100mL = 200;

/** Whether germs are left in it with next to no chlorine: neither of the rule's two ways of disinfection was reached. */
export function notDisinfected({ residual_mgL, coliform_per100mL }: Sample): boolean {
  return residual_mgL < LEAST_RESIDUAL_mgL && coliform_per100mL > MOST_COLIFORM_per100mL;
}

/** Whether it is untreated by the rule: too much of what takes oxygen, too many solids, or not disinfected. */
export function untreated(sample: Sample): boolean {
  return sample.cbod5_mgL > MOST_CBOD5_mgL || sample.solids_mgL > MOST_SOLIDS_mgL || notDisinfected(sample);
}
