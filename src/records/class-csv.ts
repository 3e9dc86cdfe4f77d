/** A class sheet as rows for a spreadsheet: a line for each person and call, then what does not count. */
import type { ClassSheet } from './class-sheet.ts';
import { csvOf, type Value } from './csv.ts';
import type { Counts, Refused } from './marked.ts';

interface Words {
  /** Says in one line why a record does not count. */
  readonly why: (refused: Refused) => string;
  /** Minutes of a record's regret, as far as they are known; without it there is no such column. */
  readonly regret?: ((best: Counts) => number | undefined) | undefined;
}

const COLUMNS = [
  'who',
  'call',
  'state',
  'passed',
  'score',
  'minutes',
  'money_usd',
  'tries',
  'mode',
  'helped',
  'trainer',
  'flags',
  'why',
] as const;

export function classCsv({ calls, rows, refused }: ClassSheet, { why, regret }: Words): string {
  const last = (value: Value) => (regret ? [value] : []);
  const taken = rows.flatMap(({ who, cells }) =>
    calls.flatMap((call): Value[][] => {
      const cell = cells.get(call);
      if (!cell) return [];
      const { passed, score, minutes, money_usd, mode, helped, taught, flags } = cell.best;
      const row = [
        who,
        call,
        'counts',
        passed,
        score,
        minutes,
        money_usd,
        cell.tries,
        mode,
        helped,
        taught,
        flags.join(' '),
        '',
      ];
      return [[...row, ...last(tenths(regret?.(cell.best)))]];
    }),
  );
  const not = refused.map((one): Value[] => {
    const state = one.otherEngine ? 'other engine' : 'refused';
    return [one.who, one.call ?? '', state, '', '', '', '', '', '', '', '', '', why(one), ...last('')];
  });
  return csvOf([[...COLUMNS, ...last('regret_min')], ...taken, ...not]);
}

function tenths(value: number | undefined): Value {
  return value === undefined ? '' : Math.round(value * 10) / 10;
}
