/** What a flow carries in a day. */
import type { System } from '../drill.ts';
import { POUNDS_A_GALLON } from './scales.ts';
import { over, plain, type Term, times } from './terms.ts';

const MILLION = plain(1_000_000);

/** lb/d of gal/d, g/d of L/d. */
export function load(system: System, flow: Term, concentration: Term): Term {
  return system === 'us'
    ? times(over(flow, MILLION), concentration, plain(POUNDS_A_GALLON, 2))
    : over(times(flow, concentration), plain(1000));
}
