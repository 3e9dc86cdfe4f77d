import type { Assistance } from '../../calls/view.ts';
import type { Desk } from '../desk.ts';
import { toldOf } from '../engine.ts';
import { handOver } from '../hand-over.ts';

/** Hands the record over as a JSON file. */
export async function keepRecord(desk: Desk, assistance: Assistance | undefined): Promise<void> {
  try {
    const { record, fileName } = await desk.engine.ask({ kind: 'record', ...(assistance ? { assistance } : {}) });
    handOver(fileName, record);
  } catch (error) {
    desk.fail(toldOf(error));
  }
}
