import { describe, expect, it } from 'vitest';
import { makeProgress, playSolution, prepareCall, resumeCall, shippedCalls } from '../../../src/calls/index.ts';
import { play } from '../../../src/calls/players.ts';
import { goesOnFrom, type LeftCall, packLeft, unpackLeft } from '../../../src/records/learnt/left.ts';
import { TEXT } from '../../../src/records/limits.ts';

const MOST = TEXT.suspended12.most;
const SOLVED = shippedCalls().map((call) => {
  const session = playSolution(prepareCall(call));
  return { call, session, left: leftOf(session) };
});

function leftOf(session: ReturnType<typeof playSolution>): LeftCall {
  return { call: session.prepared.call.id, mode: session.mode, progress: makeProgress(session) };
}

describe('a call left half way, as text for a platform', () => {
  it('holds the whole of every shipped call', async () => {
    const sizes: [number, number, string][] = [];
    for (const { call, left } of SOLVED) {
      const { text, holds } = await packLeft(left, MOST);
      expect(holds, call.id).toBe(left.progress.actions.length);
      expect(text.length, call.id).toBeLessThanOrEqual(MOST);
      expect(text).toMatch(/^[\w-]+$/);
      sizes.push([text.length, holds, call.id]);
    }
    console.log(
      sizes
        .sort((a, b) => a[0] - b[0])
        .map((one) => one.join(' '))
        .join('\n'),
    );
  });
});
