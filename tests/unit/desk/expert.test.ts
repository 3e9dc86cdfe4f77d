import { beforeAll, describe, expect, it } from 'vitest';
import type { Advice } from '../../../src/calls/coach.ts';
import { type CallFile, CallSession, makeProgress, prepareCall, shippedCalls } from '../../../src/calls/index.ts';
import { isReview } from '../../../src/desk/debrief/review-shape.ts';
import { coach, type ExpertPort, type Headway, review } from '../../../src/desk/expert.ts';
import { Expert } from '../../../src/desk/expert-answer.ts';
import type { ExpertReply, ExpertRequest } from '../../../src/desk/expert-protocol.ts';
import type { SavedCall } from '../../../src/desk/protocol.ts';
import { speakAll } from '../spoken.ts';

const call = shippedCalls().find((c) => c.id === 'storm-light') as CallFile;
const prepared = prepareCall(call);

/** The call after so many steps of its solution, as the page keeps it. */
function savedAfter(steps: number): SavedCall {
  const session = new CallSession(prepared, 'coached');
  for (const step of call.solution.slice(0, steps)) {
    // Somebody waits a little between two steps: the instants are not those of the actions alone.
    session.advance(session.now_ms + 17_345);
    session.act({ id: step.do, ...(step.fill ? { fill: step.fill } : {}) });
  }
  const { title, id } = call;
  const progress = JSON.parse(JSON.stringify(makeProgress(session)));
  return { version: 1, callId: id, mode: 'coached', record: progress, now_ms: session.now_ms, title };
}

function told() {
  const replies: ExpertReply[] = [];
  return { replies, expert: new Expert((reply) => replies.push(structuredClone(reply))) };
}

describe('the expert', () => {
  const { replies, expert } = told();
  const whole = savedAfter(call.solution.length);

  beforeAll(() => expert.answer({ kind: 'review', saved: whole }), 120_000);

  it('tells how far it is, then every step in turn, then that it is done', () => {
    const kinds = replies.map((one) => one.kind);
    const steps = replies.flatMap((one) => (one.kind === 'step' ? [one] : []));
    expect(kinds.indexOf('step')).toBeGreaterThan(kinds.lastIndexOf('lived'));
    expect(steps.map((one) => one.review.step)).toEqual(call.solution.map((_, i) => i));
    expect(new Set(steps.map((one) => one.of))).toEqual(new Set([call.solution.length]));
    expect(kinds.at(-1)).toBe('reviewed');
  });

  it('tells it in a form that can be kept and is known again', () => {
    const steps = replies.flatMap((one) => (one.kind === 'step' ? [one.review] : []));
    const together = replies.flatMap((one) => (one.kind === 'reviewed' ? [one.together] : []))[0];
    const whole = { steps, together };
    const kept = JSON.parse(JSON.stringify(whole));
    expect(isReview(kept)).toBe(true);
    expect(kept).toEqual(whole);
    expect(isReview(undefined)).toBe(false);
    expect(isReview({ ...kept, steps: [{ ...steps[0], lesson: [{ text: 'no message' }] }] })).toBe(false);
  });

  it('sets a call up once for all that was done on it', async () => {
    const before = replies.length;
    await expert.answer({ kind: 'review', saved: savedAfter(2) });
    const since = replies.slice(before).map((one) => one.kind);
    expect(since).toEqual(['step', 'step', 'reviewed']);
  });

  it('refuses a call that somebody changed, with a word', async () => {
    const { replies, expert } = told();
    await expert.answer({ kind: 'review', saved: { ...whole, record: { actions: 7 } } });
    expect(replies).toEqual([{ kind: 'error', message: { id: 'trouble.progress-broken' } }]);
  });
});

