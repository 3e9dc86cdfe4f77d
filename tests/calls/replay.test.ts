import { describe, expect, it } from 'vitest';
import {
  CallSession,
  makeProgress,
  makeRecord,
  playSolution,
  prepareCall,
  replay,
  resumeCall,
  shippedCalls,
} from '../../src/calls/index.ts';
import { draw } from '../../src/plant/index.ts';

const call = shippedCalls().find((c) => c.id === 'sunny-line');
if (!call) throw new Error('the call does not ship');
const prepared = prepareCall(call);

function record() {
  return JSON.parse(JSON.stringify(makeRecord(playSolution(prepared))));
}

describe('a record', () => {
  it('replays to the same bits', () => {
    const made = record();
    const again = replay(prepared, made);
    expect(again.ok).toBe(true);
    expect(again.session.stateDigest()).toBe(made.claims.state);
  });

  it('replays to the same bits however the original was displayed', () => {
    const slow = record();
    for (const seed of [1, 2, 3]) {
      const session = new CallSession(prepared, 'practice');
      let n = 0;
      for (const step of slow.actions) {
        // A display asks for time as it likes: in hundredths of a second here, in hours there.
        while (session.now_ms < step.at_ms) {
          const slice = 10 + Math.floor(draw(seed, 'display', n++) * 600_000);
          session.advance(Math.min(step.at_ms, session.now_ms + slice));
        }
        expect(session.act({ id: step.do, ...(step.fill ? { fill: step.fill } : {}) })).toBeUndefined();
      }
      expect(session.stateDigest()).toBe(slow.claims.state);
      expect(makeRecord(session)).toEqual(slow);
    }
  });

  it('is refused when one action was changed, and says which', () => {
    const forged = record();
    const at = forged.actions.findIndex((a: { do: string }) => a.do === 'tee-pressure');
    forged.actions[at].do = 'dead-head-compressor';
    const again = replay(prepared, forged);
    expect(again.ok).toBe(false);
    expect(again.firstDifference?.values?.n).toMatchObject({ value: at + 1 });
  });

  it('is refused when its seed was swapped, also for that of another call', () => {
    const again = replay(prepared, { ...record(), seed: call.seed + 1 });
    expect(again.ok).toBe(false);
    expect(again.firstDifference).toMatchObject({ id: 'replay.seed', values: { came: String(call.seed) } });
  });

  it('is refused when an action was left out or moved', () => {
    const left = record();
    left.actions.splice(3, 1);
    expect(replay(prepared, left).ok).toBe(false);
    const moved = record();
    moved.actions[4].at_ms += 1000;
    expect(replay(prepared, moved).ok).toBe(false);
  });

  it.each([
    ['passed', false],
    ['score', 99],
    ['minutes', 1],
    ['money_usd', 0],
    ['cause', ['joint-leak']],
    ['flags', ['no-suspect']],
  ])('is refused when its claim of %s was changed, and says so', (claim, value) => {
    const forged = record();
    forged.claims[claim] = value;
    const again = replay(prepared, forged);
    expect(again.ok).toBe(false);
    expect(again.firstDifference).toMatchObject({ id: 'replay.claim', values: { claim } });
  });

  it('is refused when it is of another engine or of a call that has changed since', () => {
    expect(replay(prepared, { ...record(), engine: '0' }).firstDifference?.id).toBe('replay.engine');
    const changed = prepareCall({ ...call, seed: call.seed + 1 });
    expect(replay(changed, record()).firstDifference?.id).toBe('replay.call-changed');
  });
});

describe('a call in progress', () => {
  it('is taken up again to the same bits, also between two actions', () => {
    const session = new CallSession(prepared, 'practice');
    for (const step of call.solution.slice(0, 12))
      session.act({ id: step.do, ...(step.fill ? { fill: step.fill } : {}) });
    session.advance(session.now_ms + 123_456);
    const kept = JSON.parse(JSON.stringify(makeProgress(session)));
    const taken = resumeCall(prepared, 'practice', kept);
    if ('why' in taken) throw new Error(taken.why.id);
    expect(taken.session.now_ms).toBe(session.now_ms);
    expect(taken.session.stateDigest()).toBe(session.stateDigest());
    expect(taken.session.service.person.notebook).toEqual(session.service.person.notebook);
  });

  it.each([
    ['nothing', null],
    ['another shape', { actions: 7 }],
    ['another version', { engine: '0', callHash: 'a'.repeat(64), actions: [], now_ms: 1 }],
  ])('that was kept as %s is refused with a word', (_name, kept) => {
    expect(resumeCall(prepared, 'practice', kept)).toHaveProperty('why.id');
  });
});
