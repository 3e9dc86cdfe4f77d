/** All promises, in the order of the table. */
import { ALARM_PROMISES } from './alarm-promises.ts';
import { CIRCUIT_PROMISES } from './circuits.ts';
import { COMPRESSOR_PROMISES } from './compressor.ts';
import { DOSING_PROMISES } from './dosing-promises.ts';
import { MOTOR_PROMISES } from './motor-promises.ts';
import type { Promised } from './vocabulary.ts';

export const PROMISES: readonly Promised[] = [
  ...ALARM_PROMISES,
  ...CIRCUIT_PROMISES,
  ...DOSING_PROMISES,
  ...MOTOR_PROMISES,
  ...COMPRESSOR_PROMISES,
];
