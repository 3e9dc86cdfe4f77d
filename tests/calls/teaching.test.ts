/** What a trainer does to a call in progress stands in the record, and the record replays with it. */
import { describe, expect, it } from 'vitest';
import {
  CallSession,
  judged,
  makeProgress,
  makeRecord,
  prepareCall,
  replay,
  resumeCall,
  shippedCalls,
  Trace,
} from '../../src/calls/index.ts';
import { reviewAll } from '../../src/calls/review.ts';
import { changedAt_ms, momentsOf, takenOut } from '../../src/calls/taught.ts';
import { TEACH } from '../../src/calls/teach-ids.ts';
import { wayOf } from '../../src/calls/teaching.ts';
import type { Action } from '../../src/calls/view.ts';
import { readout } from '../../src/unit/index.ts';

const call = shippedCalls().find((c) => c.id === 'mower-passed');
if (!call) throw new Error('the call does not ship');
const prepared = prepareCall(call);
const begun = () => new CallSession(prepared, 'practice');

function doing(session: CallSession, ...actions: readonly (string | Action)[]): CallSession {
  for (const action of actions) {
    const why = session.act(typeof action === 'string' ? { id: action } : action);
    if (why) throw new Error(JSON.stringify([action, why]));
  }
  return session;
}

const faultIn = (fault: string, more: Record<string, string> = {}): Action => ({
  id: TEACH.faultIn,
  fill: { fault, ...more },
});
const faultOut = (fault: string, ramp_h = '0'): Action => ({ id: TEACH.faultOut, fill: { fault, ramp_h } });
const backTo = (session: CallSession, name: string): Action => ({
  id: TEACH.back,
  fill: { moment: String(momentsOf(session.log).find((m) => m.name === name)?.place) },
});
const moment = (name: string): Action => ({ id: TEACH.moment, fill: { name } });
const drive: Action = { id: 'decide-visit', fill: { urgency: 'now', load: ['tubing'] } };

describe('a fault that is dropped in', () => {
  it('is there at once, or grows over its hours', () => {
    const session = doing(begun(), 'ask-danger', faultIn('line-split'));
    expect(session.service.unit.has('line-split')).toBe(true);
    const slow = doing(begun(), faultIn('tank-leaks', { severity: '1', ramp_h: '2' }));
    const leak = () => slow.service.unit.driveAt(slow.now_ms / 1000).condition.trashLeak_m2d;
    expect(leak()).toBe(0);
    slow.advance(slow.now_ms + 3_600_000);
    const half = leak();
    slow.advance(slow.now_ms + 3_600_000);
    expect(half / leak()).toBeCloseTo(0.5, 2);
  });

  it('is one of the faults to be named and mended', () => {
    const session = doing(begun(), 'ask-danger', drive, 'make-safe', faultIn('lamp-dead:lamp'));
    expect(judged(session).passed).toBe(false);
    expect(session.service.unit.faults.map((f) => f.fault.id)).toEqual(['compressor-unplugged', 'lamp-dead:lamp']);
  });

  it('is refused where it stands already, where the unit cannot have it, and where it is a matter of use', () => {
    expect(begun().act(faultIn('compressor-unplugged'))?.id).toBe('why.fault-there');
    expect(begun().act(faultIn('wrong-tablets'))?.id).toBe('why.no-such-fault');
    expect(begun().act(faultIn('wash-day'))?.id).toBe('why.no-such-fault');
    expect(begun().act(faultOut('line-split'))?.id).toBe('why.fault-not-there');
    expect(begun().act(faultIn('line-split', { ramp_h: '1000' }))?.id).toBe('why.no-such-ramp');
  });
});

describe('a fault that is taken out', () => {
  it('is over at once, or fades over its hours', () => {
    const session = doing(begun(), faultOut('compressor-unplugged'));
    expect(session.service.unit.control.outputs.compressorRuns).toBe(true);
    const slow = doing(begun(), faultIn('tank-leaks', { severity: '1' }), faultOut('tank-leaks', '2'));
    const leak = () => slow.service.unit.driveAt(slow.now_ms / 1000).condition.trashLeak_m2d;
    const whole = leak();
    slow.advance(slow.now_ms + 3_600_000);
    expect(leak() / whole).toBeCloseTo(0.5, 2);
    slow.advance(slow.now_ms + 3_600_000);
    expect(leak()).toBe(0);
    expect(slow.service.unit.isOver('tank-leaks')).toBe(true);
  });

  it('need not be named or mended, and may be named where it was seen before', () => {
    const session = doing(begun(), faultOut('compressor-unplugged'), faultIn('line-split'));
    expect([...takenOut(session.log)]).toEqual(['compressor-unplugged']);
    doing(session, faultIn('compressor-unplugged'));
    expect([...takenOut(session.log)]).toEqual([]);
  });
});

