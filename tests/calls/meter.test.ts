import { describe, expect, it } from 'vitest';
import { evidenceEnough, flagsOf } from '../../src/calls/flags.ts';
import { type CallFile, CallSession, prepareCall, shippedCalls } from '../../src/calls/index.ts';
import type { Note, Quantity } from '../../src/service/index.ts';
import { must } from './hands.ts';

const base = shippedCalls().find((c) => c.id === 'noon-sprinklers') as CallFile;

/** On site at a property with the given faults since the day before, the site not yet made safe. */
function arrived(...faults: CallFile['faults']): CallSession {
  const session = new CallSession(prepareCall({ ...base, id: 'meter', faults }), 'practice');
  must(session, 'ask-danger');
  must(session, 'decide-visit', { urgency: 'now', load: [] });
  return session;
}

function madeSafe(...faults: CallFile['faults']): CallSession {
  const session = arrived(...faults);
  must(session, 'make-safe');
  return session;
}

const YESTERDAY = '2031-04-15T12:00';

const between = (red: string, black: string) => ({ red, black });

/** The number in a note's reading, however deep it stands. */
function numberIn(note: Note): number {
  const found: number[] = [];
  JSON.stringify(note.reading, (_key, value: Quantity) => {
    if (value && typeof value === 'object' && typeof value.value === 'number') found.push(value.value);
    return value;
  });
  if (found.length !== 1) throw new Error(`${found.length} numbers in ${JSON.stringify(note.reading)}`);
  return found[0] as number;
}

/** Four times the scatter of the voltmeter, and the volts that the leads take at full load, V. */
const ABOUT_V = 4;

describe('volts between any two terminals', () => {
  it('are those of the supply where it comes in, and nothing between neutral and ground', () => {
    const session = madeSafe();
    expect(Math.abs(numberIn(must(session, 'meter-volts', between('line', 'neutral'))) - 118)).toBeLessThan(ABOUT_V);
    expect(numberIn(must(session, 'meter-volts', between('neutral', 'ground')))).toBeLessThan(ABOUT_V);
  });

  it('agree with the check of the pump, in Off and in Hand', () => {
    const session = madeSafe();
    must(session, 'clear-field');
    for (const way of ['off', 'hand']) {
      must(session, `selector-${way}`);
      const single = numberIn(must(session, 'pump-volts'));
      const both = numberIn(must(session, 'meter-volts', between('motor.1', 'motor.2')));
      expect(Math.abs(single - both)).toBeLessThan(ABOUT_V);
    }
  });

  it('stand at the feed side of an open splice, and not behind it', () => {
    const session = madeSafe({ fault: 'splice-corroded', part: 'stopFloat', onset: YESTERDAY });
    expect(numberIn(must(session, 'meter-volts', between('stopFloat.feed', 'neutral')))).toBeGreaterThan(110);
    expect(numberIn(must(session, 'meter-volts', between('stopFloat.back', 'neutral')))).toBeLessThan(ABOUT_V);
  });

  it('stand across an open contact only where something hangs behind it', () => {
    const session = madeSafe({ fault: 'splice-corroded', part: 'stopFloat', onset: YESTERDAY });
    const across = (float: string) => numberIn(must(session, 'meter-volts', between(`${float}.feed`, `${float}.back`)));
    // The alarm's delay hangs behind the high-water float; behind the stop float two more open contacts.
    expect(across('highWaterFloat')).toBeGreaterThan(110);
    expect(across('stopFloat')).toBeLessThan(ABOUT_V);
  });

  it('want the site made safe first', () => {
    const session = arrived();
    expect(session.act({ id: 'meter-volts', fill: between('line', 'neutral') })).toBeUndefined();
    expect(session.breach).toBe('site-not-made-safe');
  });

  it('are read at a splice only with the lid of the pump tank off', () => {
    const session = madeSafe();
    const refused = session.act({ id: 'meter-volts', fill: between('splice.1', 'splice.2') });
    expect(refused?.id).toBe('why.lid');
    must(session, 'open-lid:pump');
    must(session, 'meter-volts', between('splice.1', 'splice.2'));
  });

  it('take no terminal that the panel has not, and not one probe alone', () => {
    const session = madeSafe();
    expect(session.act({ id: 'meter-volts', fill: between('line', 'uvContact.feed') })?.id).toBe('why.no-such-answer');
    expect(session.act({ id: 'meter-volts', fill: { red: 'line' } })?.id).toBe('why.choose-one');
  });
});

