import { beforeAll, describe, expect, it } from 'vitest';
import { diagnosisOf, propertyOf, seenOf } from '../../src/calls/expertise.ts';
import { CallSession, prepareCall, shippedCalls } from '../../src/calls/index.ts';
import { unitFaults } from '../../src/calls/setup.ts';
import {
  alike,
  type Diagnosis,
  outlookOf,
  probesOf,
  readingOf,
  SOMETHING_ELSE,
  Twin,
} from '../../src/diagnosis/index.ts';
import { digest, type Json, snapshot } from '../../src/unit/index.ts';

const call = shippedCalls().find((c) => c.id === 'sunny-line');
if (!call) throw new Error('the call does not ship');
const prepared = prepareCall(call);
const PHONE = ['ask-danger', 'ask-hum', 'ask-breakers', 'guide-reset', 'guide-watch'];

function done(session: CallSession, id: string, fill?: Record<string, string | string[]>) {
  const refused = session.act(fill ? { id, fill } : { id });
  const last = session.done.at(-1);
  if (refused || !last) throw new Error(`${id} could not be done`);
  return last;
}

const chance = (diagnosis: Diagnosis, cause: string) => diagnosis.belief().find((c) => c.cause === cause)?.chance ?? 0;

/** A split air line: by phone it looks like any fault of the air, on site a few cheap checks leave one cause. */
describe('what the readings of a call allow', () => {
  let diagnosis: Diagnosis;
  const session = new CallSession(prepared, 'practice');
  const see = (id: string, fill?: Record<string, string | string[]>) => {
    const one = done(session, id, fill);
    diagnosis.observe(seenOf(session, one));
    return one;
  };

  beforeAll(() => {
    diagnosis = diagnosisOf(prepared);
  }, 120_000);

  it('begins with what is common and lights a lamp, a surge first of all', () => {
    const [first] = diagnosis.belief();
    expect(first?.cause).toBe('surge-latch');
    expect(chance(diagnosis, 'line-split')).toBeGreaterThan(0.05);
    expect(chance(diagnosis, 'joint-leak')).toBeLessThan(0.01);
    expect(diagnosis.belief().reduce((sum, c) => sum + c.chance, 0)).toBeCloseTo(1, 10);
  });

  it('drops the surge once the lamp comes back after a reset', () => {
    for (const id of PHONE) see(id);
    expect(chance(diagnosis, 'surge-latch')).toBeLessThan(0.02);
  });

  it('values a listen at the compressor over anything dear, and nothing below its best', () => {
    see('decide-visit', { urgency: 'before-dosing', load: ['tubing'] });
    see('make-safe');
    const { options, best } = outlookOf(diagnosis, probesOf(prepared.spec));
    expect(Math.min(...options.map((o) => o.regret))).toBeGreaterThanOrEqual(-1e-9);
    const listen = options.find((o) => o.id === 'listen-compressor');
    const jar = options.find((o) => o.id === 'settle-jar');
    if (!listen) throw new Error('nobody can listen');
    expect(listen.regret).toBeLessThan(1);
    expect(listen.bits).toBeGreaterThan(0.5);
    expect(jar === undefined || jar.regret > 10).toBe(true);
    expect(best).toBeGreaterThan(0);
  });

  it('is sure of the split after the hum, the gauge and the soap, and keeps room for something else', () => {
    for (const id of ['listen-compressor', 'tee-pressure', 'follow-air-line']) see(id);
    expect(diagnosis.belief()[0]?.cause).toBe('line-split');
    expect(chance(diagnosis, 'line-split')).toBeGreaterThan(0.9);
    expect(chance(diagnosis, SOMETHING_ELSE.cause)).toBeGreaterThan(0);
  });

  it('follows the mend: the pressure is back, and the cause stays the same', () => {
    for (const id of ['splice-air-line', 'tee-pressure']) see(id);
    expect(chance(diagnosis, 'line-split')).toBeGreaterThan(0.9);
  });
});

describe('the checks that are weighed', () => {
  it('need no answers: what asks for some (which two terminals?) cannot be foreseen without them', () => {
    const asking = probesOf(prepared.spec).flatMap((probe) => probe.acts.filter((a) => a.form ?? a.formOn));
    expect(asking.map((a) => a.id)).toEqual([]);
  });
});

describe('a twin with the true fault', () => {
  const session = new CallSession(prepared, 'practice');
  const twin = new Twin(propertyOf(prepared), unitFaults(prepared));

  it('shows what the property shows, but for the scatter of instruments', () => {
    for (const id of [...PHONE, 'listen-compressor']) {
      if (id === 'listen-compressor') {
        const drive = done(session, 'decide-visit', { urgency: 'before-dosing', load: [] });
        twin.follow(seenOf(session, drive).deed);
        twin.follow(seenOf(session, done(session, 'make-safe')).deed);
      }
      const one = done(session, id);
      const reading = readingOf(one.outcome.notes, one.outcome.perceived);
      expect(alike(reading, twin.follow(seenOf(session, one).deed)), id).toBe(true);
    }
  });

  it('is left as it was by a prediction, lids, locks and all', () => {
    const state = () => digest(snapshot(twin.unit) as unknown as Json);
    const before = state();
    for (const probe of probesOf(prepared.spec)) if (twin.canReach(probe)) twin.predict(probe);
    expect(state()).toBe(before);
    expect(twin.person.lids.size).toBe(0);
    expect(twin.person.locks.size).toBe(0);
  });
});
