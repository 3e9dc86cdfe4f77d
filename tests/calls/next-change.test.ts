import { describe, expect, it } from 'vitest';
import { CallSession, prepareCall, shippedCalls } from '../../src/calls/index.ts';

const call = shippedCalls().find((c) => c.id === 'sunny-line');
if (!call) throw new Error('the call does not ship');
const prepared = prepareCall(call);

describe('running to the next change', () => {
  it('stops at the limit where nothing is seen or heard, also when that lies between two milliseconds', () => {
    const session = new CallSession(prepared, 'practice');
    const from = session.now_ms;
    session.nextChange(from + 1234.5);
    expect(session.now_ms).toBe(from + 1234);
    expect(session.changes).toEqual([]);
  });

  it('stops when the lamp lights again after a reset, seen by whoever stands at the panel', () => {
    const session = new CallSession(prepared, 'practice');
    for (const id of ['ask-danger', 'ask-breakers', 'guide-reset']) session.act({ id });
    const from = session.now_ms;
    session.nextChange(from + 3_600_000);
    expect(session.now_ms - from).toBeLessThan(75_000);
    expect(session.changes.map((c) => c.id)).toContain('seen.lamp-on');
  });
});
