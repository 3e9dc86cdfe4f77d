/** Lots that live on through a year. */
export { checkRound } from './check.ts';
export { liveOn } from './live.ts';
export { firstState, type Lot, type LotState, type Visit } from './lot.ts';
export { rowOf, rowWords, totalOf } from './sheet.ts';
export { lotsOf, shippedRound } from './shipped.ts';
export { preparedOf } from './visit.ts';
export { judgedVisit, liveYear, liveYearAs, loadYear, ROUND_PLAYERS, replayYear, yearRecord } from './year.ts';
