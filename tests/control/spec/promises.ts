/** All promises, in the order of the table. */
import { ALARM_PROMISES } from './alarm-promises.ts';
import { DOSING_PROMISES } from './dosing-promises.ts';
import type { Promised } from './vocabulary.ts';

export const PROMISES: readonly Promised[] = [...ALARM_PROMISES, ...DOSING_PROMISES];
