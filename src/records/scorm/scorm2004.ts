/**
 * A record of learning in SCORM 2004, 4th edition: elements of its data model and what each is set to, in the order in which
 * they are to be set. Completion and success are two things here.
 */
import { isoDuration, utc } from '../instants.ts';
import { type Interaction, type Learnt, scaled } from '../learnt/learnt.ts';
import { COUNT, decimal, NUMBER, number, TEXT, text } from '../limits.ts';
import { patternsOf, responseOf } from './responses.ts';
import type { Setting } from './scorm12.ts';

export function ended2004(learnt: Learnt, from = 0): readonly Setting[] {
  const success = learnt.passed === undefined ? 'unknown' : learnt.passed ? 'passed' : 'failed';
  return [
    ['cmi.score.scaled', decimal(number(NUMBER.scaled2004, scaled(learnt)))],
    ['cmi.score.raw', decimal(learnt.score)],
    ['cmi.score.min', '0'],
    ['cmi.score.max', '100'],
    ['cmi.success_status', success],
    ['cmi.completion_status', learnt.completed ? 'completed' : 'incomplete'],
    ...learnt.interactions.slice(0, COUNT.interactions.most).flatMap((one, i) => interaction(learnt, one, from + i)),
  ];
}

export function suspended2004(activity: string, kept: string): readonly Setting[] {
  return [
    ['cmi.location', text(TEXT.location2004, activity)],
    ['cmi.suspend_data', text(TEXT.suspended2004, kept)],
  ];
}

export function left2004(duration_s: number, suspended: boolean): readonly Setting[] {
  return [
    ['cmi.session_time', isoDuration(duration_s)],
    ['cmi.exit', suspended ? 'suspend' : 'normal'],
  ];
}

/** The id first, then the type: the platform's checks hang on them. Its time is the end of the activity. */
function interaction(learnt: Learnt, one: Interaction, n: number): readonly Setting[] {
  const at = (name: string) => `cmi.interactions.${n}.${name}`;
  const response = responseOf(one);
  return [
    [at('id'), text(TEXT.interaction2004, `${learnt.activity}.${one.id}`)],
    [at('type'), one.kind],
    ...patternsOf(one).map((pattern, i): Setting => [at(`correct_responses.${i}.pattern`), pattern]),
    [at('weighting'), decimal(one.weighting)],
    ...(response === '' ? [] : [[at('learner_response'), response] as const]),
    ...(one.result === undefined ? [] : [[at('result'), one.result] as const]),
    [at('timestamp'), hundredths(utc(learnt.ended_ms))],
    ...(one.latency_s === undefined ? [] : [[at('latency'), isoDuration(one.latency_s)] as const]),
  ];
}

/** At most two digits of a second's part (RTE 4.1.1.7*). */
function hundredths(instant: string): string {
  return instant.replace(/(\.\d\d)\dZ$/, '$1Z');
}
