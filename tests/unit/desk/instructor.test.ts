/** Two windows of one browser: a trainer works a call that a trainee takes, over a channel of the test's own. */
import { signal } from '@preact/signals';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { prepareCall, replay, resumeCall, shippedCalls } from '../../../src/calls/index.ts';
import type { CallRecord } from '../../../src/calls/schema.ts';
import { TEACH } from '../../../src/calls/teach-ids.ts';
import type { Action } from '../../../src/calls/view.ts';
import { Answerer } from '../../../src/desk/answer.ts';
import type { Desk } from '../../../src/desk/desk.ts';
import { type Engine, EngineError } from '../../../src/desk/engine.ts';
import { answerOn } from '../../../src/desk/instructor/answering.ts';
import { LINE_VERSION } from '../../../src/desk/instructor/channel.ts';
import type { Answer, TraineeWindow } from '../../../src/desk/instructor/line.ts';
import { type Link, linkHere } from '../../../src/desk/instructor/link.ts';
import type { Lives } from '../../../src/desk/instructor/lives.ts';
import { chosenOf, openSwitchboard } from '../../../src/desk/instructor/switchboard.ts';
import type { Request } from '../../../src/desk/protocol.ts';
import type { Route } from '../../../src/desk/routes.ts';
import { createSession } from '../../../src/desk/session.ts';
import { openStore } from '../../../src/desk/store.ts';

const CALL = 'sunny-line';
const shipped = shippedCalls().find(({ id }) => id === CALL);
if (!shipped) throw new Error('the call does not ship');
const prepared = prepareCall(shipped);

/** Everything that is posted is heard by all others, as a copy, a little later. */
class Air {
  private readonly ears: ((data: unknown) => void)[] = [];
  readonly said: unknown[] = [];

  channel(): { post: { postMessage(data: unknown): void }; hears(ear: (data: unknown) => void): void } {
    let own: ((data: unknown) => void) | undefined;
    return {
      post: {
        postMessage: (data) => {
          this.said.push(data);
          const copy = structuredClone(data);
          for (const ear of this.ears) if (ear !== own) queueMicrotask(() => ear(copy));
        },
      },
      hears: (ear) => {
        own = ear;
        this.ears.push(ear);
      },
    };
  }
}

/** Windows that end when the test says so. */
function lives() {
  const held: string[] = [];
  const waiting = new Map<string, Set<() => void>>();
  const all: Lives = {
    hold: async (name) => void held.push(name),
    whenOver(name, then) {
      const others = waiting.get(name) ?? new Set();
      waiting.set(name, others.add(then));
      return () => void others.delete(then);
    },
  };
  const end = (name: string) => {
    for (const then of waiting.get(name) ?? []) then();
  };
  return { all, held, end };
}

/** As much of a desk as a trainee's window has, with the real session, store and engine. */
async function trainee(): Promise<Desk> {
  const answerer = new Answerer();
  const engine = {
    async ask(request: Request) {
      const reply = await answerer.answer(request);
      if (reply.kind === 'error') throw new EngineError(reply.message);
      return structuredClone(reply);
    },
  } as Engine;
  const store = await openStore(() => {});
  const route = signal<Route>({ screen: 'start' });
  const fail = (told: { id: string }) => {
    throw new Error(told.id);
  };
  const session = createSession({ engine, store, wallClock: () => 7, fail });
  const go = (next: Route) => {
    route.value = next;
  };
  return { engine, store, route, session, go, wallClock: () => 7, trainers: signal(0) } as unknown as Desk;
}

/** A trainee's window and a trainer's, with the call open in the one and watched by the other. */
async function atWork() {
  const air = new Air();
  const life = lives();
  const desk = await trainee();
  desk.go({ screen: 'call', callId: CALL });
  await desk.session.take(CALL);
  const theirs = air.channel();
  theirs.hears(await answerOn(desk, theirs.post, life.all));
  const ours = air.channel();
  const board = await openSwitchboard(ours.post, life.all);
  ours.hears(board.hear);
  board.roll();
  await until(() => board.windows.value.size === 1);
  const [name = ''] = board.windows.value.keys();
  const link = board.linkTo(name);
  await until(() => link.told.value?.call != null);
  opened.push({ link, desk });
  return { air, life, desk, board, name, link, ours };
}

