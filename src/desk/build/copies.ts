import type { Desk } from '../desk.ts';
import { fetchCallFile } from '../shipped-files.ts';

/** The text of a call that there is already, under an id of its own: shipped, or brought from elsewhere. */
export async function callText(desk: Desk, id: string): Promise<string | undefined> {
  const brought = await desk.store.broughtBy(id);
  if (brought !== undefined) return brought.text;
  const shipped = await fetchCallFile(id);
  if (shipped === undefined) return undefined;
  const { $schema: _, ...call } = shipped;
  return JSON.stringify({ ...call, id: `${id.slice(0, 50)}-own` });
}
