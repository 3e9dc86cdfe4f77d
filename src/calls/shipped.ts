/** What ships: the units, households and calls under `scenarios/`, checked when first asked for. */
import noonSprinklers from '../../scenarios/calls/noon-sprinklers.json';
import stormLight from '../../scenarios/calls/storm-light.json';
import sunnyLine from '../../scenarios/calls/sunny-line.json';
import washDayLight from '../../scenarios/calls/wash-day-light.json';
import family2 from '../../scenarios/households/family-2.json';
import family3 from '../../scenarios/households/family-3.json';
import family3NoGrinder from '../../scenarios/households/family-3-no-grinder.json';
import family3Saver from '../../scenarios/households/family-3-saver.json';
import family3Strong from '../../scenarios/households/family-3-strong.json';
import family3Survey from '../../scenarios/households/family-3-survey.json';
import family3Weak from '../../scenarios/households/family-3-weak.json';
import family4 from '../../scenarios/households/family-4.json';
import family5 from '../../scenarios/households/family-5.json';
import u1 from '../../scenarios/units/u1.json';
import u2 from '../../scenarios/units/u2.json';
import u3 from '../../scenarios/units/u3.json';
import type { HouseholdSpec } from '../plant/index.ts';
import type { UnitSpec } from '../unit/index.ts';
import { householdSchema, unitSchema } from '../unit/schema.ts';
import { checkCall, type Library } from './check.ts';
import { problemLine } from './problems.ts';
import type { CallFile } from './schema.ts';
import { type Prepared, prepare } from './setup.ts';

const HOUSEHOLDS = [
  family2,
  family3,
  family4,
  family5,
  family3NoGrinder,
  family3Weak,
  family3Strong,
  family3Saver,
  family3Survey,
];

let library: Library | undefined;

/** Shipped units and households by id. */
export function shippedLibrary(): Library {
  library ??= {
    units: new Map([u1, u2, u3].map((file): [string, UnitSpec] => [file.id, unitSchema.parse(file)])),
    households: new Map(HOUSEHOLDS.map((file): [string, HouseholdSpec] => [file.id, householdSchema.parse(file)])),
  };
  return library;
}

let calls: readonly CallFile[] | undefined;

/** Shipped calls, in the order in which they are best taken. */
export function shippedCalls(): readonly CallFile[] {
  calls ??= [stormLight, sunnyLine, washDayLight, noonSprinklers].map((file) => {
    const checked = checkCall(file, shippedLibrary());
    if (!checked.ok)
      throw new Error(checked.problems.map((p) => problemLine(`scenarios/calls/${file.id}.json`, p)).join('\n'));
    return checked.value;
  });
  return calls;
}

/** A checked call joined with its unit and household. Throws when the library lacks them. */
export function prepareCall(call: CallFile, from: Library = shippedLibrary()): Prepared {
  const spec = from.units.get(call.unit);
  const household = from.households.get(call.household);
  if (!spec || !household) throw new Error(`call ${call.id}: unit or household missing`);
  return prepare(call, spec, household);
}
