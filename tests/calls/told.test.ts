/** What a household tells that happened moves the belief once it was asked, and only then. */
import { expect, it } from 'vitest';
import { diagnosisOf, seenOf } from '../../src/calls/expertise.ts';
import { CallSession, prepareCall, shippedCalls } from '../../src/calls/index.ts';
import { likelierBy } from '../../src/diagnosis/index.ts';

const CAUSE = 'floats-swapped:overrideFloat';

it('a hand in the panel makes what hands do there likelier, asked once or twice', { timeout: 120_000 }, () => {
  const call = shippedCalls().find((one) => one.id === 'after-the-electrician');
  if (!call) throw new Error('the call does not ship');
  const prepared = prepareCall(call);
  const session = new CallSession(prepared, 'practice');
  const diagnosis = diagnosisOf(prepared);
  const chanceAfter = (id: string) => {
    session.act({ id });
    const done = session.done.at(-1);
    if (done) diagnosis.observe(seenOf(session, done));
    return diagnosis.belief().find(({ cause }) => cause === CAUSE)?.chance ?? 0;
  };
  const odds = (chance: number) => chance / (1 - chance);
  const before = chanceAfter('ask-danger');
  const asked = chanceAfter('ask-history');
  expect(odds(asked) / odds(before)).toBeGreaterThan(8);
  expect(chanceAfter('ask-history')).toBeCloseTo(asked, 2);
});

it('makes no other fault likelier, and where nothing is told none', () => {
  expect(likelierBy(['panel-worked-on'], CAUSE)).toBeGreaterThan(1);
  expect(likelierBy(['panel-worked-on'], `compressor-stopped + ${CAUSE}`)).toBeGreaterThan(1);
  expect(likelierBy(['panel-worked-on'], 'diaphragm-torn')).toBe(1);
  expect(likelierBy([], CAUSE)).toBe(1);
});
