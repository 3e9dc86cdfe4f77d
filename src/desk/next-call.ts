import course from '../../scenarios/course.json';
import { nextCall, rungOf, type Taken } from '../calls/course.ts';
import type { Rung } from '../calls/rungs.ts';
import type { Desk } from './desk.ts';
import type { SavedCall } from './protocol.ts';

/** The call that the course has next for this trainee, and the rung to take it on, from what was taken and how it went. */
export function suggestedCall(desk: Desk): { readonly callId: string; readonly rung: Rung } | undefined {
  const taken = [...desk.finished.value]
    .sort((a, b) => a.finishedAt - b.finishedAt)
    .map(
      ({ callId, passed, score, saved }): Taken => ({
        call: callId,
        passed,
        score,
        assistance: saved.assistance?.hints ?? 0,
        rung: rungTaken(saved),
      }),
    );
  const callId = nextCall(course, taken);
  return callId === undefined ? undefined : { callId, rung: rungOf(course, taken, callId) };
}

/** The rung on which a kept call was begun. */
export function rungTaken({ mode, assistance }: Pick<SavedCall, 'mode' | 'assistance'>): Rung {
  return mode === 'coached' ? (assistance?.led ?? 'coached') : 'alone';
}
