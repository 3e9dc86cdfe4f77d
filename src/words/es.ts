import type { en } from './en.ts';
import { call } from './es/call.ts';
import { debrief } from './es/debrief.ts';
import { desk } from './es/desk.ts';
import { parts } from './es/parts.ts';
import { units } from './es/units.ts';

/** All texts, in Spanish; a missing one does not compile. */
export const es: Record<keyof typeof en, string> = { ...units, ...parts, ...desk, ...call, ...debrief };
