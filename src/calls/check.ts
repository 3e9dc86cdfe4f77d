/** Loads a call: schema first, then what only the catalogue, the calendar and the action list can tell. */
import { FAULTS, faultOn, faultsOf } from '../faults/index.ts';
import type { HouseholdSpec } from '../plant/index.ts';
import { ACTION_BY_ID, actionOn } from '../service/index.ts';
import { numberAt, parseInstant, type UnitSpec, withNumbers } from '../unit/index.ts';
import { unitSchema } from '../unit/schema.ts';
import { canWithhold } from './allowed.ts';
import { type Problem, parseJson, problemsOf } from './problems.ts';
import { type CallFile, callSchema } from './schema.ts';
import { STATE_CAUSE } from './session-actions.ts';
import { type Prepared, prepare } from './setup.ts';

/** Units and households by id: the shipped ones, or a folder's. */
export interface Library {
  readonly units: ReadonlyMap<string, UnitSpec>;
  readonly households: ReadonlyMap<string, HouseholdSpec>;
}

export type Checked<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: Problem[] };

/** A checked call joined with its unit and household. Throws when the library lacks them. */
export function preparedIn(call: CallFile, { units, households }: Library): Prepared {
  const [spec, household] = [units.get(call.unit), households.get(call.household)];
  if (!spec || !household) throw new Error(`call ${call.id}: unit or household missing`);
  return prepare(call, spec, household);
}

/** A call from the text of its file. */
export function loadCall(text: string, library: Library): Checked<CallFile> {
  const parsed = parseJson(text);
  return 'problem' in parsed ? { ok: false, problems: [parsed.problem] } : checkCall(parsed.value, library);
}

export function checkCall(value: unknown, library: Library): Checked<CallFile> {
  if (isNewer(value, 'version')) return { ok: false, problems: [newer('version')] };
  const result = callSchema.safeParse(value, { reportInput: true });
  if (!result.success) return { ok: false, problems: problemsOf(result.error) };
  const call = result.data;
  const problems = [
    ...checkTimes(call),
    ...checkKind(call),
    ...checkIds(call, library),
    ...checkChanged(call, library),
    ...checkWithheld(call, library),
    ...checkSolution(call, library),
  ];
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: call };
}

function checkTimes(call: CallFile): Problem[] {
  const start = parseInstant(call.start);
  if (!start) return [impossible('start')];
  const first = start.day - call.history_days;
  const storms = call.storms?.flatMap((storm, i): Problem[] => {
    const path = `storms[${i}].start`;
    const at = parseInstant(storm.start);
    if (!at) return [impossible(path)];
    return at.day < first ? [beforeHistory(path, start.day - at.day)] : [];
  });
  const faults = call.faults.flatMap((fault, i): Problem[] => {
    const path = `faults[${i}].onset`;
    const onset = parseInstant(fault.onset);
    if (!onset) return [impossible(path)];
    if (onset.day < first) {
      return [beforeHistory(path, start.day - onset.day)];
    }
    const late = onset.day > start.day || (onset.day === start.day && onset.secondOfDay > start.secondOfDay);
    return late && call.kind === 'alarm' && i === 0
      ? [
          {
            path,
            message: 'after the report',
            mend: 'the first fault of an alarm call must be there when the phone rings',
          },
        ]
      : [];
  });
  return [...(storms ?? []), ...faults];
}

/** A routine visit has its label, and may find nothing wrong; other calls have a cause. */
function checkKind({ kind, visit, faults, start }: CallFile): Problem[] {
  if (kind !== 'visit') {
    const stray = visit
      ? [{ path: 'visit', message: 'of routine visits only', mend: 'take it out, or make kind "visit"' }]
      : [];
    return faults.length > 0 ? stray : [...stray, { path: 'faults', message: 'too few', mend: 'at least 1' }];
  }
  if (!visit)
    return [{ path: 'visit', message: 'missing', mend: 'say when the last visit was: {"last": "2031-01-20"}' }];
  const last = parseInstant(`${visit.last}T00:00`);
  if (!last) return [{ path: 'visit.last', message: 'no such day', mend: 'write a real day like 2031-01-20' }];
  const now = parseInstant(start);
  return now && last.day >= now.day
    ? [{ path: 'visit.last', message: 'not before this visit', mend: 'write a day before start' }]
    : [];
}

