import type { CallSession } from '../calls/session.ts';
import { clockAt } from '../calls/viewOf.ts';
import type { Surroundings } from '../scene/index.ts';

/** Calendar, hour and sky at an instant of a call, for its picture. */
export function surroundings(session: CallSession, t_s: number): Surroundings {
  const clock = clockAt(session, t_s);
  return { day: clock, secondOfDay: clock.secondOfDay, ...session.prepared.call.weather };
}