/** What a test has opened, to be closed after it. */
const opened: { readonly link: Link; readonly desk: Desk }[] = [];

async function until(so: () => boolean): Promise<void> {
  for (let i = 0; i < 400 && !so(); i++) await new Promise((later) => setTimeout(later, 10));
  if (!so()) throw new Error('it never came to that');
}

const teach = (link: Link, id: Action['id'], fill: Record<string, string> = {}): Promise<Answer> =>
  link.ask({ kind: 'teach', callId: CALL, action: { id, fill } });
const faults = (link: Link) => link.told.value?.call?.faults.map(({ key }) => key);
const done: Answer = { kind: 'done' };

beforeEach(() => {
  vi.stubGlobal('requestAnimationFrame', () => 0);
  vi.stubGlobal('document', { hidden: false, addEventListener: () => {}, removeEventListener: () => {} });
  vi.stubGlobal('addEventListener', () => {});
});
afterEach(async () => {
  for (const { link, desk } of opened.splice(0)) {
    link.close();
    await until(() => desk.trainers.value === 0);
  }
  vi.unstubAllGlobals();
});

describe('a trainer at a second window', () => {
  it('sees which call is open, and whatever is done in it', async () => {
    const { desk, board, name, link } = await atWork();
    expect(board.windows.value.get(name)?.call).toMatchObject({ callId: CALL, title: shipped.title });
    expect(desk.trainers.value).toBe(1);
    await desk.session.dispatch({ id: 'ask-danger' });
    await desk.session.tick('line-split', true);
    await until(() => link.told.value?.call?.deeds.length === 2);
    expect(link.told.value?.call?.ticked).toEqual([{ id: 'fault.line-split' }]);
    expect(faults(link)).toEqual(['line-split']);
    link.close();
    await until(() => desk.trainers.value === 0);
  });

  it('stops the clock: the trainee can do nothing, and no time goes by, until it goes on as it went', async () => {
    const { desk, link } = await atWork();
    const { session } = desk;
    session.setRate(60);
    expect(await teach(link, TEACH.freeze)).toEqual(done);
    expect([session.rate.value, session.view.value?.frozen]).toEqual([0, true]);
    session.setRate(60);
    expect(session.rate.value).toBe(0);
    const at = session.view.value?.now_ms;
    await session.runToNextChange();
    await session.dispatch({ id: 'ask-danger' });
    expect(session.news.value).toMatchObject({ refused: true, messages: [{ id: 'why.frozen' }] });
    expect(session.view.value?.now_ms).toBe(at);
    expect(session.view.value?.parts.flatMap(({ actions }) => actions).some(({ available }) => available)).toBe(false);
    expect(await link.ask({ kind: 'next-change', callId: CALL })).toMatchObject({ why: { id: 'why.frozen' } });
    expect(await teach(link, TEACH.go)).toEqual(done);
    expect([session.rate.value, session.view.value?.frozen]).toEqual([60, undefined]);
    await teach(link, TEACH.speed, { rate: '10' });
    expect(session.rate.value).toBe(10);
  });

  it('drops a fault in and takes it out, and the trainee is told nothing of it', async () => {
    const { desk, link } = await atWork();
    const { session } = desk;
    await session.dispatch({ id: 'ask-danger' });
    const before = session.news.value;
    expect(await teach(link, TEACH.faultIn, { fault: 'lamp-dead:lamp', severity: '1', ramp_h: '0' })).toEqual(done);
    await until(() => faults(link)?.length === 2);
    expect(session.news.value).toBe(before);
    expect(session.handled.value).toEqual({ id: 'ask-danger' });
    expect(await teach(link, TEACH.faultIn, { fault: 'lamp-dead:lamp' })).toMatchObject({
      kind: 'refused',
      why: { id: 'why.fault-there' },
    });
    expect(session.news.value).toBe(before);
    expect(await teach(link, TEACH.faultOut, { fault: 'lamp-dead:lamp', ramp_h: '0' })).toEqual(done);
    await until(() => faults(link)?.length === 1);
  });

  it('goes back to a moment: what was begun since is let go of, and the trainee is told to when', async () => {
    const { desk, link } = await atWork();
    const { session } = desk;
    await teach(link, TEACH.moment, { name: 'first' });
    const at = session.view.value?.now_ms;
    await session.dispatch({ id: 'ask-danger' });
    await session.dispatch({ id: 'decide-visit', fill: { urgency: 'now', load: [] } });
    expect(session.view.value?.scene.standsAt).not.toBe('phone');
    session.select('panel');
    expect(await teach(link, TEACH.back, { moment: '0' })).toEqual(done);
    expect(session.view.value).toMatchObject({ now_ms: at, backTo_ms: at, notebook: [] });
    expect([session.part.value, session.news.value, session.asking.value]).toEqual(['phone', null, null]);
    await session.dispatch({ id: 'ask-danger' });
    expect(session.view.value?.backTo_ms).toBeUndefined();
    expect(await teach(link, TEACH.back, { moment: '7' })).toMatchObject({ why: { id: 'why.no-such-moment' } });
  });

  it('looks at the works as they were, and leaves the call as it is', async () => {
    const { desk, link } = await atWork();
    await desk.session.dispatch({ id: 'ask-danger' });
    const { now_ms } = desk.session.view.value ?? { now_ms: 0 };
    const past = await link.ask({ kind: 'scene', callId: CALL, at_ms: now_ms - 600_000 });
    expect(past).toMatchObject({ kind: 'scene', scene: { kind: 'xray' } });
    expect(desk.session.view.value?.now_ms).toBe(now_ms);
    expect(await link.ask({ kind: 'droppable', callId: CALL })).toMatchObject({ kind: 'droppable' });
  });

  it('keeps a moment, from which another window begins', async () => {
    const { desk, link } = await atWork();
    await desk.session.dispatch({ id: 'ask-danger' });
    await teach(link, TEACH.moment, { name: 'asked' });
    await desk.session.dispatch({ id: 'ask-hum' });
    const answer = await link.ask({ kind: 'moment', callId: CALL, place: 1 });
    if (answer.kind !== 'moment') throw new Error(answer.kind);
    const other = await trainee();
    const here = linkHere(other);
    expect(await here.ask({ kind: 'take-up', from: answer.kept })).toEqual(done);
    here.close();
    expect(other.route.value).toMatchObject({ screen: 'call', callId: CALL });
    await other.session.take(CALL);
    expect(other.session.view.value?.notebook).toHaveLength(1);
  });

  it('does not put a moment of another engine in the place of what was left of the call', async () => {
    const { desk, link } = await atWork();
    await desk.session.dispatch({ id: 'ask-danger' });
    const left = await desk.store.progressOf(CALL);
    if (left === undefined) throw new Error('nothing was kept');
    const from = { ...left, saved: { ...left.saved, record: { engine: '1' } } };
    expect(await link.ask({ kind: 'take-up', from })).toMatchObject({ why: { id: 'trouble.progress-older' } });
    expect(desk.route.value).toEqual({ screen: 'start' });
    expect(await desk.store.progressOf(CALL)).toEqual(left);
  });

  it('begins a call in place of the one that is open', async () => {
    const { desk, link } = await atWork();
    await desk.session.dispatch({ id: 'ask-danger' });
    expect(await link.ask({ kind: 'begin', callId: CALL, rung: 'alone' })).toEqual(done);
    expect(desk.session.view.value?.notebook).toEqual([]);
    expect(await link.ask({ kind: 'begin', callId: 'storm-light', rung: 'coached' })).toEqual(done);
    expect(desk.route.value).toEqual({ screen: 'call', callId: 'storm-light', rung: 'coached' });
    expect(desk.session.view.value).toBeNull();
    expect((await desk.store.progress()).map(({ callId }) => callId)).toEqual([CALL]);
  });

  it('does nothing to a call that is not the one it saw', async () => {
    const { desk, link } = await atWork();
    const asked = await link.ask({
      kind: 'teach',
      callId: 'storm-light',
      action: { id: TEACH.freeze, fill: {} },
    });
    expect(asked).toEqual({ kind: 'refused', why: { id: 'instructor.otherCall' } });
    expect(desk.session.view.value?.frozen).toBeUndefined();
  });

  it('is in turn with the trainee, and all of it stands in what is kept, which replays to the same bits', async () => {
    const { desk, link } = await atWork();
    const { session } = desk;
    await Promise.all([
      session.dispatch({ id: 'ask-danger' }),
      teach(link, TEACH.moment, { name: 'one' }),
      teach(link, TEACH.faultIn, { fault: 'tank-leaks', severity: '0.5', ramp_h: '1' }),
      session.tick('line-split', true),
    ]);
    await until(() => link.told.value?.call?.moments.length === 1);
    await teach(link, TEACH.back, { moment: String(link.told.value?.call?.moments[0]?.place) });
    await session.dispatch({ id: 'ask-hum' });
    const kept = await desk.store.progressOf(CALL);
    const resumed = resumeCall(prepared, 'practice', kept?.saved.record);
    if (!('session' in resumed)) throw new Error(resumed.why.id);
    expect(resumed.session.log.map((one) => one.do).sort()).toEqual(
      ['ask-danger', 'ask-hum', 'tick-suspect', TEACH.moment, TEACH.back, TEACH.faultIn].sort(),
    );
    const { record } = await desk.engine.ask({ kind: 'record' });
    const again = replay(prepared, record as CallRecord);
    expect(again.firstDifference).toBeUndefined();
    expect(again.session.stateDigest()).toBe(resumed.session.stateDigest());
  });
});

