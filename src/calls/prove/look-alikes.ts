/** The causes that would read like the true one in every check that is left when the solution mends. */
import {
  alike,
  causeOf,
  type Diagnosis,
  keysOf,
  SOUND_CAUSE,
  type Suspect,
  Twin,
  tellingAct,
} from '../../diagnosis/index.ts';
import { placedFault } from '../../faults/index.ts';
import { type Message, say } from '../../service/index.ts';
import { probesIn, propertyOf, seenOf } from '../expertise.ts';
import { trueFaults } from '../flags.ts';
import type { CallSession, Done } from '../session.ts';
import { STATE_CAUSE } from '../session-actions.ts';
import { unitFaults } from '../setup.ts';

export interface LookAlike {
  readonly cause: string;
  /** Checks that show something is wrong and yet show the same for both: the act that tells, and what it reads. */
  readonly shared: readonly SharedReading[];
}

export interface SharedReading {
  readonly check: string;
  readonly label: Message;
  readonly lines: readonly Message[];
}

/** So many of the shared readings are told. */
const TOLD = 6;

export function lookAlikes(solution: CallSession, diagnosis: Diagnosis): readonly LookAlike[] {
  const { prepared } = solution;
  const truth = causeOf(trueFaults(solution));
  const property = propertyOf(prepared);
  const trueTwin = new Twin(property, unitFaults(prepared));
  const soundTwin = new Twin(property, []);
  for (const done of stepsUntilMend(solution.done)) {
    const seen = seenOf(solution, done);
    diagnosis.observe(seen);
    trueTwin.follow(seen.deed);
    soundTwin.follow(seen.deed);
  }
  const checks = probesIn(prepared)
    .filter((probe) => trueTwin.canReach(probe))
    .map((probe) => ({ probe, reading: trueTwin.predict(probe) }));
  const rivals = diagnosis
    .likeliest(60, 0.9999)
    .filter(({ hypothesis }) => hypothesis.cause !== truth)
    .filter((rival) => !sameMend(rival, truth))
    .filter(({ twin }) => checks.every(({ probe, reading }) => alike(reading, twin.predict(probe))));
  if (rivals.length === 0) return [];
  const shared = checks
    .filter(({ probe, reading }) => !alike(reading, soundTwin.predict(probe)))
    .slice(0, TOLD)
    .flatMap(({ probe }): SharedReading[] => {
      const act = tellingAct(probe.id);
      const lines = trueTwin.noted(probe).map(({ what, reading }) => say('note.line', { what, reading }));
      return act ? [{ check: act.id, label: act.label, lines }] : [];
    });
  return [...new Set(rivals.map(({ hypothesis }) => hypothesis.cause))].map((cause) => ({ cause, shared }));
}

function stepsUntilMend(done: readonly Done[]): readonly Done[] {
  const first = done.findIndex((d) => d.def.group === 'mend' || d.def.id === STATE_CAUSE);
  return first < 0 ? done : done.slice(0, first);
}

/** Two causes with a mend in common need not be told apart. */
function sameMend({ hypothesis }: Suspect, truth: string): boolean {
  const mendsOf = (cause: string) => keysOf(cause).map((key) => placedFault(key).mendedBy);
  if (hypothesis.faults.length === 0 || truth === SOUND_CAUSE) return false;
  const [mine, theirs] = [mendsOf(truth), mendsOf(hypothesis.cause)];
  return mine.every((m) => theirs.some((t) => t.some((id) => m.includes(id))));
}
