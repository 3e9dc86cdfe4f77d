/** A call launched by a course platform, from the engine to the platform, without a page: what is told, and what is not. */
import { signal } from '@preact/signals';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { SolutionStep } from '../../../src/calls/schema.ts';
import { Answerer } from '../../../src/desk/answer.ts';
import { inMemory } from '../../../src/desk/backing.ts';
import type { Desk } from '../../../src/desk/desk.ts';
import { type Engine, EngineError } from '../../../src/desk/engine.ts';
import { type Host, NotTaken } from '../../../src/desk/platform/host.ts';
import type { Note } from '../../../src/desk/platform/note.tsx';
import { takeUp } from '../../../src/desk/platform/take-up.ts';
import { watch } from '../../../src/desk/platform/watch.ts';
import type { SavedCall } from '../../../src/desk/protocol.ts';
import { createSession } from '../../../src/desk/session.ts';
import { storeOver } from '../../../src/desk/store.ts';
import type { Learnt } from '../../../src/records/learnt/learnt.ts';
import { unpackLeft } from '../../../src/records/learnt/left.ts';
import { course as en } from '../../../src/words/en/course.ts';
import { prepared } from '../records/taken.ts';

const CALL = 'storm-light';
const { solution } = prepared(CALL).call;
const WRONG: readonly SolutionStep[] = [{ do: 'ask-danger' }, { do: 'decide-close' }];

/** A desk as far as a platform's launch needs one. */
function deskOf(alone: 'graded' | 'practice' = 'graded') {
  const answerer = new Answerer();
  let line: Promise<unknown> = Promise.resolve();
  const engine = {
    // One after the other, as the worker answers.
    ask(request: Parameters<Engine['ask']>[0]) {
      const reply = line.then(() => answerer.answer(request));
      line = reply;
      return reply.then((one) => {
        if (one.kind === 'error') throw new EngineError(one.message);
        return one;
      });
    },
  } as Engine;
  const free = { claim: async () => true, letGo: () => {} };
  const store = storeOver(inMemory(), free, () => {});
  let now = 0;
  const wallClock = () => {
    now += 1000;
    return now;
  };
  const session = createSession({ engine, store, wallClock, fail: () => {}, alone });
  return { engine, store, session, wallClock } as unknown as Desk;
}

class Platform implements Host {
  readonly left = '';
  readonly settled: boolean = false;
  readonly wishes = {};
  readonly kept: string[] = [];
  readonly ended: Learnt[] = [];
  readonly leaves: boolean[] = [];
  refuses = false;

  async keep(text: string) {
    if (this.refuses) throw new NotTaken('keep');
    this.kept.push(text);
  }
  async end(learnt: Learnt) {
    if (this.refuses) throw new NotTaken('end');
    this.ended.push(learnt);
  }
  leave(_: number, halfWay: boolean) {
    this.leaves.push(halfWay);
  }
}

let pageGoes = () => {};
beforeEach(() => {
  vi.stubGlobal('requestAnimationFrame', () => 0);
  vi.stubGlobal('addEventListener', (_: string, on: () => void) => {
    pageGoes = on;
  });
  vi.spyOn(console, 'warn').mockImplementation(() => {});
});

function launched(mode: 'graded' | 'practice' = 'graded') {
  const desk = deskOf(mode);
  const host = new Platform();
  const note = signal<Note | null>(null);
  watch({ desk, host, launched: { as: 'scorm12', call: CALL, mode, uuid: 'x' }, note, started_ms: 0 });
  const does = async (steps: readonly SolutionStep[]) => {
    for (const { do: id, fill } of steps) await desk.session.dispatch({ id, ...(fill ? { fill } : {}) });
  };
  // Whatever is said has its words.
  note.subscribe((said) => said && expect(Object.keys(en)).toContain(said.message.id));
  return { desk, host, note, does };
}

const actionsIn = async (text = '') => (await unpackLeft(text))?.progress.actions.map((one) => one.do);
const done = (steps: readonly SolutionStep[]) => steps.map((step) => step.do);

