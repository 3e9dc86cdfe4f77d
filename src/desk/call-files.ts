/**
 * The files of one call, fetched when it is opened. They ship with the page, so a visitor's browser takes them as they
 * are: `tests/unit/desk/call-files.test.ts` holds them against their schemas.
 */
import type { CallFile } from '../calls/schema.ts';
import { type Prepared, prepare } from '../calls/setup.ts';
import type { HouseholdSpec } from '../plant/index.ts';
import type { UnitSpec } from '../unit/index.ts';
import { fetched } from './fetched.ts';

type Files<T> = Readonly<Record<string, () => Promise<T>>>;

const CALLS = import.meta.glob<CallFile>('../../scenarios/calls/*.json', { import: 'default' });
export const UNITS = import.meta.glob<UnitSpec>('../../scenarios/units/*.json', { import: 'default' });
export const HOUSEHOLDS = import.meta.glob<HouseholdSpec>('../../scenarios/households/*.json', { import: 'default' });

/** A call joined with its unit and household; undefined where no such call ships. */
export async function fetchCall(id: string): Promise<Prepared | undefined> {
  const call = await fileOf(CALLS, 'calls', id);
  if (call === undefined) return undefined;
  const property = await fetchProperty(call.unit, call.household);
  if (property === undefined) throw new Error(`call ${id}: unit or household missing`);
  return prepare(call, property.spec, property.household);
}

/** Whether a call of this id ships with the page. */
export function isShipped(id: string): boolean {
  return pathOf('calls', id) in CALLS;
}

/** A call from its file, where one was brought; otherwise by its id, of those that ship. */
export async function callBy(id: string, brought: string | undefined): Promise<Prepared | undefined> {
  if (brought === undefined) return fetchCall(id);
  const { broughtCall } = await fetched(import('./brought.ts'));
  return broughtCall(brought);
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
