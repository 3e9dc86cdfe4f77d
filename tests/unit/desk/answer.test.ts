import { describe, expect, it } from 'vitest';
import { loadRecord, shippedCalls } from '../../../src/calls/index.ts';
import { ENGINE_VERSION } from '../../../src/calls/progress.ts';
import { Answerer } from '../../../src/desk/answer.ts';
import type { Reply, Request, SavedCall } from '../../../src/desk/protocol.ts';

const call = shippedCalls().find((c) => c.id === 'storm-light');
if (!call) throw new Error('the call does not ship');

async function ask<K extends Reply['kind']>(answerer: Answerer, request: Request, kind: K) {
  const reply = await answerer.answer(request);
  if (reply.kind !== kind) throw new Error(`${reply.kind} instead of ${kind}`);
  return reply as Extract<Reply, { kind: K }>;
}

/** Opens the call and does the first steps of its solution. */
async function takenUpTo(steps: number) {
  const answerer = new Answerer();
  let { view } = await ask(answerer, { kind: 'open', callId: call?.id ?? '', mode: 'practice' }, 'view');
  for (const step of call?.solution.slice(0, steps) ?? []) {
    const action = { id: step.do, ...(step.fill ? { fill: step.fill } : {}) };
    ({ view } = await ask(answerer, { kind: 'act', action, at_ms: view.now_ms }, 'view'));
  }
  return { answerer, view };
}

describe('what the page asks', () => {
  it('is refused with a word where there is no such call, or none is open', async () => {
    const answerer = new Answerer();
    expect(await answerer.answer({ kind: 'save' })).toMatchObject({ message: { id: 'trouble.no-call' } });
    const unknown = await answerer.answer({ kind: 'open', callId: 'no-such-call', mode: 'practice' });
    expect(unknown).toMatchObject({ kind: 'error', message: { id: 'trouble.call-unknown' } });
  });

  it('of a kept call leads to the view at which it was left', async () => {
    const { answerer, view } = await takenUpTo(4);
    const { saved } = await ask(answerer, { kind: 'save' }, 'saved');
    const kept = JSON.parse(JSON.stringify(saved)) as SavedCall;
    const again = await ask(new Answerer(), { kind: 'resume', saved: kept }, 'view');
    expect(again.view.notebook).toEqual(view.notebook);
    expect(again.view.scene).toEqual(view.scene);
  });

  it('of a kept call that somebody changed is refused with a word', async () => {
    const { answerer } = await takenUpTo(1);
    const { saved } = await ask(answerer, { kind: 'save' }, 'saved');
    const broken = await new Answerer().answer({ kind: 'resume', saved: { ...saved, record: { actions: 7 } } });
    expect(broken).toMatchObject({ kind: 'error', message: { id: 'trouble.progress-broken' } });
  });

  it('of a kept call or round of another engine is refused with a word of which, whatever it keeps', async () => {
    const { answerer } = await takenUpTo(1);
    const { saved } = await ask(answerer, { kind: 'save' }, 'saved');
    const made = Number(ENGINE_VERSION);
    const of = (engine: number): Request => ({
      kind: 'resume',
      saved: { ...saved, record: { engine: String(engine), other: 'things' } },
    });
    const told = async (request: Request) => {
      const reply = await new Answerer().answer(request);
      return reply.kind === 'error' ? reply.message : reply.kind;
    };
    const engines = (engine: number) => ({ made: String(engine), here: ENGINE_VERSION });
    expect(await told(of(made - 1))).toEqual({ id: 'trouble.progress-older', values: engines(made - 1) });
    expect(await told(of(made + 1))).toEqual({ id: 'trouble.progress-newer', values: engines(made + 1) });
    expect(await told({ kind: 'round', kept: { engine: String(made + 1) } })).toEqual({ id: 'trouble.round-newer' });
    const older = await ask(new Answerer(), { kind: 'round', kept: { engine: String(made - 1) } }, 'round');
    expect(older.anew).toBe(true);
  });

  it('to do in a coached call is done after a word, where one is due, and not at once', async () => {
    const answerer = new Answerer();
    const { view } = await ask(answerer, { kind: 'open', callId: call.id, mode: 'coached' }, 'view');
    const action = { id: 'guide-reset' };
    const asked = { kind: 'act', action, at_ms: view.now_ms } as const;
    const before = await ask(answerer, asked, 'view');
    expect(before.caution?.id).toBe('before.danger-not-asked');
    expect(before.view).toMatchObject({ now_ms: view.now_ms, breaches: 0, ended: false });
    const after = await ask(answerer, { ...asked, sure: true }, 'view');
    expect(after.caution).toBeUndefined();
    expect(after.view).toMatchObject({ breach: { id: 'breach.danger-not-asked' }, breaches: 1, ended: false });
  });

  it('to be led through is answered with the next step, after every act, and kept for when it is taken up again', async () => {
    const answerer = new Answerer();
    const opened = await ask(answerer, { kind: 'open', callId: call.id, mode: 'coached', led: 'led-by-phone' }, 'view');
    expect(opened.guide?.step?.id).toBe('ask-danger');
    const { now_ms } = opened.view;
    const act = (id: string) => ask(answerer, { kind: 'act', action: { id }, at_ms: now_ms }, 'view');
    expect((await act('ask-danger')).guide?.step?.id).toBe('ask-history');
    expect((await ask(answerer, { kind: 'advance', to_ms: now_ms }, 'view')).guide).toBeUndefined();
    const { saved } = await ask(answerer, { kind: 'save' }, 'saved');
    const kept = { ...saved, assistance: { hints: 0, likely: false, led: 'led-by-phone' } } as const;
    const again = await ask(new Answerer(), { kind: 'resume', saved: kept }, 'view');
    expect(again.guide?.step?.id).toBe('ask-history');
    for (const id of ['ask-history', 'ask-hum']) await act(id);
    // Once it has led to its end it says so once, and no more.
    expect((await act('ask-breakers')).guide).toEqual({});
    expect((await act('guide-reset')).guide).toBeUndefined();
  });

  it('of a closed call is answered: the debrief, the record, the truth at an instant', async () => {
    const { answerer, view } = await takenUpTo(call.solution.length);
    expect(view.ended).toBe(true);
    const { debrief } = await ask(answerer, { kind: 'debrief' }, 'debrief');
    expect(debrief.passed).toBe(true);
    const helped = await ask(answerer, { kind: 'record', assistance: { hints: 2, likely: false } }, 'record');
    expect(loadRecord(JSON.stringify(helped.record))).toMatchObject({ ok: true, value: { assistance: { hints: 2 } } });
    const led = await ask(
      answerer,
      { kind: 'record', assistance: { hints: 0, likely: false, led: 'led-whole' } },
      'record',
    );
    expect(loadRecord(JSON.stringify(led.record))).toMatchObject({
      ok: true,
      value: { assistance: { led: 'led-whole' } },
    });
    const { record } = await ask(answerer, { kind: 'record' }, 'record');
    expect(record).not.toHaveProperty('assistance');
    expect(record).toMatchObject({ call: call.id, claims: { passed: true, score: debrief.score } });
    const { scene } = await ask(answerer, { kind: 'xray', at_ms: view.now_ms }, 'xray');
    expect(scene.panel.lamps.length).toBeGreaterThan(0);
  });
});
