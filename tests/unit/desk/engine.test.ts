import { describe, expect, it } from 'vitest';
import { connect, EngineError } from '../../../src/desk/engine.ts';
import type { Numbered, Reply, Request } from '../../../src/desk/protocol.ts';

/** A worker of which the test answers the requests. */
function port() {
  const heard = new Map<string, (event: never) => void>();
  const asked: Numbered<Request>[] = [];
  return {
    asked,
    postMessage: (data: unknown) => void asked.push(data as Numbered<Request>),
    addEventListener: (type: string, on: (event: never) => void) => void heard.set(type, on),
    answer: (id: number, body: Reply) => heard.get('message')?.({ data: { id, body } } as never),
    crash: () => heard.get('error')?.({} as never),
  };
}

describe('talking to the worker', () => {
  it('brings each reply to the one who asked, in any order', async () => {
    const worker = port();
    const engine = connect(worker);
    const list = engine.ask({ kind: 'list', language: 'en' });
    const record = engine.ask({ kind: 'record' });
    const [first, second] = worker.asked.map((one) => one.id);
    worker.answer(second ?? 0, { kind: 'record', record: 1, fileName: 'a' });
    worker.answer(first ?? 0, { kind: 'list', calls: [] });
    expect((await list).calls).toEqual([]);
    expect((await record).fileName).toBe('a');
  });

  it('hands on what the engine says is wrong', async () => {
    const worker = port();
    const asked = connect(worker).ask({ kind: 'debrief' });
    worker.answer(1, { kind: 'error', message: { id: 'trouble.no-call' } });
    await expect(asked).rejects.toMatchObject({ told: { id: 'trouble.no-call' } });
  });

  it('refuses a reply of another kind', async () => {
    const worker = port();
    const asked = connect(worker).ask({ kind: 'debrief' });
    worker.answer(1, { kind: 'list', calls: [] });
    await expect(asked).rejects.toBeInstanceOf(EngineError);
  });

  it('leaves nobody waiting when the worker breaks', async () => {
    const worker = port();
    const engine = connect(worker);
    const asked = engine.ask({ kind: 'list', language: 'en' });
    worker.crash();
    await expect(asked).rejects.toBeInstanceOf(EngineError);
    await expect(engine.ask({ kind: 'list', language: 'en' })).rejects.toBeInstanceOf(EngineError);
  });
});
