import type { CallSession } from '../calls/session.ts';
import { whysOf } from '../scene/why.ts';
import { xray } from '../scene/xray.ts';
import type { Unit } from '../unit/index.ts';
import type { Truth } from './protocol.ts';
import { surroundings } from './surroundings.ts';

/** The unit of a call, or a copy of it at an earlier instant (s), with everything open. */
export function truthOf(session: CallSession, unit: Unit, t_s: number): Truth {
  return { scene: xray(unit, t_s, surroundings(session, t_s)), whys: whysOf(unit, t_s) };
}
