/**
 * A record of learning in SCORM 1.2: elements of its data model and what each is set to, in the order in which they are to
 * be set. The status is one for both meanings: passed or failed where it is judged, else completed.
 */
import { timespan } from '../instants.ts';
import type { Interaction, Learnt } from '../learnt/learnt.ts';
import { COUNT, decimal, listed, NUMBER, number, TEXT, text } from '../limits.ts';

/** An element of the data model, and its value. */
export type Setting = readonly [element: string, value: string];

/** Word of a result in this version. */
const RESULT = { correct: 'correct', incorrect: 'wrong' } as const;

/** The verdict, and what was answered; `from`: how many interactions the platform has of this attempt already. */
export function ended12(learnt: Learnt, from = 0): readonly Setting[] {
  const status = learnt.passed === undefined ? 'completed' : learnt.passed ? 'passed' : 'failed';
  return [
    ['cmi.core.score.raw', decimal(number(NUMBER.score12, learnt.score))],
    ['cmi.core.score.min', '0'],
    ['cmi.core.score.max', '100'],
    ['cmi.core.lesson_status', status],
    ...learnt.interactions.slice(0, COUNT.interactions.most).flatMap((one, i) => interaction(learnt, one, from + i)),
  ];
}

/** What is left half way. */
export function suspended12(activity: string, kept: string): readonly Setting[] {
  return [
    ['cmi.core.lesson_location', text(TEXT.location12, activity)],
    ['cmi.suspend_data', text(TEXT.suspended12, kept)],
  ];
}

/** At the very end of a session. */
export function left12(duration_s: number, suspended: boolean): readonly Setting[] {
  return [
    ['cmi.core.session_time', timespan(duration_s)],
    ['cmi.core.exit', suspended ? 'suspend' : ''],
  ];
}

/** Its elements in the order that the platform's own checks ask for: the id first, then the type. */
function interaction({ activity }: Learnt, one: Interaction, n: number): readonly Setting[] {
  const at = (name: string) => `cmi.interactions.${n}.${name}`;
  const response = responseOf(one);
  return [
    [at('id'), text(TEXT.interaction12, `${activity}.${one.id}`)],
    [at('type'), one.kind],
    ...patternsOf(one).map((pattern, i): Setting => [at(`correct_responses.${i}.pattern`), pattern]),
    [at('weighting'), decimal(number(NUMBER.weighting12, one.weighting))],
    ...(response === '' ? [] : [[at('student_response'), response] as const]),
    ...(one.result === undefined ? [] : [[at('result'), RESULT[one.result]] as const]),
    ...(one.latency_s === undefined ? [] : [[at('latency'), timespan(one.latency_s)] as const]),
  ];
}

function responseOf(one: Interaction): string {
  if (one.kind === 'numeric') return decimal(one.response);
  return listed(TEXT.response12, one.response, ',');
}

function patternsOf(one: Interaction): readonly string[] {
  if (one.kind === 'numeric') return [decimal(one.correct.low)];
  const ways = one.kind === 'choice' ? one.correct : one.correct === undefined ? [] : [one.correct];
  return ways.slice(0, COUNT.patterns.most).map((way) => listed(TEXT.pattern12, way, ','));
}
