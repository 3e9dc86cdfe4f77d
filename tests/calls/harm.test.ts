import { describe, expect, it } from 'vitest';
import { DrainsWatch, harmOf } from '../../src/calls/harm.ts';
import {
  type CallFile,
  CallSession,
  debriefOf,
  playSolution,
  prepareCall,
  shippedCalls,
  Trace,
} from '../../src/calls/index.ts';

const call = shippedCalls().find((c) => c.id === 'sunny-line');
if (!call) throw new Error('the call does not ship');
const prepared = prepareCall(call);
const HOUR_ms = 3_600_000;

function onSite(file: CallFile, load: readonly string[]): CallSession {
  const session = new CallSession(prepareCall(file), 'practice');
  session.act({ id: 'ask-danger' });
  session.act({ id: 'decide-visit', fill: { urgency: 'now', load } });
  session.act({ id: 'make-safe' });
  return session;
}

const harm = (session: CallSession) => harmOf(session, new Trace(session).drains);

describe('the harm of a call', () => {
  it('counts repairs that were not needed, with their money', () => {
    const session = onSite(call, ['diaphragm-kit']);
    session.act({ id: 'lock-out:compressorBreaker' });
    expect(session.act({ id: 'renew-diaphragms' })).toBeUndefined();
    expect(harm(session)).toMatchObject({ needlessParts: 1, needlessMoney_usd: 48 });
    // Cleaning is part of every visit.
    session.act({ id: 'clean-intake-filter' });
    expect(harm(session).needlessParts).toBe(1);
  });

  it('counts a drive for a part that was not on the truck, and one for a cause that was left', () => {
    const session = onSite(call, []);
    session.act({ id: 'lock-out:compressorBreaker' });
    session.act({ id: 'renew-diaphragms' });
    session.act({ id: 'leave-site' });
    expect(session.ended).toBe(true);
    expect(harm(session).furtherDrives).toBe(2);
    expect(harmOf(playSolution(prepared), new DrainsWatch(0)).furtherDrives).toBe(0);
  });

  it('adds up the hours in which the drains stand full: none with a free way, all of them behind a blockage', () => {
    const free = new CallSession(prepared, 'practice');
    free.advance(free.now_ms + 3 * HOUR_ms);
    free.act({ id: 'ask-danger' });
    expect(harm(free).hoursWithoutDrains).toBe(0);
    // A house of three draws some 0.6 m3 a day; 0.4 m2 of sewer stand full soon after.
    const blocked: CallFile = {
      ...call,
      faults: [{ fault: 'sewer-blocked', severity: 1, onset: call.faults[0]?.onset ?? '' }],
    };
    const session = new CallSession(prepareCall(blocked), 'practice');
    session.advance(session.now_ms + 24 * HOUR_ms);
    session.act({ id: 'ask-danger' });
    const first = harm(session).hoursWithoutDrains;
    expect(first).toBeGreaterThan(6);
    expect(first).toBeLessThanOrEqual(24.1);
    session.advance(session.now_ms + 5 * HOUR_ms);
    session.act({ id: 'ask-history' });
    expect(harm(session).hoursWithoutDrains - first).toBeCloseTo(5, 0);
  });

  it('stands in the debrief beside the reference', () => {
    const { costs } = debriefOf(playSolution(prepared), new Trace(playSolution(prepared)));
    expect(costs.map((line) => line.label.id)).toEqual(
      [
        'minutes',
        'money',
        'in-minutes',
        'needless-parts',
        'further-drives',
        'untreated',
        'undisinfected',
        'short-of-air',
        'onto-the-ground',
        'without-oxygen',
        'without-drains',
      ].map((id) => `cost.${id}`),
    );
    for (const line of costs) expect(line.done).toEqual(line.reference);
  });
});
