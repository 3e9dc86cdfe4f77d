/**
 * What a call promises by its file, held against its property and its own solution: that what the household noticed is so,
 * that there is something to mend when somebody comes, that what it needs is allowed, that nobody is put in danger.
 */
import { placedFault } from '../../faults/index.ts';
import { SYMPTOMS, type SymptomId } from '../../service/index.ts';
import type { Unit } from '../../unit/index.ts';
import { isCleared, trueFaults } from '../flags.ts';
import type { Problem } from '../problems.ts';
import type { Breach, CallSession } from '../session.ts';
import { noticedOf, type Prepared, unitAtReport, unitFaults } from '../setup.ts';

/** Every promise that is broken. `solution`: the call as its own solution takes it. */
export function promisesBroken(solution: CallSession): readonly Problem[] {
  const { prepared } = solution;
  const unit = unitAtReport(prepared);
  return [
    ...missing(prepared, unit).map((id) => ({
      path: NOTICED,
      message: `"${id}" is not so when the phone rings`,
      mend: 'change onset, severity or history, or take it out of what was noticed',
    })),
    ...leftBehind(solution),
    ...mendsWithheld(prepared),
    ...dangers(solution, unit),
    // Last, for it lets the property live on.
    ...healsItself(prepared, unit),
  ];
}

/** Where a call's file says what was noticed. */
export const NOTICED = 'report.noticed';

/** What the household says it noticed and could not have. */
export function symptomsMissing(prepared: Prepared): readonly SymptomId[] {
  return missing(prepared, unitAtReport(prepared));
}

function missing(prepared: Prepared, unit: Unit): readonly SymptomId[] {
  return noticedOf(prepared.call).filter((symptom) => !SYMPTOMS[symptom](unit));
}

/** A fault that is over before anybody could stand before it leaves a visit with nothing to find. */
const VISIT_ENDS_s = 4 * 3600;

function healsItself(prepared: Prepared, unit: Unit): readonly Problem[] {
  if (prepared.call.expected.decision !== 'visit' || prepared.call.kind === 'visit') return [];
  if (unitFaults(prepared).every(({ id }) => placedFault(id).family === 'use')) {
    return [
      {
        path: 'faults',
        message: 'nothing is broken that a visit could mend',
        mend: 'add a fault of the works, or expect the call to be closed by phone',
      },
    ];
  }
  unit.cutAt(prepared.report_s + VISIT_ENDS_s);
  return unitFaults(prepared).flatMap(({ id, present, onset_s }, i): Problem[] => {
    const over = present !== 'always' && onset_s <= prepared.report_s && unit.isOver(id);
    if (!over || placedFault(id).family === 'use') return [];
    return [
      {
        path: `faults[${i}].present`,
        message: `${id} is over by itself before a visit could end`,
        mend: 'let it last, or expect the call to be closed by phone',
      },
    ];
  });
}

/** A reset by phone and no more passes where the call is to be closed so: it must leave nothing broken then. */
function leftBehind(solution: CallSession): readonly Problem[] {
  if (solution.prepared.call.expected.decision !== 'close' || !solution.ended) return [];
  return trueFaults(solution)
    .filter((key) => !isCleared(solution, key))
    .map((key) => ({
      path: 'expected.decision',
      message: `the shortcut "reset only" passes: closed by phone, ${key} stays`,
      mend: 'expect a visit, or let the fault end by itself or by the reset',
    }));
}

function mendsWithheld(prepared: Prepared): readonly Problem[] {
  const { withheld = [], expected } = prepared.call;
  if (expected.decision !== 'visit') return [];
  const none = (ids: readonly string[]) => ids.length > 0 && ids.every((id) => withheld.includes(id));
  return unitFaults(prepared).flatMap(({ id }, i): Problem[] => {
    const { mendedBy, shownBy, family } = placedFault(id);
    if (family === 'use') return [];
    const lacking = (what: string, ids: readonly string[]) => ({
      path: 'withheld',
      message: `all that ${what} faults[${i}], ${id}, is withheld`,
      mend: `allow ${ids.join(' or ')}`,
    });
    if (none(mendedBy)) return [lacking('mends', mendedBy)];
    return none(shownBy) ? [lacking('shows', shownBy)] : [];
  });
}

/** Nobody learns from a reference that skips a step of safety, or leaves a household beside its sewage unwarned. */
function dangers(solution: CallSession, unit: Unit): readonly Problem[] {
  const [breach] = solution.breaches;
  if (breach) return [skipped(solution, breach)];
  // On a routine visit nobody is on the phone to be warned.
  if (solution.prepared.call.kind === 'visit') return [];
  const open = unit.driveAt(unit.t).condition.lidGap > 0;
  const hazards = [
    ...(SYMPTOMS['sewage-out'](unit) ? ['sewage lies about'] : []),
    ...(open ? ['a lid gives way or is off'] : []),
  ];
  const warned = solution.done.some(({ def }) => def.id === 'advise-keep-away');
  return warned
    ? []
    : hazards.map((hazard) => ({
        path: 'solution',
        message: `${hazard}, and nobody is told to keep away`,
        mend: 'do "advise-keep-away" by phone, before the decision',
      }));
}

const SAFER: Readonly<Record<Breach['id'], string>> = {
  'danger-not-asked': 'ask about danger first: "ask-danger"',
  'householder-opens-panel': 'a householder never opens the panel: take the step out',
  'householder-opens-tank': 'a householder never opens a tank: take the step out',
  'site-not-made-safe': 'do "make-safe" before the works are touched',
  'not-locked-out': 'lock the circuit out before the step',
  'lid-left-open': 'shut every lid before leaving',
  'chlorine-mixed': 'never put two kinds of chlorine together: take the step out',
};

/** The solution ends at its breach: it is the step after the last that was done. */
function skipped(solution: CallSession, { id }: Breach): Problem {
  const at = solution.done.length;
  const step = solution.prepared.call.solution[at]?.do ?? '';
  return { path: `solution[${at}]`, message: `"${step}" skips a step of safety (${id})`, mend: SAFER[id] };
}
