import { expect, it, vi } from 'vitest';
import type { CallView } from '../../../src/calls/view.ts';
import { type Backing, inMemory } from '../../../src/desk/backing.ts';
import { type Engine, EngineError } from '../../../src/desk/engine.ts';
import type { Request } from '../../../src/desk/protocol.ts';
import { createSession } from '../../../src/desk/session.ts';
import { openStore, storeOver } from '../../../src/desk/store.ts';
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

/** An engine whose every act adds a change, and a store whose tab and disk the test has in hand. */
function atWork(backing: Backing = inMemory()) {
  vi.stubGlobal('requestAnimationFrame', () => 0);
  let acts = 0;
  const engine = {
    async ask({ kind }: Request) {
      if (kind === 'act') acts += 1;
      if (kind === 'save') return { kind: 'saved', saved: { ...saved, record: { acts } } };
      return { kind: 'view', view: { ...view(false), stage: `after ${acts}` } };
    },
  } as unknown as Engine;
  const claims = { claim: vi.fn(async () => true), letGo: vi.fn() };
  const store = storeOver({ ...backing, shared: async () => true }, claims, () => {});
  const told: string[] = [];
  const session = createSession({ engine, store, wallClock: () => 0, fail: ({ id }) => told.push(id) });
  return { session, store, claims, told };
}

it('shows an action only once it is kept, so that it is there whatever becomes of the page then', async () => {
  const { session, store } = atWork();
  await session.take('sunny-line');
  const put = store.putProgress;
  const stages: unknown[] = [];
  store.putProgress = async (progress) => {
    stages.push(session.view.value?.stage);
    await new Promise((written) => setTimeout(written, 5));
    await put(progress);
    stages.push(session.view.value?.stage);
  };
  await session.dispatch({ id: 'ask-danger' });
  expect(stages).toEqual(['after 0', 'after 0']);
  expect(session.view.value?.stage).toBe('after 1');
  expect((await store.progressOf('sunny-line'))?.saved.record).toEqual({ acts: 1 });
});

it('lets go of a call that another tab took over, and has not shown what could not be kept', async () => {
  const backing = inMemory();
  const { session, told } = atWork(backing);
  const seen: unknown[] = [];
  await session.take('sunny-line');
  session.view.subscribe((one) => seen.push(one?.stage));
  const other = atWork(backing);
  await other.session.take('sunny-line');
  await session.dispatch({ id: 'ask-danger' });
  expect(seen).toEqual(['after 0', undefined]);
  expect([session.elsewhere.value, other.session.elsewhere.value]).toEqual(['taken', null]);
  expect(told).toEqual([]);
  // Taken back, it is as the other tab left it.
  await other.session.dispatch({ id: 'ask-danger' });
  await session.take('sunny-line', 'alone', true);
  expect(session.view.value).not.toBeNull();
  expect(session.elsewhere.value).toBeNull();
});

it('opens nothing that another tab has open, before it is told to', async () => {
  const { session, store, claims } = atWork();
  claims.claim.mockResolvedValueOnce(false);
  await session.take('sunny-line');
  expect([session.view.value, session.elsewhere.value]).toEqual([null, 'open']);
  expect(await store.progress()).toEqual([]);
  await session.take('sunny-line', 'alone', true);
  expect(session.view.value).not.toBeNull();
  expect(claims.claim).toHaveBeenLastCalledWith('sunny-line', true, expect.any(Function));
});
