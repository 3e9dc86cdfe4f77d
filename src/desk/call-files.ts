/** One call joined with its unit and household, when it is opened. */
import { type Prepared, prepare } from '../calls/setup.ts';
import { fetched } from './fetched.ts';
import { fetchCallFile, fetchProperty } from './shipped-files.ts';

/** A call of those that ship; undefined where there is none of this id. */
export async function fetchCall(id: string): Promise<Prepared | undefined> {
  const call = await fetchCallFile(id);
  if (call === undefined) return undefined;
  const property = await fetchProperty(call.unit, call.household);
  if (property === undefined) throw new Error(`call ${id}: unit or household missing`);
  return prepare(call, property.spec, property.household);
}

/** A call from its file, where one was brought; otherwise by its id, of those that ship. */
export async function callBy(id: string, brought: string | undefined): Promise<Prepared | undefined> {
  if (brought === undefined) return fetchCall(id);
  const { broughtCall } = await fetched(import('./brought.ts'));
  return broughtCall(brought);
}
