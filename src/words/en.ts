import { call } from './en/call.ts';
import { debrief } from './en/debrief.ts';
import { desk } from './en/desk.ts';
import { parts } from './en/parts.ts';
import { units } from './en/units.ts';

/** All texts, in English. A text's gaps are described in `speak.ts`. */
export const en = { ...units, ...parts, ...desk, ...call, ...debrief };
