/** The readings of a call put together: a cross-check of the belief, by consistency alone. */
import { describe, expect, it } from 'vitest';
import { diagnosisOf, seenOf } from '../../src/calls/expertise.ts';
import { CallSession, playSolution, prepareCall, shippedCalls, togetherView } from '../../src/calls/index.ts';
import { alike, keysOf } from '../../src/diagnosis/index.ts';
import { speakAll } from '../unit/spoken.ts';
import { siftedAfter } from './sifted.ts';

function solved(id: string) {
  const call = shippedCalls().find((c) => c.id === id);
  if (!call) throw new Error(`${id} does not ship`);
  const session = playSolution(prepareCall(call));
  return { session, sifting: siftedAfter(session) };
}

describe('readings put together', () => {
  const [a, b, c] = ['line-split', 'line-off-fitting', 'housing-hot'];
  it.each([
    ['a sound works', { sound: true, explanations: [] }, 'sound'],
    ['one fault', { explanations: [[a]] }, 'only'],
    ['two that nothing tells apart', { explanations: [[a], [b]] }, 'two'],
    ['many', { explanations: [[a], [b], [c]] }, 'many'],
    ['one pair', { explanations: [[a, b]] }, 'pair'],
    [
      'several pairs',
      {
        explanations: [
          [a, b],
          [a, c],
        ],
      },
      'pairs',
    ],
    ['nothing of the list', { explanations: [] }, 'none'],
  ])('that leave %s say so', (_what, made, end) => {
    const call = shippedCalls().find((one) => one.id === 'sunny-line');
    if (!call) throw new Error('the call does not ship');
    const session = new CallSession(prepareCall(call), 'practice');
    const view = togetherView(session, { of: 110, readings: [], sound: false, ...made });
    expect(view.end.id).toBe(`together.${end}`);
    expect(() => speakAll([view.end])).not.toThrow();
  });

  it('leave the one fault that shows them all', () => {
    const { session, sifting } = solved('sunny-line');
    expect(sifting.explanations).toEqual([['line-split']]);
    const { readings, end, of } = togetherView(session, sifting);
    expect(of).toBeGreaterThan(90);
    expect(readings.at(-1)).toMatchObject({ left: 1, seen: { id: 'note.line' } });
    expect(end.id).toBe('together.only');
  });

  it('of two faults that mask each other leave no single one, and name the pair', () => {
    const { session, sifting } = solved('weak-lungs');
    expect(sifting.explanations.map((keys) => [...keys].sort())).toEqual([['intake-clogged', 'joint-leak']]);
    expect(sifting.readings.at(-1)?.left).toBe(0);
    expect(togetherView(session, sifting).end).toEqual({
      id: 'together.pair',
      values: { one: { id: expect.any(String) }, other: { id: expect.any(String) } },
    });
  });

  it('say of a surge that passed with its reset what else the readings allow', () => {
    const { session, sifting } = solved('storm-light');
    expect(sifting.explanations).toContainEqual(['surge-latch']);
    expect(togetherView(session, sifting).end.id).toBe('together.many');
    // Also what the belief had let rest counts: each form of each cause by itself, followed through all that was done.
    const shown = new Map<string, Set<number>>();
    for (const { hypothesis, twin } of diagnosisOf(session.prepared).suspects) {
      const steps = shown.get(hypothesis.cause) ?? new Set();
      shown.set(hypothesis.cause, steps);
      for (const [step, done] of session.done.entries()) {
        const { deed, reading } = seenOf(session, done);
        const expected = twin.follow(deed);
        if (reading === undefined || alike(reading, expected)) steps.add(step);
      }
    }
    const left = [...shown].filter(
      ([cause, steps]) => keysOf(cause).length === 1 && steps.size === session.done.length,
    );
    expect(sifting.explanations.flat().sort()).toEqual(left.map(([cause]) => cause).sort());
  });
});
