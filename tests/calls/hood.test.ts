/** What a trainer sees of a call in progress: what was done and believed, beside what the works really do. */
import { describe, expect, it } from 'vitest';
import { droppablesOf, hoodOf, sessionAt } from '../../src/calls/hood.ts';
import { CallSession, makeProgress, prepareCall, resumeCall, shippedCalls, Trace } from '../../src/calls/index.ts';
import { momentsOf } from '../../src/calls/taught.ts';
import { TEACH } from '../../src/calls/teach-ids.ts';
import type { Action } from '../../src/calls/view.ts';
import { readout } from '../../src/unit/index.ts';
import { speakAll } from '../unit/spoken.ts';

const call = shippedCalls().find((c) => c.id === 'mower-passed');
if (!call) throw new Error('the call does not ship');
const prepared = prepareCall(call);

/** A session with a hood that follows it. */
function begun() {
  const session = new CallSession(prepared, 'practice');
  const trace = new Trace(session);
  const look = () => hoodOf(session, trace);
  const doing = (...actions: readonly (string | Action)[]) => {
    for (const action of actions) {
      const why = session.act(typeof action === 'string' ? { id: action } : action);
      if (why) throw new Error(JSON.stringify([action, why]));
    }
  };
  return { session, trace, look, doing };
}

const faultIn = (fault: string, more: Record<string, string> = {}): Action => ({
  id: TEACH.faultIn,
  fill: { fault, ...more },
});
const drive: Action = { id: 'decide-visit', fill: { urgency: 'now', load: ['tubing'] } };

describe('the hood', () => {
  it('tells what was done with its readings, what was ticked, and what a trainer did, in the order in which it was', () => {
    const { look, doing } = begun();
    doing('ask-danger', { id: 'tick-suspect', fill: { fault: 'line-split', on: 'yes' } }, faultIn('line-split'));
    const { deeds, ticked } = look();
    expect(deeds.map(({ by, label }) => [by, label.id])).toEqual([
      ['trainee', 'act.ask-danger'],
      ['trainee', 'hood.ticked'],
      ['trainer', 'event.teach-fault-in'],
    ]);
    expect(deeds[0]?.readings).toHaveLength(1);
    expect(ticked).toEqual([{ id: 'fault.line-split' }]);
  });

  it('shows what was gone back over as undone, and readings only of what holds', () => {
    const { session, look, doing } = begun();
    doing('ask-danger', { id: TEACH.moment, fill: { name: 'phone' } }, 'ask-hum', 'ask-smell');
    doing({ id: TEACH.back, fill: { moment: String(momentsOf(session.log)[0]?.place) } }, 'ask-hum');
    const { deeds, moments } = look();
    const theirs = deeds.filter(({ by }) => by === 'trainee');
    expect(theirs.map(({ label, undone, readings }) => [label.id, undone, readings.length])).toEqual([
      ['act.ask-danger', false, 1],
      ['act.ask-hum', true, 0],
      ['act.ask-smell', true, 0],
      ['act.ask-hum', false, 1],
    ]);
    expect(moments).toMatchObject([{ name: 'phone', place: 1 }]);
  });

  it('names the faults that are there, how far they have come and whose they are', () => {
    const { session, look, doing } = begun();
    doing(faultIn('tank-leaks', { severity: '0.8', ramp_h: '2' }));
    session.advance(session.now_ms + 3_600_000);
    const [own, dropped] = look().faults;
    expect(own).toMatchObject({ key: 'compressor-unplugged', droppedIn: false, way: 'stands' });
    expect(dropped).toMatchObject({ key: 'tank-leaks', droppedIn: true, way: 'grows', full: 0.8 });
    expect(dropped?.severity).toBeCloseTo(0.4, 6);
    doing({ id: TEACH.faultOut, fill: { fault: 'tank-leaks', ramp_h: '1' } });
    session.advance(session.now_ms + 1_800_000);
    expect(look().faults[1]).toMatchObject({ way: 'fades' });
    expect(look().faults[1]?.severity).toBeCloseTo(0.2, 6);
    session.advance(session.now_ms + 1_800_000);
    expect(look().faults.map(({ key }) => key)).toEqual(['compressor-unplugged']);
  });

  it('draws curves that follow the call, also after going back, and end at what is read now', () => {
    const { session, look, doing } = begun();
    doing({ id: TEACH.moment, fill: { name: 'start' } });
    const first = session.now_ms;
    session.advance(first + 7_200_000);
    doing(drive);
    const far = look();
    for (const { points } of far.curves) {
      const instants = points.map(([at]) => at);
      expect(instants).toEqual([...instants].sort((a, b) => a - b));
      expect(points.at(-1)?.[0]).toBe(session.now_ms);
    }
    const level = far.curves.find(({ id }) => id === 'pumpTank_m');
    expect(level?.points.at(-1)?.[1]).toBe(readout(session.service.unit, session.now_ms / 1000).pumpTank_m);
    expect(level?.marks.map(({ label }) => label.id)).toContain('float.highWaterFloat');
    doing({ id: TEACH.back, fill: { moment: '0' } });
    const back = look();
    expect(back.now_ms).toBe(first);
    expect(Math.max(...back.curves.flatMap(({ points }) => points.map(([at]) => at)))).toBe(first);
  });

  it('opens the works at a past instant and leaves the call as it is', () => {
    const { session, trace, look, doing } = begun();
    session.advance(session.now_ms + 600_000);
    doing('ask-danger');
    look();
    const before = [session.stateDigest(), session.now_ms];
    const unit = trace.unitAt(session.now_ms - 500_000);
    expect(readout(unit, unit.t).airPressure_kPa).toBe(0);
    look();
    expect([session.stateDigest(), session.now_ms]).toEqual(before);
  });

  it('accounts for all water, oxygen demand, nitrogen and chlorine since the phone rang', () => {
    const { session, look, doing } = begun();
    doing(drive, 'make-safe', faultIn('line-split'));
    session.advance(session.now_ms + 12 * 3_600_000);
    for (const error of Object.values(look().balance)) expect(error).toBeLessThan(1e-9);
  });

  it('keeps a moment as a call of its own, with what led there and nothing since, and with its clock free', () => {
    const { session, doing } = begun();
    doing(
      'ask-danger',
      { id: TEACH.freeze },
      { id: TEACH.moment, fill: { name: 'early' } },
      { id: TEACH.go },
      'ask-hum',
    );
    const kept = sessionAt(session, 2);
    if (!kept) throw new Error('no moment there');
    const again = resumeCall(prepared, 'practice', makeProgress(kept));
    if (!('session' in again)) throw new Error(again.why.id);
    expect(again.session.log.map((one) => one.do)).toEqual(['ask-danger', TEACH.moment]);
    expect(again.session.act({ id: 'ask-hum' })).toBeUndefined();
    expect(sessionAt(session, 0)).toBeUndefined();
  });

  it('has words for all it tells and for every fault that can be dropped in, and is plain JSON', () => {
    const { look, doing } = begun();
    doing('ask-danger', drive, 'make-safe', 'look-at-outlet', { id: TEACH.freeze }, faultIn('lamp-dead:lamp'));
    const view = look();
    speakAll([view, droppablesOf(prepared)]);
    expect(JSON.parse(JSON.stringify(view))).toEqual(view);
    expect(droppablesOf(prepared).some(({ family }) => family === 'use')).toBe(false);
  });
});
