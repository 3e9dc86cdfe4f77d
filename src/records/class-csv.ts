/** A class sheet as rows for a spreadsheet: a line for each person and call, then what does not count. */
import type { ClassSheet } from './class-sheet.ts';
import { csvOf, type Value } from './csv.ts';
import type { Refused } from './marked.ts';

/** `wordsOf` says in one line why a record does not count. */
export function classCsv({ calls, rows, refused }: ClassSheet, wordsOf: (refused: Refused) => string): string {
  const head = [
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
    'flags',
    'why',
  ];
  const taken = rows.flatMap(({ who, cells }) =>
    calls.flatMap((call): Value[][] => {
      const cell = cells.get(call);
      if (!cell) return [];
      const { passed, score, minutes, money_usd, mode, helped, flags } = cell.best;
      return [[who, call, 'counts', passed, score, minutes, money_usd, cell.tries, mode, helped, flags.join(' '), '']];
    }),
  );
  const not = refused.map((one): Value[] => {
    const state = one.otherEngine ? 'other engine' : 'refused';
    return [one.who, one.call ?? '', state, '', '', '', '', '', '', '', '', wordsOf(one)];
  });
  return csvOf([head, ...taken, ...not]);
}
