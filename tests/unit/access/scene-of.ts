import { type CallSession, clockAt, liveFacts } from '../../../src/calls/index.ts';
import { known } from '../../../src/scene/index.ts';
import type { Scene } from '../../../src/scene/types.ts';

/** The picture of a call as the person on it knows the works now; `live`: what they see and hear. */
export function sceneOf(session: CallSession, live = liveFacts(session)): Scene {
  const t = session.now_ms / 1000;
  const clock = clockAt(session, t);
  const around = { day: clock, secondOfDay: clock.secondOfDay, ...session.prepared.call.weather };
  const { spec } = session.prepared;
  return known({ spec, person: session.service.person, live, now_s: t, around });
}
