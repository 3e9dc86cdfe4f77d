import type { Assistance } from '../../calls/view.ts';
import type { Desk } from '../desk.ts';
import { toldOf } from '../engine.ts';

/** Hands the record over as a JSON file. */
export async function keepRecord(desk: Desk, assistance: Assistance | undefined): Promise<void> {
  try {
    const { record, fileName } = await desk.engine.ask({ kind: 'record', ...(assistance ? { assistance } : {}) });
    const file = new Blob([`${JSON.stringify(record, null, 2)}\n`], { type: 'application/json' });
    const link = document.createElement('a');
    link.href = URL.createObjectURL(file);
    link.download = fileName;
    link.click();
    // The download holds the blob by now; a browser that is slow to start it still has a minute.
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  } catch (error) {
    desk.fail(toldOf(error));
  }
}
