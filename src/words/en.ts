import { about } from './en/about.ts';
import { actions } from './en/actions.ts';
import { breach } from './en/breach.ts';
import { call } from './en/call.ts';
import { desk } from './en/desk.ts';
import { faults } from './en/faults.ts';
import { forms } from './en/forms.ts';
import { happenings } from './en/happenings.ts';
import { notes } from './en/notes.ts';
import { parts } from './en/parts.ts';
import { readings } from './en/readings.ts';
import { remarks } from './en/remarks.ts';
import { units } from './en/units.ts';
import { why } from './en/why.ts';

/** The texts of a call, in English. A text's gaps are described in `speak.ts`. */
export const en = {
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
