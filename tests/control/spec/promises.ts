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

/** For each promise the fault under which `npm test` walks it on the whole unit; the deep run takes the others. */
export const ONE_FAULT: Readonly<Record<string, string>> = {
  'alarm and silence': 'high-water leads swapped',
  reset: 'alarm breaker trips again',
  dialler: 'telephone line dead',
  'two lamps': 'high-water leads swapped',
  'breakers and supply': 'pump breaker trips again',
  'dosing (night)': 'clock lost',
  'dosing (demand)': 'start/stop float stuck down',
  'dosing (timed)': 'timer dead',
  'motor and protector': 'rotor seized',
  'compressor and cut-out': 'housing hot',
};
