import { describe, expect, it } from 'vitest';
import { judged, play, prepareCall, shippedCalls } from '../../src/calls/index.ts';

/** The whole distributions, with expert and checklist over 20 seeds, are in players.deep.ts. */
const calls = shippedCalls().map((call) => [call.id, call] as const);

describe.each(calls)('%s', (_id, call) => {
  const wantsMend = call.expected.decision === 'visit';

  it('is not passed by chance, and by a reset only where a reset is right', () => {
    expect(judged(play(prepareCall(call), 'random')).passed).toBe(false);
    expect(judged(play(prepareCall(call), 'reset-only')).passed).toBe(!wantsMend);
  });

  it('brings who swaps parts until it is quiet at most 60', () => {
    const verdict = judged(play(prepareCall(call), 'parts-swapper'));
    expect(verdict.passed).toBe(false);
    expect(verdict.score).toBeLessThanOrEqual(60);
  });
});

describe('the expert', { timeout: 300_000 }, () => {
  it.each(['storm-light', 'mower-passed'])('passes %s with 90 or more, by what is seen alone', (id) => {
    const call = shippedCalls().find((c) => c.id === id);
    if (!call) throw new Error('the call does not ship');
    const verdict = judged(play(prepareCall(call), 'expert'));
    expect(verdict.passed).toBe(true);
    expect(verdict.score).toBeGreaterThanOrEqual(90);
  });
});
