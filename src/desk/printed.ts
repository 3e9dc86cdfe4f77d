/** Sheets of a call, to be printed. A file of its own: few calls are taken with paper. */
import type { Prepared } from '../calls/setup.ts';
import { traineeSheet, trainerSheet } from '../share/sheets.ts';
import { EngineError } from './engine.ts';
import type { Reply, SheetOf } from './protocol.ts';

export function sheet(who: SheetOf, prepared: Prepared | undefined): Reply {
  if (prepared === undefined) throw new EngineError({ id: 'trouble.call-unknown' });
  return { kind: 'sheet', sheet: who === 'trainer' ? trainerSheet(prepared) : traineeSheet(prepared) };
}
