import { describe, expect, it } from 'vitest';
import { cautionBefore } from '../../src/calls/caution.ts';
import { CallSession, judged, makeRecord, prepareCall, replay, shippedCalls } from '../../src/calls/index.ts';
import { TRUCK_HOLDS } from '../../src/service/index.ts';

const prepared = (id: string) => {
  const call = shippedCalls().find((c) => c.id === id);
  if (!call) throw new Error(`no call ${id}`);
  return prepareCall(call);
};

function onSite(id: string): CallSession {
  const session = new CallSession(prepared(id), 'practice');
  const load = ['tubing', 'diaphragm-kit', 'float', 'pump'];
  session.act({ id: 'ask-danger' });
  session.act({ id: 'decide-visit', fill: { urgency: 'now', load } });
  return session;
}

/** Skipping a life-safety step fails the call, whatever else went well. */
describe('a life-safety step that is skipped ends the call with a score of 0', () => {
  const cases: readonly [string, () => CallSession, readonly string[], string][] = [
    [
      'guiding a hand to the panel before asking about danger',
      () => new CallSession(prepared('sunny-line'), 'practice'),
      ['guide-reset'],
      'danger-not-asked',
    ],
    [
      'sending a householder into the panel',
      () => new CallSession(prepared('sunny-line'), 'practice'),
      ['ask-danger', 'tell-open-panel'],
      'householder-opens-panel',
    ],
    [
      'sending a householder to an open tank',
      () => new CallSession(prepared('sunny-line'), 'practice'),
      ['ask-danger', 'tell-open-tank'],
      'householder-opens-tank',
    ],
    [
      'lifting a lid before the site is made safe',
      () => onSite('wash-day-light'),
      ['open-lid:pump'],
      'site-not-made-safe',
    ],
    [
      'opening the compressor with its circuit live',
      () => onSite('sunny-line'),
      ['make-safe', 'open-compressor'],
      'not-locked-out',
    ],
    [
      'a lever pushed off is no lock-out',
      () => onSite('sunny-line'),
      ['make-safe', 'breaker-off:compressorBreaker', 'renew-diaphragms'],
      'not-locked-out',
    ],
    [
      'a hand to the floats with the pump live',
      () => onSite('wash-day-light'),
      ['make-safe', 'open-lid:pump', 'free-float:stopFloat'],
      'not-locked-out',
    ],
    [
      'leaving with a lid off',
      () => onSite('wash-day-light'),
      ['make-safe', 'open-lid:pump', 'leave-site'],
      'lid-left-open',
    ],
  ];

  it.each(cases)('%s', (_name, begin, actions, breach) => {
    const session = begin();
    for (const id of actions) expect(session.act({ id })).toBeUndefined();
    expect(session.breach).toBe(breach);
    expect(session.ended).toBe(true);
    const verdict = judged(session);
    expect(verdict.passed).toBe(false);
    expect(verdict.score).toBe(0);
    expect(session.act({ id: 'ask-history' })?.id).toBe('why.call-over');
  });

  it('locked out, the same work is done', () => {
    const session = onSite('sunny-line');
    for (const id of ['make-safe', 'lock-out:compressorBreaker', 'open-compressor']) {
      expect(session.act({ id })).toBeUndefined();
    }
    expect(session.breach).toBeUndefined();
  });
});

/** A coached call stops and explains, may go on to learn, and counts as failed. */
describe('a life-safety step that is skipped in a coached call', () => {
  const coached = () => new CallSession(prepared('storm-light'), 'coached');
  const solve = (session: CallSession) => {
    for (const step of session.prepared.call.solution) {
      expect(session.act({ id: step.do, ...(step.fill ? { fill: step.fill } : {}) })).toBeUndefined();
    }
  };

  it('is not taken: the hand does not go to the panel, and the call goes on', () => {
    const session = coached();
    const lever = session.service.unit.control.regions.alarmBreaker;
    expect(session.act({ id: 'guide-reset' })).toBeUndefined();
    expect(session.changes.map((one) => one.id)).toContain('change.breach');
    expect(session.breaches).toEqual([{ id: 'danger-not-asked', at_ms: session.now_ms }]);
    expect(session.service.unit.control.regions.alarmBreaker).toBe(lever);
    expect(session.service.person.notebook).toEqual([]);
    expect(session.done).toEqual([]);
    expect(session.ended).toBe(false);
  });

  it('fails a call that is then solved as well as can be, with a score of 0', () => {
    const good = coached();
    solve(good);
    expect(judged(good).passed).toBe(true);
    const session = coached();
    session.act({ id: 'ask-danger' });
    session.act({ id: 'tell-open-panel' });
    solve(session);
    expect(session.ended).toBe(true);
    expect(judged(session)).toMatchObject({ passed: false, score: 0 });
  });

  it('is kept each time, and the first of them is the reason', () => {
    const session = coached();
    session.act({ id: 'guide-reset' });
    session.act({ id: 'ask-danger' });
    session.act({ id: 'tell-open-tank' });
    expect(session.breaches.map((one) => one.id)).toEqual(['danger-not-asked', 'householder-opens-tank']);
    expect(session.breach).toBe('danger-not-asked');
  });

  it('replays to the same bits', () => {
    const session = coached();
    session.act({ id: 'guide-reset' });
    solve(session);
    const made = makeRecord(session);
    expect(replay(session.prepared, made)).toMatchObject({ ok: true, score: 0 });
  });
});

