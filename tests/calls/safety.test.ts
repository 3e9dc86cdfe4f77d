import { describe, expect, it } from 'vitest';
import { CallSession, judged, prepareCall, shippedCalls } from '../../src/calls/index.ts';

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

  it('no more than four things go on the truck', () => {
    const session = new CallSession(prepared('sunny-line'), 'practice');
    session.act({ id: 'ask-danger' });
    const load = ['tubing', 'diaphragm-kit', 'compressor', 'float', 'pump'];
    expect(session.act({ id: 'decide-visit', fill: { urgency: 'now', load } })?.id).toBe('why.too-many');
    expect(session.act({ id: 'decide-visit', fill: { load: [] } })?.id).toBe('why.choose-one');
  });
});
