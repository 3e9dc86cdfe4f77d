/**
 * The files that ship with the page, each fetched when it is needed. A visitor's browser takes them as they are:
 * `tests/unit/desk/call-files.test.ts` holds them against their schemas.
 */
import type { CallFile } from '../calls/schema.ts';
import type { HouseholdSpec } from '../plant/index.ts';
import type { UnitSpec } from '../unit/index.ts';
import { fetched } from './fetched.ts';

type Files<T> = Readonly<Record<string, () => Promise<T>>>;

const CALLS = import.meta.glob<CallFile>('../../scenarios/calls/*.json', { import: 'default' });
const VISITS = import.meta.glob<CallFile>('../../scenarios/visits/*.json', { import: 'default' });
export const UNITS = import.meta.glob<UnitSpec>('../../scenarios/units/*.json', { import: 'default' });
export const HOUSEHOLDS = import.meta.glob<HouseholdSpec>('../../scenarios/households/*.json', { import: 'default' });

/** The file of a call or a visit; undefined where none such ships. */
export async function fetchCallFile(id: string): Promise<CallFile | undefined> {
  return (await fileOf(CALLS, 'calls', id)) ?? fileOf(VISITS, 'visits', id);
}

/** Whether a call of this id ships with the page. */
export function isShipped(id: string): boolean {
  return pathOf('calls', id) in CALLS || pathOf('visits', id) in VISITS;
}

/** A unit and a household by their ids; undefined where one of them does not ship. */
export async function fetchProperty(
  unit: string,
  household: string,
): Promise<{ readonly spec: UnitSpec; readonly household: HouseholdSpec } | undefined> {
  const [spec, people] = await Promise.all([fileOf(UNITS, 'units', unit), fileOf(HOUSEHOLDS, 'households', household)]);
  return spec && people && { spec, household: people };
}

export async function fileOf<T>(files: Files<T>, folder: string, id: string): Promise<T | undefined> {
  const open = files[pathOf(folder, id)];
  return open && fetched(open());
}

function pathOf(folder: string, id: string): string {
  return `../../scenarios/${folder}/${id}.json`;
}