describe('going back to a moment', () => {
  const split = () => {
    const session = doing(begun(), 'ask-danger', moment('before'), drive, 'make-safe', 'look-at-outlet');
    return doing(session, backTo(session, 'before'));
  };

  it('stands where it stood, with all that was done since in the log and nowhere else', () => {
    const session = split();
    const straight = doing(begun(), 'ask-danger', moment('before'));
    expect(session.now_ms).toBe(straight.now_ms);
    expect(session.stateDigest()).toBe(straight.stateDigest());
    expect(session.done.map((d) => d.def.id)).toEqual(['ask-danger']);
    expect(session.drove).toBe(false);
    expect(session.log.map((one) => one.do)).toEqual([
      'ask-danger',
      TEACH.moment,
      'decide-visit',
      'make-safe',
      'look-at-outlet',
      TEACH.back,
    ]);
    expect(wayOf(session.log).map((one) => one.do)).toEqual(['ask-danger', TEACH.moment]);
  });

  it('leads also into what was left before, and holds while the clock is stopped', () => {
    const session = doing(begun(), { id: TEACH.freeze }, moment('one'), { id: TEACH.go }, 'ask-danger', moment('two'));
    doing(session, backTo(session, 'one'), 'ask-danger', 'ask-hum', backTo(session, 'two'));
    expect(session.done.map((d) => d.def.id)).toEqual(['ask-danger']);
    doing(session, { id: TEACH.freeze });
    expect(session.act({ id: 'ask-hum' })?.id).toBe('why.frozen');
    doing(session, backTo(session, 'one'));
    expect(session.act({ id: 'ask-danger' })?.id).toBe('why.frozen');
    doing(session, { id: TEACH.go }, 'ask-danger');
  });

  it('is refused where no moment was marked', () => {
    expect(begun().act({ id: TEACH.back, fill: { moment: '0' } })?.id).toBe('why.no-such-moment');
  });
});

describe('the record of such a call', () => {
  const lively = () => {
    const session = doing(begun(), 'ask-danger', moment('phone'), faultIn('line-split', { ramp_h: '1' }), 'ask-hum');
    doing(session, { id: TEACH.freeze }, { id: TEACH.speed, fill: { rate: '60' } }, { id: TEACH.go });
    doing(session, backTo(session, 'phone'), drive, 'make-safe', faultOut('compressor-unplugged', '0.5'));
    session.advance(session.now_ms + 600_000);
    return doing(session, 'look-at-outlet', 'leave-site');
  };

  it('replays to the same bits and the same score', () => {
    const session = lively();
    const again = replay(prepared, makeRecord(session));
    expect(again.firstDifference).toBeUndefined();
    expect(again.session.stateDigest()).toBe(session.stateDigest());
  });

  it('is refused where the trainer’s hand was taken out of it', () => {
    const record = makeRecord(lively());
    const actions = record.actions.filter((one) => one.do !== TEACH.faultOut);
    expect(replay(prepared, { ...record, actions }).ok).toBe(false);
  });

  it('is taken up again from what was kept', () => {
    const session = doing(begun(), 'ask-danger', moment('phone'), faultIn('line-split', { ramp_h: '3' }), 'ask-hum');
    const resumed = resumeCall(prepared, 'practice', makeProgress(session));
    expect('session' in resumed && resumed.session.stateDigest()).toBe(session.stateDigest());
  });

  it('opens the works at any instant, also between a fault that came and its end', () => {
    const session = doing(begun(), 'ask-danger', faultIn('tank-leaks'), 'ask-hum', faultOut('tank-leaks'), 'ask-smell');
    const unit = new Trace(session).unitAt(session.now_ms);
    expect(readout(unit, unit.t).flows.trash_m).toBeCloseTo(readout(session.service.unit, unit.t).flows.trash_m, 6);
  });

  it('is not weighed from where the trainer changed the works', { timeout: 120_000 }, () => {
    const session = doing(
      begun(),
      'ask-danger',
      'ask-hum',
      faultIn('line-split'),
      drive,
      'make-safe',
      'look-at-outlet',
    );
    expect(changedAt_ms(session.log)).toBeLessThan(session.now_ms);
    const weighed: boolean[] = [];
    reviewAll(session, (step) => weighed.push(step.weighed));
    expect(weighed).toHaveLength(session.done.length);
    expect(weighed[1]).toBe(true);
    expect(weighed.slice(2)).not.toContain(true);
  });
});
