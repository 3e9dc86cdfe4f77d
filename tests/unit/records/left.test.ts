import { describe, expect, it } from 'vitest';
import { CallSession, makeProgress, prepareCall, resumeCall, shippedCalls } from '../../../src/calls/index.ts';
import { playSteps } from '../../../src/calls/solution.ts';
import { goesOnFrom, type LeftCall, packLeft, unpackLeft } from '../../../src/records/learnt/left.ts';
import { TEXT } from '../../../src/records/limits.ts';

const MOST = TEXT.suspended12.most;

function leftOf(session: CallSession): LeftCall {
  return { call: session.prepared.call.id, mode: session.mode, progress: makeProgress(session) };
}

/** A call solved, graded. */
function solved(id: string): CallSession {
  const call = shippedCalls().find((one) => one.id === id);
  if (!call) throw new Error(`${id} does not ship`);
  const session = new CallSession(prepareCall(call), 'graded');
  playSteps(session, call.solution);
  return session;
}

/** Someone who asks the same thing over and over, at odd instants. */
function asksOften(times: number): CallSession {
  const session = new CallSession(prepareCall(shippedCalls()[0] as never), 'graded');
  for (let i = 0; i < times; i++) {
    session.advance(session.now_ms + 1000 + ((i * 7919) % 60_000));
    session.act({ id: i % 2 === 0 ? 'ask-hum' : 'ask-smell' });
  }
  return session;
}

describe('a call left half way, as text for a platform', () => {
  it('holds the whole solution of every shipped call, in less than half of what there is room for', async () => {
    for (const { id } of shippedCalls()) {
      const left = leftOf(solved(id));
      const { text, holds } = await packLeft(left, MOST);
      expect(holds, id).toBe(left.progress.actions.length);
      expect(text.length, id).toBeLessThan(MOST / 2);
      expect(text).toMatch(/^[\w-]+$/);
      expect(await unpackLeft(text), id).toEqual(left);
    }
  });

  it('goes on to the same bits, with the help that was taken', async () => {
    const session = solved('sunny-line');
    const left = { ...leftOf(session), assistance: { hints: 2 as const, likely: true } };
    const back = await unpackLeft((await packLeft(left, MOST)).text);
    expect(back?.assistance).toEqual(left.assistance);
    const resumed = resumeCall(session.prepared, 'graded', back?.progress);
    expect('session' in resumed && resumed.session.stateDigest()).toBe(session.stateDigest());
  });

  it('holds the first actions where all of them are too many, and says how many', async () => {
    const session = asksOften(400);
    const left = leftOf(session);
    const { text, holds } = await packLeft(left, MOST);
    expect(text.length).toBeLessThanOrEqual(MOST);
    expect(holds).toBeGreaterThan(150);
    expect(holds).toBeLessThan(400);
    const back = await unpackLeft(text);
    expect(back?.progress.actions).toEqual(left.progress.actions.slice(0, holds));
    expect(back?.progress.now_ms).toBe(left.progress.actions[holds - 1]?.at_ms);
    const resumed = resumeCall(session.prepared, 'graded', back?.progress);
    expect('session' in resumed && resumed.session.log.length).toBe(holds);
    // One more would not have fitted.
    const one = { ...left, progress: { ...left.progress, actions: left.progress.actions.slice(0, holds + 1) } };
    expect((await packLeft(one, MOST)).holds).toBe(holds);
  });

  it('is whole at its very length, and one action shorter below it', async () => {
    const left = leftOf(solved('storm-light'));
    const { text } = await packLeft(left, MOST);
    expect((await packLeft(left, text.length)).text).toBe(text);
    expect((await packLeft(left, text.length - 1)).holds).toBe(left.progress.actions.length - 1);
    expect(await packLeft(left, 10)).toEqual({ text: '', holds: 0 });
  });

  it('is refused where a letter was changed, cut off or is of another form', async () => {
    const { text } = await packLeft(leftOf(solved('storm-light')), MOST);
    for (const at of [0, 3, 20, 60, text.length - 2]) {
      const other = text[at] === 'A' ? 'B' : 'A';
      expect(await unpackLeft(text.slice(0, at) + other + text.slice(at + 1)), `letter ${at}`).toBeUndefined();
    }
    for (const none of ['', 'A', text.slice(0, 40), text.slice(0, -4), `${text}AAAA`, 'not a call at all']) {
      expect(await unpackLeft(none)).toBeUndefined();
    }
  });
});

describe('a call here goes on from the platform’s', () => {
  const { progress } = leftOf(solved('sunny-line'));
  const first = (n: number) => ({ ...progress, actions: progress.actions.slice(0, n) });

  it('where the platform’s is its beginning, or the same', () => {
    expect(goesOnFrom(progress, first(3))).toBe(true);
    expect(goesOnFrom(progress, progress)).toBe(true);
  });

  it('not where it is shorter, of another engine, or was another way', () => {
    expect(goesOnFrom(first(3), progress)).toBe(false);
    expect(goesOnFrom(progress, { ...first(3), engine: '0' })).toBe(false);
    const [one, ...rest] = first(3).actions;
    const otherWay = [{ ...one, at_ms: 1 }, ...rest] as typeof progress.actions;
    expect(goesOnFrom(progress, { ...progress, actions: otherWay })).toBe(false);
  });
});
