/** Calls taken to their end in different ways, and what was learnt on them. */
import { CallSession, type Prepared, prepareCall, shippedCalls } from '../../../src/calls/index.ts';
import type { SolutionStep } from '../../../src/calls/schema.ts';
import { playSteps } from '../../../src/calls/solution.ts';
import type { CallMode } from '../../../src/calls/view.ts';
import type { Learnt } from '../../../src/records/learnt/learnt.ts';
import { learntOfCall, type Wall } from '../../../src/records/learnt/of-call.ts';

export const STARTED_ms = Date.UTC(2031, 4, 14, 16, 42, 5, 120);
export const WALL: Wall = { started_ms: STARTED_ms, ended_ms: STARTED_ms + 95_500 };

export function prepared(id: string): Prepared {
  const call = shippedCalls().find((one) => one.id === id);
  if (!call) throw new Error(`${id} does not ship`);
  return prepareCall(call);
}

/** By its own solution, or by other steps. */
export function learnt(id: string, mode: CallMode, steps?: readonly SolutionStep[], wall: Wall = WALL): Learnt {
  const of = prepared(id);
  const session = new CallSession(of, mode);
  playSteps(session, steps ?? of.call.solution);
  if (!session.ended) throw new Error(`${id} has not come to its end`);
  return learntOfCall(session, wall);
}
