/** Item statistics as rows for a spreadsheet: a line for each question of each form that enough people sat. */
import type { FormStatistics } from '../quiz/item-statistics.ts';
import { TOPIC_OF } from '../quiz/topics.ts';
import { csvOf, thousandths, type Value } from './csv.ts';

const COLUMNS = [
  ...['exam', 'form', 'unit', 'units', 'place', 'topic', 'skill', 'seed'],
  ...['n', 'omitted', 'p', 'r_corrected', 'flags', 'answers'],
];

export function statisticsCsv(forms: readonly FormStatistics[]): string {
  const rows = forms.flatMap(({ exam, form, unit, units, n, found }) =>
    (found?.items ?? []).map(({ place, skill, seed, omitted, p, r, flags, chosen }): Value[] => [
      ...[exam, form, unit, units, place, TOPIC_OF[skill], skill, seed],
      ...[n, omitted, thousandths(p), thousandths(r), flags.join(' ')],
      chosen.map(({ answer, right, times }) => `${answer}${right ? '*' : ''} ${times}`).join('; '),
    ]),
  );
  return csvOf([COLUMNS, ...rows]);
}
