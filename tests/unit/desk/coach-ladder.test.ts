/** Four hints, with an act and some seconds in between, so that nobody clicks through (Aleven et al. 2006 on abuse of hints). */
import { describe, expect, it } from 'vitest';
import { afterAct, climb, FOOT, mayAsk, WAIT_MS } from '../../../src/desk/call/coach/ladder.ts';

describe('the ladder of hints', () => {
  const first = climb(FOOT, 1000, 3, 'tee-pressure');

  it('gives a first hint at once', () => {
    expect(mayAsk(FOOT, 0, 0)).toBe('now');
    expect(first.level).toBe(1);
  });

  it('wants an act, and some seconds, before a plainer one', () => {
    expect(mayAsk(first, 1000 + 10 * WAIT_MS, 3)).toBe('act-first');
    expect(mayAsk(first, 1000 + WAIT_MS - 1, 4)).toBe('wait');
    expect(mayAsk(first, 1000 + WAIT_MS, 4)).toBe('now');
  });

  it('ends at the fourth', () => {
    let ladder = FOOT;
    for (let i = 0; i < 6; i++) ladder = climb(ladder, i * WAIT_MS, i, 'tee-pressure');
    expect(ladder.level).toBe(4);
  });

  it('begins anew once the check was made that the hints led to', () => {
    expect(afterAct(first, 'ask-hum')).toBe(first);
    expect(afterAct(first, 'tee-pressure')).toBe(FOOT);
  });
});
