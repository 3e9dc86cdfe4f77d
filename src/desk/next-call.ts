import course from '../../scenarios/course.json';
import { nextCall } from '../calls/course.ts';
import type { Desk } from './desk.ts';

/** The call that the course has next for this trainee, from what was taken and how it went. */
export function suggestedCall(desk: Desk): string | undefined {
  const taken = [...desk.finished.value]
    .sort((a, b) => a.finishedAt - b.finishedAt)
    .map(({ callId, passed, score, saved }) => ({
      call: callId,
      passed,
      score,
      assistance: saved.assistance?.hints ?? 0,
    }));
  return nextCall(course, taken);
}