describe('a coach that is told of a call bit by bit', () => {
  const { replies, expert } = told();
  const advice = (of: readonly ExpertReply[]) => of.flatMap((one) => (one.kind === 'advice' ? [one.advice] : []));

  beforeAll(async () => {
    for (const steps of [0, 2, 3, 5]) await expert.answer({ kind: 'advise', saved: savedAfter(steps) });
  }, 120_000);

  it('sets up once', () => {
    expect(advice(replies)).toHaveLength(4);
    expect(replies.filter((one) => one.kind === 'lived' && one.done === 0)).toHaveLength(1);
  });

  it('has four hints from the report to the check, and the likely causes, whole in both languages', () => {
    for (const one of advice(replies)) {
      expect(one.hints).toHaveLength(4);
      expect(one.hints[0]?.id).toBe('hint.symptom');
      expect(one.likely.reduce((sum, c) => sum + c.chance, 0)).toBeLessThanOrEqual(1);
      expect(() => speakAll([one.hints, one.likely.map((c) => c.name)])).not.toThrow();
    }
    expect(advice(replies)[0]?.unasked).toBeUndefined();
  });

  it('says so where what it was told does not come out to the same bits', async () => {
    const saved = savedAfter(6);
    const { actions, ...rest } = saved.record as { actions: { state: string }[] };
    const forged = { ...rest, actions: actions.map((one, i) => (i === 5 ? { ...one, state: 'a'.repeat(12) } : one)) };
    await expert.answer({ kind: 'advise', saved: { ...saved, record: forged } });
    expect(replies.at(-1)).toMatchObject({ kind: 'error', message: { id: 'trouble.progress-differs' } });
  });

  it('begins anew where the call was begun anew, and comes to the same word by another way', async () => {
    const before = advice(replies).at(-1);
    await expert.answer({ kind: 'advise', saved: savedAfter(1) });
    expect(advice(replies).at(-1)).not.toEqual(before);
    await expert.answer({ kind: 'advise', saved: savedAfter(5) });
    expect(advice(replies).at(-1)).toEqual(before);
  }, 120_000);
});

/** A worker whose replies the test gives. */
function port() {
  const heard = new Map<string, (event: never) => void>();
  const asked: ExpertRequest[] = [];
  let ended = 0;
  const made: ExpertPort = {
    postMessage: (request) => void asked.push(request),
    addEventListener: (type: string, on: (event: never) => void) => void heard.set(type, on),
    terminate: () => void ended++,
  };
  return {
    made,
    asked,
    reply: (data: ExpertReply) => heard.get('message')?.({ data } as never),
    crash: () => heard.get('error')?.({} as never),
    ended: () => ended,
  };
}

describe('the page', () => {
  const saved = savedAfter(0);
  const advised = { hints: [], likely: [], check: 'ask-hum' } as Advice;

  it('tells a coach who thinks only of the last that was done, and knows what is fresh', () => {
    const worker = port();
    const fresh: boolean[] = [];
    const line = coach(worker.made, { headway() {}, failed() {}, advice: (_, is) => fresh.push(is) });
    const at = (n: number) => ({ ...saved, now_ms: n });
    for (const n of [1, 2, 3]) line.tell(at(n));
    expect(worker.asked.map((one) => one.saved.now_ms)).toEqual([1]);
    worker.reply({ kind: 'advice', advice: advised });
    expect(worker.asked.map((one) => one.saved.now_ms)).toEqual([1, 3]);
    worker.reply({ kind: 'advice', advice: advised });
    expect(fresh).toEqual([false, true]);
    line.tell(at(4));
    expect(worker.asked).toHaveLength(3);
    line.close();
    expect(worker.ended()).toBe(1);
  });

  it('ends a worker that fails or breaks, and says what happened', () => {
    for (const [fail, id] of [
      [
        (w: ReturnType<typeof port>) => w.reply({ kind: 'error', message: { id: 'trouble.notLoaded' } }),
        'trouble.notLoaded',
      ],
      [(w: ReturnType<typeof port>) => w.crash(), 'trouble.expert'],
    ] as const) {
      const worker = port();
      const failed: string[] = [];
      const heard = { headway() {}, step() {}, done() {} };
      review(worker.made, saved, { ...heard, failed: (message) => failed.push(message.id) });
      fail(worker);
      expect([failed, worker.ended()]).toEqual([[id], 1]);
    }
  });

  it('hears a review out, and ends the worker then or when it has heard enough', () => {
    const worker = port();
    const headway: Headway[] = [];
    let done = 0;
    const end = review(worker.made, saved, {
      headway: (h) => headway.push(h),
      step() {},
      done: () => done++,
      failed() {},
    });
    worker.reply({ kind: 'lived', done: 20, of: 900 });
    expect(headway).toEqual([{ at: 'causes', done: 20, of: 900 }]);
    worker.reply({ kind: 'reviewed', together: { of: 110, readings: [], end: { id: 'together.none' } } });
    expect([done, worker.ended()]).toEqual([1, 1]);
    end();
    expect(worker.ended()).toBe(2);
  });
});
