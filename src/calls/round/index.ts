/** Lots that live on through a year. */
export type { BookEntry } from './book.ts';
export { checkRound } from './check.ts';
export { liveOn } from './live.ts';
export { firstState, type Lot, type LotState, makeLot, type Visit } from './lot.ts';
export type { RoundFile } from './schema.ts';
export { rowOf, rowWords, type SheetRow, totalOf } from './sheet.ts';
export { lotsOf, shippedRound } from './shipped.ts';
export { leaveLot, preparedOf } from './visit.ts';
export {
  liveYear,
  liveYearAs,
  loadYear,
  ROUND_PLAYERS,
  type RoundPlayer,
  replayYear,
  takeDoor,
  yearRecord,
} from './year.ts';