describe('the line between the windows', () => {
  it('misses a window that is gone, whoever waits for it', async () => {
    const { life, board, name, link } = await atWork();
    life.end(name);
    expect([board.windows.value.size, link.gone.value]).toEqual([0, true]);
    expect(await teach(link, TEACH.freeze)).toEqual({ kind: 'refused', why: { id: 'instructor.gone' } });
  });

  it('tells a trainee’s window that its trainer is gone', async () => {
    const { life, desk } = await atWork();
    for (const name of life.held) life.end(name);
    expect(desk.trainers.value).toBe(0);
  });

  it('says that a call is no longer open, and that a window became a trainer’s own', async () => {
    const { desk, board, link } = await atWork();
    await desk.session.leave();
    await until(() => link.told.value?.call === null);
    expect([...board.windows.value.values()]).toEqual([{ call: null, shown: true }]);
    desk.go({ screen: 'instructor' });
    await until(() => board.windows.value.size === 0);
  });

  it('tells pages of two versions apart, on both sides, and lets neither act', async () => {
    const { air, board, desk, name } = await atWork();
    const older = air.channel();
    const heard: unknown[] = [];
    older.hears((data) => heard.push(data));
    older.post.postMessage({ version: LINE_VERSION - 1, from: 'old', kind: 'roll' });
    await until(() => heard.length > 0);
    expect(heard[0]).toMatchObject({ version: LINE_VERSION, kind: 'here' });
    const ask = { kind: 'teach', callId: CALL, action: { id: TEACH.freeze, fill: {} } };
    older.post.postMessage({ version: LINE_VERSION - 1, from: 'old', kind: 'ask', to: name, n: 1, ask });
    older.post.postMessage({
      version: LINE_VERSION - 1,
      from: 'old',
      kind: 'here',
      window: { call: null, shown: true },
    });
    await until(() => board.other.value);
    expect(board.windows.value.has('old')).toBe(false);
    expect(desk.session.view.value?.frozen).toBeUndefined();
  });

  it('believes nothing that is not as it should be: whatever value is another, the whole is not heard', async () => {
    const { air, board, desk, link, name } = await atWork();
    await desk.session.dispatch({ id: 'ask-danger' });
    await desk.session.tick('line-split', true);
    await teach(link, TEACH.moment, { name: 'one' });
    await until(() => link.told.value?.call?.moments.length === 1);
    const told = air.said.findLast((one) => (one as { kind?: string }).kind === 'told');
    const before = link.told.value;
    let tried = 0;
    for (const { wrong, way } of spoiled(told)) {
      board.hear(wrong);
      expect(link.told.value === before, way).toBe(true);
      tried += 1;
    }
    expect(tried).toBeGreaterThan(250);
    board.hear({ version: LINE_VERSION, from: name, kind: 'told', told: null });
    board.hear({ version: LINE_VERSION, from: name, kind: 'toString' });
    board.hear('told');
    board.hear(null);
    expect(link.told.value).toBe(before);
    board.hear(told);
    expect(link.told.value).not.toBe(before);
  });

  it('lets a trainee’s window do nothing but what a trainer may', async () => {
    const { air, desk, name } = await atWork();
    const stranger = air.channel();
    stranger.hears(() => {});
    const asks = [
      { kind: 'teach', callId: CALL, action: { id: 'ask-danger', fill: {} } },
      { kind: 'teach', callId: CALL, action: { id: TEACH.faultIn, fill: { fault: ['lamp-dead:lamp'] } } },
      { kind: 'take-up', from: { callId: CALL } },
      { kind: 'constructor' },
    ];
    for (const [n, ask] of asks.entries()) {
      stranger.post.postMessage({ version: LINE_VERSION, from: 'stranger', kind: 'ask', to: name, n, ask });
    }
    await new Promise((later) => setTimeout(later, 50));
    expect(desk.session.view.value?.notebook).toEqual([]);
    expect(air.said.some((one) => (one as { to?: string }).to === 'stranger')).toBe(false);
  });
});

