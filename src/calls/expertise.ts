/** A diagnosis of the call being taken: its property without the hidden faults, and what was done so far. */
import {
  type Beginning,
  beginningsOf,
  Diagnosis,
  hypothesesOf,
  type Lived,
  type Probe,
  type Property,
  probesOf,
  readingOf,
  type Seen,
} from '../diagnosis/index.ts';
import { ACTION_BY_ID } from '../service/index.ts';
import { isWithheld } from './allowed.ts';
import type { CallSession, Done } from './session.ts';
import { doorOf, noticedOf, type Prepared, unitSetup } from './setup.ts';

/** What every hypothesis of a call shares. The household's own doings (a wash day) are part of it: they are asked for. */
export function propertyOf(prepared: Prepared): Property {
  const { faults: _hidden, ...setup } = unitSetup(prepared);
  const { report } = prepared.call;
  const { left } = prepared.lived ?? {};
  const door = doorOf(prepared);
  return {
    setup,
    ...(door ? { door } : {}),
    ...(left ? { left } : {}),
    report_s: prepared.report_s,
    silenced: report.silenced,
    answers: { history: report.history, use: report.use },
    ...(report.told ? { told: report.told } : {}),
  };
}

/** Two diagnoses of one call begin alike, and what went before is lived through once. */
const BEGINNINGS = new WeakMap<Prepared, readonly Beginning[]>();

export function diagnosisOf(prepared: Prepared, lived?: Lived): Diagnosis {
  const beginnings = BEGINNINGS.get(prepared) ?? beginningsIn(prepared, lived);
  BEGINNINGS.set(prepared, beginnings);
  return new Diagnosis(propertyOf(prepared), beginnings, noticedOf(prepared.call).length > 0);
}

function beginningsIn(prepared: Prepared, lived?: Lived): readonly Beginning[] {
  const { spec, report_s, call } = prepared;
  const hypotheses = hypothesesOf(spec, report_s, call.report.earlier_trips, prepared.lived?.left?.t);
  return beginningsOf(propertyOf(prepared), hypotheses, noticedOf(call), lived);
}

/** The checks that may be weighed in a call. */
export function probesIn({ call, spec }: Prepared): readonly Probe[] {
  return probesOf(spec).filter((probe) => !probe.acts.some(({ id }) => isWithheld(call, id)));
}

/** Something done on a call as a diagnosis takes it in. What is only said or written tells nothing of the works. */
export function seenOf(session: CallSession, done: Done): Seen {
  const { from_ms, to_ms, notes, perceived } = done.outcome;
  const { arrived_ms } = session;
  return {
    deed: {
      id: done.def.id,
      fill: done.action.fill ?? {},
      from_ms,
      to_ms,
      ...(done.def.id === 'decide-visit' && arrived_ms !== undefined ? { arrived_ms } : {}),
    },
    ...(tells(done) ? { reading: readingOf(notes, perceived) } : {}),
  };
}

function tells({ def }: Done): boolean {
  return def.group !== 'say' && ACTION_BY_ID.has(def.id);
}
