/** What the readings of a call make together, as its debrief has it, without the judgement of each step. */
import { diagnosisOf, seenOf } from '../../src/calls/expertise.ts';
import type { CallSession } from '../../src/calls/index.ts';
import { siftingAtMend } from '../../src/calls/review.ts';
import type { Sifting } from '../../src/diagnosis/index.ts';

export function siftedAfter(session: CallSession): Sifting {
  const diagnosis = diagnosisOf(session.prepared);
  for (const done of session.done) diagnosis.observe(seenOf(session, done));
  return siftingAtMend(session, diagnosis);
}
