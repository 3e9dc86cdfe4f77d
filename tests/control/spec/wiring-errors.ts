/** All wiring errors, in the order of the page. */
import type { WiringError } from './wiring-error.ts';
import { ALARM_ERRORS } from './wiring-errors-alarm.ts';
import { POWER_ERRORS } from './wiring-errors-power.ts';

export const WIRING_ERRORS: readonly WiringError[] = [...ALARM_ERRORS, ...POWER_ERRORS];