/** What may be anything: the values of a message, who speaks, and what a unit's file says of a tank that no picture shows. */
const FREE = ['values', 'version', 'from', 'riserArea_m2'];

/** The same value with one of its parts replaced by what it should never be, for every part that is not free. */
function* spoiled(value: unknown, way = ''): Generator<{ readonly wrong: unknown; readonly way: string }> {
  if (typeof value !== 'object' || value === null) {
    yield { wrong: { not: 'this' }, way };
    return;
  }
  // Of long lists the ends are enough.
  const keys = Object.keys(value).filter((_, i, all) => i < 2 || i === all.length - 1 || !Array.isArray(value));
  for (const key of keys.filter((one) => !FREE.includes(one))) {
    for (const { wrong, way: deep } of spoiled((value as Record<string, unknown>)[key], `${way}/${key}`)) {
      const whole = Array.isArray(value)
        ? value.map((one, i) => (String(i) === key ? wrong : one))
        : { ...value, [key]: wrong };
      yield { wrong: whole, way: deep };
    }
  }
}

describe('the window to work with', () => {
  const one = (callId?: string): TraineeWindow => ({
    call:
      callId === undefined
        ? null
        : {
            callId,
            title: { en: '', es: '' },
            stage: 'ask',
            clock: { year: 1, month: 1, day: 1, weekday: 0, secondOfDay: 0 },
          },
    shown: true,
  });

  it('is the only one there is, as long as none was chosen', () => {
    expect(chosenOf(new Map([['a', one()]]), null)).toBe('a');
    expect(
      chosenOf(
        new Map([
          ['a', one()],
          ['b', one(CALL)],
        ]),
        null,
      ),
    ).toBeUndefined();
    expect(chosenOf(new Map(), null)).toBeUndefined();
  });

  it('stays the one that was chosen, and is found again by its call when it was loaded anew', () => {
    const two = new Map([
      ['a', one(CALL)],
      ['b', one('storm-light')],
    ]);
    expect(chosenOf(two, { name: 'b', callId: 'storm-light' })).toBe('b');
    expect(chosenOf(two, { name: 'gone', callId: CALL })).toBe('a');
    expect(chosenOf(two, { name: 'gone', callId: 'dead-lamp' })).toBeUndefined();
  });

  it('is never somebody else’s, because it happens to be the only one left', () => {
    expect(chosenOf(new Map([['b', one('storm-light')]]), { name: 'gone', callId: CALL })).toBeUndefined();
  });
});