describe('a launched call', () => {
  it('is kept by the platform after every action', async () => {
    const { desk, host, does } = launched();
    await desk.session.take(CALL);
    for (let n = 1; n <= 3; n++) {
      await does(solution.slice(n - 1, n));
      await expect.poll(() => actionsIn(host.kept.at(-1))).toEqual(done(solution.slice(0, n)));
    }
    await desk.session.leave();
  });

  it('is recorded once it has ended, and only its first end where it is graded', async () => {
    const { desk, host, note, does } = launched();
    await desk.session.take(CALL);
    await does(WRONG);
    await expect.poll(() => host.ended.length).toBe(1);
    expect(host.ended[0]).toMatchObject({ activity: CALL, mode: 'graded', completed: true });
    await expect.poll(() => note.value?.message.id).toBe('course.recorded.graded');
    await desk.session.take(CALL);
    await does(solution);
    expect(desk.session.view.value?.ended).toBe(true);
    pageGoes();
    expect([host.ended.length, host.leaves]).toEqual([1, [false]]);
  });

  it('of practice is recorded again where it went better', async () => {
    const { desk, host, does } = launched('practice');
    for (const steps of [WRONG, solution, WRONG]) {
      await desk.session.take(CALL);
      await does(steps);
      await expect.poll(() => desk.session.finishedKey.value).not.toBeNull();
    }
    await expect.poll(() => host.ended.length).toBe(2);
    expect(host.ended.map(({ passed }) => passed)).toEqual([undefined, undefined]);
    expect(host.ended[1]?.score).toBeGreaterThan(host.ended[0]?.score ?? 100);
  });

  it('counts only where it is taken as it was launched: with a coach it is not graded, another call is not this one', async () => {
    const { desk, host, does } = launched();
    await desk.session.take(CALL, 'coached');
    await does(solution.slice(0, 2));
    await desk.session.leave();
    await desk.session.take('two-days-dark');
    await does([{ do: 'ask-danger' }]);
    await desk.session.leave();
    pageGoes();
    expect([host.kept, host.ended, host.leaves]).toEqual([[], [], [true]]);
  });

  it('says so where a step is not taken, and no longer once the next one is', async () => {
    const { desk, host, note, does } = launched();
    await desk.session.take(CALL);
    host.refuses = true;
    await does(solution.slice(0, 1));
    await expect.poll(() => note.value?.message.id).toBe('course.not-kept');
    host.refuses = false;
    await does(solution.slice(1, 2));
    await expect.poll(() => note.value).toBeNull();
    expect(await actionsIn(host.kept.at(-1))).toEqual(done(solution.slice(0, 2)));
    await desk.session.leave();
  });

  it('says so where its end is not taken, and it can be tried again', async () => {
    const { desk, host, note, does } = launched();
    await desk.session.take(CALL);
    host.refuses = true;
    await does(solution);
    await expect.poll(() => note.value?.message.id).toBe('course.not-recorded');
    expect((await desk.store.finished()).map(({ passed }) => passed)).toEqual([true]);
    host.refuses = false;
    note.value?.again?.();
    await expect.poll(() => note.value?.message.id).toBe('course.recorded.graded');
    expect(host.ended.map(({ passed }) => passed)).toEqual([true]);
  });

  it('is left half way when the page goes, and nothing is told after that', async () => {
    const { desk, host, note, does } = launched();
    await desk.session.take(CALL);
    await does(solution.slice(0, 2));
    await expect.poll(() => host.kept.length).toBeGreaterThan(0);
    pageGoes();
    pageGoes();
    expect(host.leaves).toEqual([true]);
    expect(note.value?.message.id).toBe('course.over');
    const before = host.kept.length;
    await does(solution.slice(2, 4));
    await desk.session.leave();
    expect(host.kept.length).toBe(before);
  });
});

describe('what is taken up', () => {
  /** As a platform kept it on another machine, and as this browser has it. */
  async function left(steps: number): Promise<{ text: string; saved: SavedCall }> {
    const { desk, host, does } = launched();
    await desk.session.take(CALL);
    await does(solution.slice(0, steps));
    await expect.poll(() => actionsIn(host.kept.at(-1)).then((all) => all?.length)).toBe(steps);
    const kept = await desk.store.progressOf(CALL);
    if (!kept) throw new Error('nothing kept');
    return { text: host.kept.at(-1) ?? '', saved: kept.saved };
  }
  const clock = { year: 2031, month: 5, day: 14, weekday: 2, secondOfDay: 0 };
  const here = (saved: SavedCall) => ({ version: 1, callId: CALL, savedAt: 1, stage: 'ask', clock, saved }) as const;
  async function asideOf(desk: Desk): Promise<readonly unknown[]> {
    return (await desk.store.everything()).unread.map(({ value }) => value);
  }
  const steps = async (desk: Desk) => {
    const kept = await desk.store.progressOf(CALL);
    return (kept?.saved.record as { actions: readonly unknown[] } | undefined)?.actions.length;
  };

  it('is what the platform kept, on a machine that has nothing', async () => {
    const desk = deskOf();
    expect(await takeUp(desk, CALL, (await left(3)).text, undefined)).toBeUndefined();
    expect(await steps(desk)).toBe(3);
    await desk.session.take(CALL);
    expect(desk.session.view.value?.mode).toBe('graded');
    await desk.session.leave();
  });

  it('is what is here where that goes on from it', async () => {
    const desk = deskOf();
    const [before, after] = [await left(2), await left(4)];
    await desk.store.putProgress(here(after.saved));
    expect(await takeUp(desk, CALL, before.text, undefined)).toBeUndefined();
    expect([await steps(desk), await asideOf(desk)]).toEqual([4, []]);
  });

  it('is never somebody else’s: what is here and is not the platform’s is set aside, not thrown away', async () => {
    const desk = deskOf();
    const other = (await left(2)).saved;
    await desk.store.putProgress(here({ ...other, mode: 'practice' }));
    expect(await takeUp(desk, CALL, (await left(3)).text, undefined)).toBeUndefined();
    expect(await steps(desk)).toBe(3);
    expect(await asideOf(desk)).toMatchObject([
      { shelf: 'progress', key: CALL, value: { saved: { mode: 'practice' } } },
    ]);
  });

  it('is nothing where the platform begins, whatever lies here', async () => {
    const desk = deskOf();
    await desk.store.putProgress(here((await left(2)).saved));
    expect(await takeUp(desk, CALL, '', undefined)).toBeUndefined();
    expect(await steps(desk)).toBeUndefined();
    expect((await asideOf(desk)).length).toBe(1);
  });

  it('begins anew, and says why, where the platform’s cannot be read or is of another version', async () => {
    const desk = deskOf();
    expect((await takeUp(desk, CALL, 'nonsense', undefined))?.id).toBe('course.unread');
    const { text } = await left(2);
    expect((await takeUp(desk, 'sunny-line', text, undefined))?.id).toBe('course.unread');
    expect(await steps(desk)).toBeUndefined();
  });
});