describe('ohms between any two terminals', () => {
  it('with the circuit live, or its lever only pushed off, end the call: a life-safety step was skipped', () => {
    for (const before of [[], ['breaker-off:pumpBreaker'], ['lock-out:alarmBreaker']]) {
      const session = madeSafe();
      for (const id of before) must(session, id);
      expect(session.act({ id: 'meter-ohms', fill: between('motor.1', 'motor.2') })).toBeUndefined();
      expect(session.breach).toBe('not-locked-out');
    }
  });

  it('want every circuit locked out that a probe touches', () => {
    const session = madeSafe();
    must(session, 'lock-out:pumpBreaker');
    must(session, 'meter-ohms', between('motor.1', 'neutral'));
    session.act({ id: 'meter-ohms', fill: between('motor.1', 'alarmBreaker.load') });
    expect(session.breach).toBe('not-locked-out');
  });

  it('are refused by the meter at the line, which no lock of the panel makes dead', () => {
    const session = madeSafe();
    const note = must(session, 'meter-ohms', between('line', 'ground'));
    expect(JSON.stringify(note.reading)).toContain('reading.meter-refuses');
    expect(note.remark?.text.id).toBe('remark.ohms-live');
  });

  it('agree with the checks of winding and float', () => {
    for (const faults of [[], [{ fault: 'winding-open', onset: YESTERDAY }]]) {
      const session = madeSafe(...faults);
      must(session, 'open-lid:pump');
      must(session, 'lock-out:pumpBreaker');
      const single = must(session, 'winding-ohms');
      const both = must(session, 'meter-ohms', between('splice.1', 'splice.2'));
      if (faults.length > 0) {
        expect(single.reading.id).toBe('reading.open-circuit');
        expect(JSON.stringify(both.reading)).toContain('reading.open-circuit');
      } else expect(Math.abs(numberIn(single) - numberIn(both))).toBeLessThan(0.5);
    }
  });

  it('teach what the float’s own check teaches: whether its contact is made', () => {
    for (const float of ['stopFloat', 'doseFloat', 'overrideFloat', 'highWaterFloat']) {
      const [single, both] = [madeSafe(), madeSafe()];
      for (const session of [single, both]) {
        for (const circuit of ['alarmBreaker', 'pumpBreaker']) must(session, `lock-out:${circuit}`);
      }
      must(single, `float-continuity:${float}`);
      must(both, 'meter-ohms', between(`${float}.back`, `${float}.feed`));
      const key = `contact.${float}` as 'contact.stopFloat';
      expect(both.service.person.facts[key]?.value).toBe(single.service.person.facts[key]?.value);
      expect(both.service.person.facts[key]).toBeDefined();
    }
  });
});

describe('amps by clamp', () => {
  it('agree with the check of the pump’s current, and cancel round the whole cord', () => {
    const session = madeSafe();
    must(session, 'clear-field');
    must(session, 'selector-hand');
    const single = numberIn(must(session, 'pump-amps'));
    const clamped = numberIn(must(session, 'clamp-amps', { conductor: 'pump' }));
    expect(clamped).toBeGreaterThan(5);
    expect(Math.abs(single - clamped)).toBeLessThan(0.8);
    const cord = must(session, 'clamp-amps', { conductor: 'pumpCord' });
    expect(numberIn(cord)).toBeLessThan(0.5);
    expect(cord.remark?.text.id).toBe('remark.cord-cancels');
  });
});

it('another pair of terminals is another check; the same pair twice running is flagged', () => {
  const session = madeSafe();
  const flagged = () => flagsOf(session).some((f) => f.id === 'repeated-check');
  must(session, 'meter-volts', between('line', 'neutral'));
  must(session, 'meter-volts', between('pumpBreaker.load', 'neutral'));
  expect(flagged()).toBe(false);
  must(session, 'meter-volts', between('pumpBreaker.load', 'neutral'));
  expect(flagged()).toBe(true);
});

it('what the probes read at the named check’s own screws is as good a piece of evidence', () => {
  const session = madeSafe({ fault: 'winding-open', onset: YESTERDAY });
  must(session, 'lock-out:pumpBreaker');
  const elsewhere = must(session, 'meter-ohms', between('coil', 'neutral'));
  const across = must(session, 'meter-ohms', between('motor.2', 'motor.1'));
  for (const [note, enough] of [
    [elsewhere, false],
    [across, true],
  ] as const) {
    must(session, 'state-cause', { cause: ['winding-open'], evidence: [note.id] });
    expect(evidenceEnough(session)).toBe(enough);
  }
});