/** Whether a file says that it is of a later form than this Underlawn knows. */
export function isNewer(value: unknown, key: string): boolean {
  const number = typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>)[key] : 0;
  return typeof number === 'number' && number > 1;
}

function newer(path: string): Problem {
  return {
    path,
    message: 'written for a newer Underlawn',
    mend: 'open it with a newer one, or write 1 where the call has nothing new',
  };
}

function beforeHistory(path: string, days: number): Problem {
  return {
    path,
    message: 'before the history starts',
    mend: `move it later or raise history_days above ${days - 1}`,
  };
}

function impossible(path: string): Problem {
  return { path, message: 'no such day or hour', mend: 'write a real local instant like 2031-05-14T16:42' };
}

function checkIds(call: CallFile, library: Library): Problem[] {
  const problems: Problem[] = [];
  const household = library.households.get(call.household);
  const unit = library.units.get(call.unit);
  if (!unit) problems.push(unknown('unit', call.unit, [...library.units.keys()]));
  if (!household) problems.push(unknown('household', call.household, [...library.households.keys()]));
  call.faults.forEach((fault, i) => {
    const entry = FAULTS.find((f) => f.id === fault.fault);
    if (!entry) {
      problems.push(
        unknown(
          `faults[${i}].fault`,
          fault.fault,
          FAULTS.map((f) => f.id),
        ),
      );
    } else if (unit && !faultOn(unit, fault.fault, fault.part)) {
      problems.push(misplaced(i, fault.fault, unit));
    }
  });
  return problems;
}

function checkChanged({ unit: id, changed = {} }: CallFile, { units }: Library): Problem[] {
  const unit = units.get(id);
  if (!unit) return [];
  const strange = Object.keys(changed).filter((path) => numberAt(unit, path) === undefined);
  if (strange.length > 0) {
    return strange.map((path) => ({
      path: `changed.${path}`,
      message: `${id} has no number there`,
      mend: "write the path of a number as the unit's file has it",
    }));
  }
  const whole = unitSchema.safeParse(withNumbers(unit, changed), { reportInput: true });
  return whole.success ? [] : problemsOf(whole.error).map((one) => ({ ...one, path: `changed.${one.path}` }));
}

/** A known fault that this unit cannot have as written. */
function misplaced(i: number, id: string, unit: UnitSpec): Problem {
  const parts = faultsOf(unit).flatMap((f) => (f.id === id ? [f.part] : []));
  if (parts.length === 0) {
    return {
      path: `faults[${i}].fault`,
      message: `"${id}" cannot be on ${unit.id}`,
      mend: 'choose another fault or unit',
    };
  }
  return parts.includes(undefined)
    ? { path: `faults[${i}].part`, message: `"${id}" has no parts`, mend: 'take the part out' }
    : { path: `faults[${i}].part`, message: `"${id}" sits on a part`, mend: `name one of ${parts.join(', ')}` };
}

function unknown(path: string, id: string, known: readonly string[]): Problem {
  return { path, message: `no such id "${id}"`, mend: `write one of ${known.join(', ')}` };
}

function checkWithheld(call: CallFile, library: Library): Problem[] {
  const unit = library.units.get(call.unit);
  return (call.withheld ?? []).flatMap((id, i): Problem[] => {
    const path = `withheld[${i}]`;
    const def = unit ? actionOn(unit, id) : ACTION_BY_ID.get(id);
    if (!def) return [noSuchAction(path, id)];
    if (!canWithhold(def)) {
      return [{ path, message: `"${id}" keeps a visit safe or going`, mend: 'withhold only checks and mends' }];
    }
    const at = call.solution.findIndex((step) => step.do === id);
    return at < 0
      ? []
      : [
          {
            path,
            message: `the solution does "${id}" at step ${at}`,
            mend: 'let it be done, or solve the call without it',
          },
        ];
  });
}

function noSuchAction(path: string, id: string): Problem {
  return { path, message: `no such action "${id}" on this unit`, mend: 'write the id of an action' };
}

function checkSolution(call: CallFile, library: Library): Problem[] {
  const unit = library.units.get(call.unit);
  const known = (id: string) => id === STATE_CAUSE || (unit ? actionOn(unit, id) !== undefined : ACTION_BY_ID.has(id));
  return call.solution.flatMap((step, i) => (known(step.do) ? [] : [noSuchAction(`solution[${i}].do`, step.do)]));
}
