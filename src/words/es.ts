import type { en } from './en.ts';
import { about } from './es/about.ts';
import { actions } from './es/actions.ts';
import { breach } from './es/breach.ts';
import { call } from './es/call.ts';
import { desk } from './es/desk.ts';
import { faults } from './es/faults.ts';
import { forms } from './es/forms.ts';
import { happenings } from './es/happenings.ts';
import { notes } from './es/notes.ts';
import { parts } from './es/parts.ts';
import { readings } from './es/readings.ts';
import { remarks } from './es/remarks.ts';
import { units } from './es/units.ts';
import { why } from './es/why.ts';

/** The texts of a call, in Spanish; a missing one does not compile. */
export const es: Record<keyof typeof en, string> = {
  ...units,
  ...parts,
  ...desk,
  ...call,
  ...actions,
  ...about,
  ...notes,
  ...readings,
  ...remarks,
  ...faults,
  ...forms,
  ...why,
  ...breach,
  ...happenings,
};
