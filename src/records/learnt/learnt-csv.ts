/** Records of learning as rows for a spreadsheet: one for each interaction. */
import { csvOf, type Value } from '../csv.ts';
import { patternsOf, responseOf } from '../scorm/responses.ts';
import type { Learnt } from './learnt.ts';

const HEAD = [
  'who',
  'activity',
  'mode',
  'passed',
  'score',
  'interaction',
  'type',
  'response',
  'correct',
  'result',
  'weighting',
  'latency_s',
];

/** Each record under the name that was typed for whose it is. Answers are written as SCORM 2004 does. */
export function learntCsv(records: readonly (readonly [who: string, learnt: Learnt])[]): string {
  const rows = records.flatMap(([who, { activity, mode, passed, score, interactions }]) =>
    interactions.map((one): Value[] => [
      who,
      activity,
      mode,
      passed ?? '',
      score,
      one.id,
      one.kind,
      responseOf(one),
      patternsOf(one).join(' | '),
      one.result ?? '',
      one.weighting,
      one.latency_s ?? '',
    ]),
  );
  return csvOf([HEAD, ...rows]);
}
