/** A call on paper: what a trainee may know when the phone rings, and all that a trainer needs beside them. */
import { placeWords } from '../calls/places.ts';
import type { CallFile } from '../calls/schema.ts';
import { CallSession } from '../calls/session.ts';
import { faultName } from '../calls/session-actions.ts';
import { type Prepared, unitFaults } from '../calls/setup.ts';
import { playSteps } from '../calls/solution.ts';
import type { CalendarClock } from '../calls/view.ts';
import { clockAt } from '../calls/viewOf.ts';
import { type LocalText, type Message, say } from '../service/index.ts';

export interface TraineeSheet {
  readonly kind: CallFile['kind'];
  readonly title: LocalText;
  readonly summary: LocalText;
  readonly lot: LocalText;
  readonly rings: CalendarClock;
  readonly said: readonly LocalText[];
}

export interface PathStep {
  readonly at: CalendarClock;
  readonly what: Message;
  readonly minutes: number;
}

export interface TrainerSheet extends TraineeSheet {
  /** What is wrong, and since when. */
  readonly causes: readonly { readonly fault: Message; readonly since: CalendarClock }[];
  /** What the household answers, asked what happened and what it used. */
  readonly history: LocalText;
  readonly use: LocalText;
  readonly story: LocalText;
  readonly decision: 'close' | 'visit';
  readonly urgency: readonly ('now' | 'before-dosing' | 'next-visit')[];
  readonly path: readonly PathStep[];
  /** Why the path ends before its time, where a step of it cannot be done. */
  readonly stopped?: Message;
  /** Of all places on the path. */
  readonly cautions: readonly Message[];
  readonly pass: number;
}

export function traineeSheet(prepared: Prepared): TraineeSheet {
  return sheetOf(new CallSession(prepared, 'practice'));
}

/** The path is the call's own solution, played. */
export function trainerSheet(prepared: Prepared): TrainerSheet {
  const session = new CallSession(prepared, 'practice');
  const { call, spec } = prepared;
  const sheet = sheetOf(session);
  const refused = playSteps(session, call.solution);
  const stopped = session.breach ? say(`breach.${session.breach}`) : refused?.why;
  const places = new Set(session.done.map(({ def }) => def.place));
  const cautions = [...places].flatMap((place) => placeWords(place, spec).cautions);
  return {
    ...sheet,
    causes: unitFaults(prepared).map(({ id, onset_s }) => ({ fault: faultName(id), since: clockAt(session, onset_s) })),
    history: call.report.history,
    use: call.report.use,
    story: call.story,
    decision: call.expected.decision,
    urgency: call.expected.urgency,
    path: session.done.map(({ def, outcome }) => ({
      at: clockAt(session, outcome.from_ms / 1000),
      what: def.label,
      minutes: Math.round((outcome.to_ms - outcome.from_ms) / 60_000),
    })),
    ...(stopped ? { stopped } : {}),
    cautions: [...new Map(cautions.map((caution) => [caution.id, caution])).values()],
    pass: call.pass,
  };
}

function sheetOf(session: CallSession): TraineeSheet {
  const { kind, title, summary, lot, report } = session.prepared.call;
  return { kind, title, summary, lot, rings: clockAt(session, session.now_ms / 1000), said: report.said };
}
