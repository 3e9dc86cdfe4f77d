/** The round's own sheet at year's end: per lot the doors, those for the same cause twice, what ran out, hours, money. */
import { type Message, quantity, say } from '../../service/index.ts';
import type { Lot, LotState, Visit } from './lot.ts';

export interface SheetRow {
  readonly lot: string;
  /** Doors opened, routine visits among them, and those of them that nobody had planned. */
  readonly doors: number;
  readonly rung: number;
  /** Doors at which a cause stood that had stood at an earlier one and was not ended there. */
  readonly again: number;
  /** Times that a household, rung for in vain, had another firm mend it. */
  readonly lost: number;
  readonly ground_m3: number;
  readonly untreated_h: number;
  readonly minutes: number;
  readonly money_usd: number;
}

export function rowOf(lot: Lot, { visits, harm }: LotState): SheetRow {
  const sum = (of: (visit: Visit) => number) => visits.reduce((all, visit) => all + of(visit), 0);
  return {
    lot: lot.file.lot,
    doors: visits.length,
    rung: visits.filter((v) => v.ring.kind !== 'routine').length,
    again: visits.filter((visit, i) => isAgain(visit, visits.slice(0, i))).length,
    lost: visits.filter((v) => v.entry.lost).length,
    ground_m3: harm.ground_m3,
    untreated_h: harm.untreated_h,
    minutes: sum((v) => v.entry.minutes),
    money_usd: sum((v) => v.entry.money_usd),
  };
}

/** What was mended or cleaned in between has come anew, with another day it came on: that is not the same cause. */
function isAgain(visit: Visit, earlier: readonly Visit[]): boolean {
  return visit.entry.stood.some(({ key, since_s }) =>
    earlier.some((before) => before.entry.stood.some((s) => s.key === key && s.since_s === since_s)),
  );
}

export function totalOf(rows: readonly SheetRow[]): Omit<SheetRow, 'lot'> {
  const sum = (of: (row: SheetRow) => number) => rows.reduce((all, row) => all + of(row), 0);
  return {
    doors: sum((r) => r.doors),
    rung: sum((r) => r.rung),
    again: sum((r) => r.again),
    lost: sum((r) => r.lost),
    ground_m3: sum((r) => r.ground_m3),
    untreated_h: sum((r) => r.untreated_h),
    minutes: sum((r) => r.minutes),
    money_usd: sum((r) => r.money_usd),
  };
}

/** A row, or the sum of all, in words. */
export function rowWords(row: Omit<SheetRow, 'lot'>): Message {
  return say('round.sheet.row', {
    doors: quantity('count', row.doors),
    rung: quantity('count', row.rung),
    again: quantity('count', row.again),
    lost: quantity('count', row.lost),
    ground: quantity('volume_m3', row.ground_m3, 0.01),
    hours: quantity('duration_h', row.untreated_h, 1),
    money: quantity('money_usd', row.money_usd, 1),
    minutes: quantity('duration_min', row.minutes, 1),
  });
}