describe('a coach speaks before an unsafe act', () => {
  const on = (mode: 'coached' | 'practice') => {
    const session = new CallSession(prepared('sunny-line'), mode);
    session.act({ id: 'ask-danger' });
    session.act({ id: 'decide-visit', fill: { urgency: 'now', load: [] } });
    return session;
  };

  it('of lids before the site is made safe, and of a circuit that is not locked out', () => {
    const session = on('coached');
    expect(cautionBefore(session, { id: 'open-lid:aeration' })?.id).toBe('before.site-not-made-safe');
    session.act({ id: 'make-safe' });
    expect(cautionBefore(session, { id: 'open-lid:aeration' })).toBeUndefined();
    const circuit = { id: 'circuit.compressorBreaker' };
    expect(cautionBefore(session, { id: 'open-compressor' })).toEqual({
      id: 'before.not-locked-out',
      values: { circuit },
    });
    session.act({ id: 'lock-out:compressorBreaker' });
    expect(cautionBefore(session, { id: 'open-compressor' })).toBeUndefined();
  });

  it('changes nothing by it, and says nothing in practice', () => {
    const session = on('coached');
    const before = session.stateDigest();
    cautionBefore(session, { id: 'open-lid:aeration' });
    expect(session.stateDigest()).toBe(before);
    expect(session.breaches).toEqual([]);
    expect(cautionBefore(on('practice'), { id: 'open-lid:aeration' })).toBeUndefined();
  });

  it('does not tell what only the hidden state makes a breach: which tablets lie in the feeder', () => {
    const call = shippedCalls().find((c) => c.id === 'sunny-line');
    if (!call) throw new Error('the call does not ship');
    const faults = [{ fault: 'wrong-tablets', onset: call.faults[0]?.onset ?? '' }];
    const session = new CallSession(prepareCall({ ...call, unit: 'u2', faults }), 'coached');
    session.act({ id: 'ask-danger' });
    session.act({ id: 'decide-visit', fill: { urgency: 'now', load: [] } });
    session.act({ id: 'make-safe' });
    session.act({ id: 'open-lid:riser' });
    expect(cautionBefore(session, { id: 'refill-disinfectant' })).toBeUndefined();
    expect(session.act({ id: 'refill-disinfectant' })).toBeUndefined();
    expect(session.breach).toBe('chlorine-mixed');
  });
});

describe('what cannot be done says why', () => {
  it('a tank cannot be looked into through its lid, the line not soaped without air', () => {
    const session = onSite('sunny-line');
    session.act({ id: 'make-safe' });
    expect(session.act({ id: 'look-into-pump-tank' })?.id).toBe('why.lid');
    session.act({ id: 'breaker-off:compressorBreaker' });
    expect(session.act({ id: 'soap-air-line' })?.id).toBe('why.compressor-silent');
    expect(session.act({ id: 'guide-reset' })?.id).toBe('why.on-site');
    expect(session.act({ id: 'no-such-thing' })?.id).toBe('why.no-such-action');
  });

  it('no more goes on the truck than it has room for', () => {
    const session = new CallSession(prepared('sunny-line'), 'practice');
    session.act({ id: 'ask-danger' });
    const load = ['tubing', 'diaphragm-kit', 'compressor', 'float', 'pump', 'chlorine'];
    expect(load).toHaveLength(TRUCK_HOLDS + 1);
    expect(session.act({ id: 'decide-visit', fill: { urgency: 'now', load } })?.id).toBe('why.too-many');
    expect(session.act({ id: 'decide-visit', fill: { load: [] } })?.id).toBe('why.choose-one');
  });
});
