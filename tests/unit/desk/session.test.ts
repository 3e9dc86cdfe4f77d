import { expect, it, vi } from 'vitest';
import type { CallView } from '../../../src/calls/view.ts';
import { type Engine, EngineError } from '../../../src/desk/engine.ts';
import type { Request } from '../../../src/desk/protocol.ts';
import { createSession } from '../../../src/desk/session.ts';
import { openStore } from '../../../src/desk/store.ts';
import { saved } from './saved.ts';

/** As much of a view as a session reads. */
function view(ended: boolean): CallView {
  const clock = { year: 2031, month: 5, day: 14, weekday: 2, secondOfDay: 100 };
  const part = { callId: 'sunny-line', now_ms: 5000, clock, stage: 'ask', changes: [], ended, lamp: 'lit' };
  return { ...part, scene: { standsAt: 'yard' } } as unknown as CallView;
}

it('a call that has just ended is taken from its beginning, however slowly it is put away', async () => {
  vi.stubGlobal('requestAnimationFrame', () => 0);
  const asked: Request['kind'][] = [];
  const engine = {
    async ask({ kind }: Request) {
      asked.push(kind);
      await new Promise((answer) => setTimeout(answer, 5));
      if (kind === 'save') return { kind: 'saved', saved };
      if (kind === 'debrief') return { kind: 'debrief', debrief: { score: 90, passed: true } };
      return { kind: 'view', view: view(kind === 'act') };
    },
  } as unknown as Engine;
  const store = await openStore(() => {});
  const session = createSession({ engine, store, wallClock: () => 0, fail: () => {} });
  await session.take('sunny-line');
  expect(await store.progressOf('sunny-line')).toBeDefined();
  const ending = session.dispatch({ id: 'leave-site' });
  await session.take('sunny-line');
  await ending;
  expect(asked.filter((kind) => kind === 'open' || kind === 'resume')).toEqual(['open', 'open']);
  expect(asked.lastIndexOf('open')).toBeGreaterThan(asked.indexOf('debrief'));
});

it('a call whose debrief cannot be fetched is kept, and comes to its end when it is next taken up', async () => {
  vi.stubGlobal('requestAnimationFrame', () => 0);
  let offline = true;
  const engine = {
    async ask({ kind }: Request) {
      if (kind === 'save') return { kind: 'saved', saved };
      if (kind !== 'debrief') return { kind: 'view', view: view(kind !== 'open') };
      if (offline) throw new EngineError({ id: 'trouble.notLoaded' });
      return { kind: 'debrief', debrief: { score: 90, passed: true } };
    },
  } as unknown as Engine;
  const store = await openStore(() => {});
  const told: string[] = [];
  const session = createSession({ engine, store, wallClock: () => 0, fail: ({ id }) => told.push(id) });
  await session.take('sunny-line');
  await session.dispatch({ id: 'leave-site' });
  expect(told).toEqual(['trouble.notLoaded']);
  expect(await store.finished()).toEqual([]);
  offline = false;
  await session.take('sunny-line');
  expect((await store.finished()).map(({ score }) => score)).toEqual([90]);
  expect(await store.progressOf('sunny-line')).toBeUndefined();
});

it('stands still when Pause is pressed the moment a call is seen, while it is still being kept', async () => {
  vi.stubGlobal('requestAnimationFrame', () => 0);
  const engine = {
    async ask({ kind }: Request) {
      return kind === 'save' ? { kind: 'saved', saved } : { kind: 'view', view: view(false) };
    },
  } as unknown as Engine;
  const store = await openStore(() => {});
  const session = createSession({ engine, store, wallClock: () => 0, fail: () => {} });
  session.view.subscribe((seen) => {
    if (seen) session.setRate(0);
  });
  await session.take('sunny-line');
  expect(session.rate.value).toBe(0);
});
