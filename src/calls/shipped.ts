/** What ships: the units, households and calls under `scenarios/`, checked when first asked for. */
import course from '../../scenarios/course.json';
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
import { checkCall, type Library, preparedIn } from './check.ts';
import type { CourseEntry } from './course.ts';
import { problemLine } from './problems.ts';
import type { CallFile } from './schema.ts';
import type { Prepared } from './setup.ts';
import { CALL_FILES, VISIT_FILES } from './shipped-calls.ts';

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

/** The course as `underlawn course` worked it out; a call that is not on it yet comes last. */
export const COURSE: readonly CourseEntry[] = course;

function inOrder<T extends { readonly id: string }>(files: readonly T[]): readonly T[] {
  const place = (id: string) => {
    const at = COURSE.findIndex((e) => e.call === id);
    return at < 0 ? COURSE.length : at;
  };
  return [...files].sort((a, b) => place(a.id) - place(b.id));
}

function checkedFile(file: { readonly id: string }, folder: string): CallFile {
  const checked = checkCall(file, shippedLibrary());
  if (!checked.ok)
    throw new Error(checked.problems.map((p) => problemLine(`scenarios/${folder}/${file.id}.json`, p)).join('\n'));
  return checked.value;
}

let calls: readonly CallFile[] | undefined;

/** Shipped calls by the course: the easy ones first. */
export function shippedCalls(): readonly CallFile[] {
  calls ??= inOrder(CALL_FILES).map((file) => checkedFile(file, 'calls'));
  return calls;
}

let visits: readonly CallFile[] | undefined;

/** Shipped routine visits. */
export function shippedVisits(): readonly CallFile[] {
  visits ??= VISIT_FILES.map((file) => checkedFile(file, 'visits'));
  return visits;
}

/** Whatever ships to be taken. */
export function allShipped(): readonly CallFile[] {
  return [...shippedCalls(), ...shippedVisits()];
}

/** A checked call joined with its unit and household. Throws when the library lacks them. */
export function prepareCall(call: CallFile, from: Library = shippedLibrary()): Prepared {
  return preparedIn(call, from);
}
