import type { CallSession } from '../calls/session.ts';
import { clockAt } from '../calls/viewOf.ts';
import type { Weather } from '../plant/weather.ts';
import type { Surroundings } from '../scene/index.ts';

type Storm = NonNullable<Surroundings['storm']>;

/** How long fallen rain is looked back for, s. */
const BACK_s = 6 * 3600;

/** Calendar, hour and sky at an instant of a call, for its picture. Where its file has storms, or it has lived through a year, the rain is theirs. */
export function surroundings(session: CallSession, t_s: number): Surroundings {
  const clock = clockAt(session, t_s);
  const { call, lived } = session.prepared;
  const sky = { day: clock, secondOfDay: clock.secondOfDay, ...call.weather };
  const rains = call.storms !== undefined || lived !== undefined;
  return rains ? { ...sky, storm: stormAt(session.service.unit.weather, t_s) } : sky;
}

/** Rain that falls at an instant, and what fell in the hours before it. */
export function stormAt(weather: Weather, t_s: number): Storm {
  let fallen_mm = 0;
  for (let from = t_s - BACK_s; from < t_s; ) {
    const to = Math.min(t_s, weather.nextEdge(from));
    fallen_mm += (weather.rain_mmh(from) * (to - from)) / 3600;
    from = to;
  }
  return { rain_mmh: weather.rain_mmh(t_s), fallen_mm };
}
