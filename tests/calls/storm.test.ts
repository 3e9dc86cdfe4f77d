/** Rain in a call's file: what falls gets into the tanks where something lets it in, and is told apart from a leak indoors. */
import { describe, expect, it } from 'vitest';
import {
  type CallFile,
  CallSession,
  loadCall,
  prepareCall,
  shippedCalls,
  shippedLibrary,
} from '../../src/calls/index.ts';
import { readout } from '../../src/unit/index.ts';

const base = shippedCalls().find((c) => c.id === 'noon-sprinklers') as CallFile;
/** 60 mm in four hours of the night before the call. */
const NIGHT = [{ start: '2031-04-15T23:00', hours: 4, depth_mm: 60 }];

function visit(change: Partial<CallFile>): CallSession {
  const session = new CallSession(prepareCall({ ...base, faults: [], ...change }), 'practice');
  for (const id of ['ask-danger', 'decide-visit', 'make-safe', 'open-lid:trash'])
    session.act({ id, ...(id === 'decide-visit' ? { fill: { urgency: 'now', load: [] } } : {}) });
  return session;
}

const seeped = (session: CallSession) => readout(session.service.unit, session.service.unit.t).seeped_m3;

function saidBy(session: CallSession, id: string): readonly string[] {
  expect(session.act({ id })).toBeUndefined();
  return session.service.person.notebook.filter((n) => n.by === id).map((n) => n.reading.id);
}

describe('a storm', () => {
  it('does nothing to a tight property', () => expect(seeped(visit({ storms: NIGHT }))).toBe(0));

  it('sends as much into the tanks as falls on the ground or the roof that drains there', () => {
    const onset = '2031-04-14T12:00';
    const through = (id: string) => seeped(visit({ storms: NIGHT, faults: [{ fault: id, onset }] }));
    expect(through('storm-infiltration')).toBeCloseTo(0.06 * 40, 6);
    expect(through('clear-water-connected')).toBeCloseTo(0.06 * 90, 6);
  });

  it('is told from a running toilet by a water meter that stands still, and the riser from the roof by looking', () => {
    const faults = (id: string) => ({ storms: NIGHT, faults: [{ fault: id, onset: '2031-04-14T12:00' }] });
    const all = ['watch-water-meter', 'look-at-risers', 'look-at-downspouts'];
    const told = (id: string) => {
      const session = visit(faults(id));
      return all.flatMap((check) => saidBy(session, check));
    };
    expect(told('storm-infiltration')).toEqual([
      'reading.meter-still',
      'reading.riser-stained',
      'reading.downspouts-apart',
    ]);
    expect(told('clear-water-connected')).toEqual([
      'reading.meter-still',
      'reading.riser-dry',
      'reading.downspout-in-sewer',
    ]);
    expect(told('toilet-leaking')).toEqual(['reading.meter-turns', 'reading.riser-dry', 'reading.downspouts-apart']);
  });

  it('is seen to run in while it still rains', () => {
    const now = [{ start: '2031-04-15T23:00', hours: 48, depth_mm: 60 }];
    const session = visit({ storms: now, faults: [{ fault: 'storm-infiltration', onset: '2031-04-14T12:00' }] });
    expect(saidBy(session, 'look-at-risers')).toEqual(['reading.riser-runs']);
  });

  it('in a file must begin at a real instant', () => {
    const file = { ...base, storms: [{ start: '2031-02-30T10:00', hours: 4, depth_mm: 60 }] };
    const loaded = loadCall(JSON.stringify(file), shippedLibrary());
    expect(loaded.ok ? [] : loaded.problems.map((p) => p.path)).toEqual(['storms[0].start']);
    expect(loadCall(JSON.stringify({ ...base, storms: NIGHT }), shippedLibrary()).ok).toBe(true);
  });
});
