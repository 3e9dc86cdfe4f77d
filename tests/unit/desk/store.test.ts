import { describe, expect, it, vi } from 'vitest';
import { type Backing, inMemory } from '../../../src/desk/backing.ts';
import { HeldElsewhere, openStore, type StoreTrouble, storeOver } from '../../../src/desk/store.ts';
import {
  type Brought,
  type DrillCount,
  type Finished,
  firstSettings,
  type Progress,
  type QuizCard,
} from '../../../src/desk/stored.ts';
import { saved } from './saved.ts';

const progress: Progress = {
  version: 1,
  callId: 'sunny-line',
  savedAt: 7,
  stage: 'ask',
  clock: { year: 2031, month: 5, day: 14, weekday: 2, secondOfDay: 100 },
  saved,
};
const count: DrillCount = { version: 1, skill: 'jar', finishedAt: 9, asked: 8, right: 6, median_s: 11.5 };
const finished: Finished = { version: 1, callId: 'sunny-line', finishedAt: 9, score: 86, passed: true, saved };

/** Node has no IndexedDB, so this is the store of a browser that keeps nothing; the real one is tested in a browser. */
describe('the store without a database', () => {
  it('works in memory, and says so once', async () => {
    const trouble = vi.fn();
    const store = await openStore(trouble);
    await store.putSettings({ version: 1, language: 'es', units: 'si', sound: false, still: true });
    await store.putProgress(progress);
    expect(await store.progressOf('sunny-line')).toEqual(progress);
    const key = await store.addFinished(finished);
    await store.putLine({ version: 1, callId: 'sunny-line', toldMost: '', costMost: '', nextTime: 'Soap first' });
    await store.addDrill(count);
    expect(await store.settings()).toMatchObject({ language: 'es', units: 'si' });
    expect(await store.drills()).toEqual([count]);
    expect(await store.finishedBy(key)).toEqual({ ...finished, key });
    expect((await store.lines()).map((one) => one.nextTime)).toEqual(['Soap first']);
    expect(await store.progress()).toEqual([]);
    await store.putProgress(progress);
    await store.dropProgress('sunny-line');
    expect(await store.progress()).toEqual([]);
    expect(trouble.mock.calls).toEqual([['memory']]);
  });

  it('keeps what is known of each skill on each unit, and the mock exam that was sat last', async () => {
    const store = await openStore(() => {});
    const card = (skill: string, unit: string, reps: number): QuizCard => ({
      ...{ version: 1, skill, unit, due: 9, last: 8, stability: 2, difficulty: 5 },
      ...{ scheduled_d: 2, steps: 0, reps, lapses: 0, state: 2 },
    });
    for (const one of [card('jar', 'u1', 1), card('jar', 'u2', 1), card('jar', 'u1', 2)]) await store.putCard(one);
    expect((await store.cards()).map(({ unit, reps }) => [unit, reps])).toEqual([
      ['u1', 2],
      ['u2', 1],
    ]);
    expect(await store.takeSitting()).toBeUndefined();
    await store.putSitting({ form: 3 }, 5);
    expect(await store.takeSitting()).toEqual({ form: 3 });
    await store.setSittingAside();
    expect(await store.takeSitting()).toBeUndefined();
    expect((await store.everything()).unread).toMatchObject([
      { value: { shelf: 'exam', value: { kept: { form: 3 } } } },
    ]);
  });

  it('keeps calls that are being made, the last one kept first, and each in its own place', async () => {
    const store = await openStore(() => {});
    const first = await store.putDraft({ id: 'one' }, 1);
    const second = await store.putDraft({ id: 'two' }, 2);
    if (first === undefined || second === undefined) throw new Error('not kept');
    await store.putDraft({ id: 'one, changed' }, 3, first);
    expect((await store.drafts()).map(({ key, draft }) => [key, draft])).toEqual([
      [first, { id: 'one, changed' }],
      [second, { id: 'two' }],
    ]);
    await store.dropDraft(first);
    expect(await store.draftBy(first)).toBeUndefined();
    expect((await store.draftBy(second))?.savedAt).toBe(2);
  });

  it('keeps moments of calls to begin from, several of one call, until they are thrown away', async () => {
    const store = await openStore(() => {});
    const early = { version: 1, name: 'before the reset', keptAt: 1, from: progress } as const;
    await store.addMoment(early);
    await store.addMoment({ ...early, name: 'on site', keptAt: 2 });
    const [first, second] = await store.moments();
    expect([first?.name, second?.name]).toEqual(['before the reset', 'on site']);
    expect(first?.from).toEqual(progress);
    await store.dropMoment(first?.key ?? 0);
    expect((await store.moments()).map(({ name }) => name)).toEqual(['on site']);
  });

  it('keeps help that was taken, and a review beside its call; lines by family, older ones by call', async () => {
    const store = await openStore(() => {});
    const coached = { ...saved, mode: 'coached', assistance: { hints: 3, likely: true } } as const;
    const key = await store.addFinished({ ...finished, saved: coached });
    const led = { ...coached, assistance: { hints: 0, likely: false, led: 'led-to-cause' } } as const;
    const ledKey = await store.addFinished({ ...finished, saved: led });
    expect((await store.finishedBy(ledKey))?.saved.assistance).toEqual(led.assistance);
    await store.putReview(key, [1, 2]);
    await store.putReview(ledKey + 1, [3]);
    expect(await store.finishedBy(key)).toEqual({ ...finished, saved: coached, key, review: [1, 2] });
    expect(await store.finished()).toHaveLength(2);
    const line = { version: 1, callId: 'sunny-line', toldMost: '', costMost: '' } as const;
    await store.putLine({ ...line, nextTime: 'an old one' });
    await store.putLine({ ...line, nextTime: 'soap', family: 'air', savedAt: 1 });
    await store.putLine({ ...line, callId: 'storm-light', nextTime: 'soap first', family: 'air', savedAt: 2 });
    expect((await store.lines()).map((one) => one.nextTime)).toEqual(['an old one', 'soap first']);
  });

  it('keeps calls that were brought by their ids, and each saved call with the file it was taken from', async () => {
    const store = await openStore(() => {});
    const text = { en: 'x', es: 'y' };
    const card = { id: 'my-call', title: text, summary: text, kind: 'alarm', unit: 'u1', lot: text } as const;
    const brought: Brought = {
      version: 1,
      card: { ...card, minutes: 90, starts: { secondOfDay: 60_000, month: 7 } },
      text: '{}',
      from: 'link',
      broughtAt: 5,
    };
    await store.putBrought(brought);
    await store.putBrought({ ...brought, text: '{ }', set: text });
    expect(await store.brought()).toEqual([{ ...brought, text: '{ }', set: text }]);
    expect(await store.broughtBy('my-call')).toMatchObject({ from: 'link' });
    await store.putProgress({ ...progress, callId: 'my-call', saved: { ...saved, brought: '{ }' } });
    expect((await store.progressOf('my-call'))?.saved.brought).toBe('{ }');
    await store.dropBrought('my-call');
    expect(await store.brought()).toEqual([]);
  });

  it('sets aside what it cannot read, says so, and goes on', async () => {
    const trouble = vi.fn();
    const store = await openStore(trouble);
    // A value of a later version, as a newer Underlawn might have left it.
    await store.putSettings({ ...firstSettings(['es']), version: 9 as never });
    expect(await store.settings()).toBeUndefined();
    expect(await store.settings()).toBeUndefined();
    expect(trouble.mock.calls).toEqual([['memory'], ['unread']]);
  });
});

const claims = { claim: async () => true, letGo: () => {} };

/** A backing that refuses to write, or to read, while it is told to. */
function failing(backing: Backing) {
  const now: { write?: string | undefined; read?: string | undefined } = {};
  const over: Backing = {
    ...backing,
    async run(shelves, mode, work) {
      const name = mode === 'readwrite' ? now.write : now.read;
      if (name !== undefined) throw new DOMException('refused', name);
      return backing.run(shelves, mode, work);
    },
  };
  return { now, over };
}

function troubled() {
  const standing = new Set<StoreTrouble>();
  const tell = (what: StoreTrouble, still = true) => void (still ? standing.add(what) : standing.delete(what));
  return { standing, tell };
}

describe('the store on a full disk', () => {
  it('says so, goes on, and takes it back once there is room', async () => {
    const { now, over } = failing(inMemory());
    const { standing, tell } = troubled();
    const store = storeOver(over, claims, tell);
    await store.takeProgress('sunny-line');
    await store.putProgress(progress);
    now.write = 'QuotaExceededError';
    await store.putProgress({ ...progress, stage: 'site' });
    await store.addDrill(count);
    expect([...standing]).toEqual(['full']);
    expect(await store.progressOf('sunny-line')).toEqual(progress);
    now.write = undefined;
    await store.putProgress({ ...progress, stage: 'site' });
    expect([...standing]).toEqual([]);
    expect(await store.progressOf('sunny-line')).toMatchObject({ stage: 'site' });
  });

  it('does not lose a call that ends there', async () => {
    const { now, over } = failing(inMemory());
    const store = storeOver(over, claims, () => {});
    await store.putProgress(progress);
    now.write = 'QuotaExceededError';
    expect(await store.addFinished(finished)).toBeNaN();
    now.write = undefined;
    expect(await store.progress()).toEqual([progress]);
    expect(await store.finished()).toEqual([]);
  });

  it('lets a call be taken up there, and kept again later', async () => {
    const backing = inMemory();
    await storeOver(backing, claims, () => {}).putProgress(progress);
    const { now, over } = failing(backing);
    const store = storeOver(over, claims, () => {});
    now.write = 'QuotaExceededError';
    expect(await store.takeProgress('sunny-line')).toEqual(progress);
    await store.putProgress({ ...progress, stage: 'site' });
    now.write = undefined;
    await store.putProgress({ ...progress, stage: 'site' });
    expect(await store.progressOf('sunny-line')).toMatchObject({ stage: 'site' });
  });

  it('leaves what it cannot read where it is, rather than have it written over', async () => {
    const backing = inMemory([['progress', [{ key: 'sunny-line', value: 'nonsense' }]]]);
    const { now, over } = failing(backing);
    const store = storeOver(over, claims, () => {});
    now.write = 'QuotaExceededError';
    await expect(store.takeProgress('sunny-line')).rejects.toThrow();
    expect(await backing.run(['progress'], 'readonly', (at) => at.get('progress', 'sunny-line'))).toBe('nonsense');
  });
});

describe('the store of a browser that cannot fetch just now', () => {
  it('shows what there is without it, but begins no call anew', async () => {
    const { now, over } = failing(inMemory());
    const { standing, tell } = troubled();
    const store = storeOver(over, claims, tell);
    await store.putProgress(progress);
    now.read = 'UnknownError';
    expect(await store.progress()).toEqual([]);
    expect(await store.settings()).toBeUndefined();
    await expect(store.takeProgress('sunny-line')).rejects.toThrow();
    await expect(store.takeRound()).rejects.toThrow();
    expect([...standing]).toEqual(['missed']);
    now.read = undefined;
    expect(await store.progress()).toEqual([progress]);
  });
});

describe('two tabs on one store', () => {
  const open = (backing: Backing) => storeOver(backing, claims, () => {});

  it('the one that took a call over has all that was kept, and the other writes no more', async () => {
    const backing = inMemory();
    const [first, second] = [open(backing), open(backing)];
    await first.takeProgress('sunny-line');
    await first.putProgress(progress);
    expect(await second.takeProgress('sunny-line')).toEqual(progress);
    await expect(first.putProgress({ ...progress, stage: 'lost' })).rejects.toThrow(HeldElsewhere);
    await expect(first.addFinished(finished)).rejects.toThrow(HeldElsewhere);
    await second.putProgress({ ...progress, stage: 'site' });
    expect(await first.progressOf('sunny-line')).toMatchObject({ stage: 'site' });
    expect(await first.finished()).toEqual([]);
    // And back again.
    expect(await first.takeProgress('sunny-line')).toMatchObject({ stage: 'site' });
    await first.putProgress(progress);
    await expect(second.putProgress(progress)).rejects.toThrow(HeldElsewhere);
  });

  it('a call that both begin at once goes on in one of them', async () => {
    const backing = inMemory();
    const tabs = [open(backing), open(backing)];
    await Promise.all(tabs.map((tab) => tab.takeProgress('sunny-line')));
    const written = await Promise.allSettled(tabs.map((tab) => tab.putProgress(progress)));
    expect(written.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected']);
  });

  it('are not in each other’s way with two calls', async () => {
    const backing = inMemory();
    const [first, second] = [open(backing), open(backing)];
    await first.takeProgress('sunny-line');
    await second.takeProgress('storm-light');
    await first.putProgress(progress);
    await second.putProgress({ ...progress, callId: 'storm-light' });
    expect(await first.progress()).toHaveLength(2);
  });

  it('a call that was finished or begun anew elsewhere does not come back', async () => {
    const backing = inMemory();
    const [first, second] = [open(backing), open(backing)];
    await first.takeProgress('sunny-line');
    await first.putProgress(progress);
    await second.takeProgress('sunny-line');
    await second.addFinished(finished);
    await expect(first.putProgress(progress)).rejects.toThrow(HeldElsewhere);
    expect(await first.progress()).toEqual([]);
  });

  it('the round of one does not write over that of the other, with the call that ended on it', async () => {
    const backing = inMemory();
    const [first, second] = [open(backing), open(backing)];
    const door = { ...finished, callId: 'round-3-0' };
    await first.takeRound();
    await first.putRound('a year', 1);
    expect(await second.takeRound()).toBe('a year');
    await second.addFinished(door, 'a year with a visit');
    await expect(first.putRound('a year', 2)).rejects.toThrow(HeldElsewhere);
    await expect(first.addFinished(door, 'another year')).rejects.toThrow(HeldElsewhere);
    expect(await first.round()).toBe('a year with a visit');
    expect(await first.finished()).toHaveLength(1);
  });

  it('a copy that was taken in is not written over by a tab that has the call open', async () => {
    const backing = inMemory();
    const [first, second] = [open(backing), open(backing)];
    await first.takeProgress('sunny-line');
    await first.putProgress(progress);
    await second.merge(() => [{ shelf: 'progress', key: 'sunny-line', value: { ...progress, stage: 'site' } }]);
    await expect(first.putProgress(progress)).rejects.toThrow(HeldElsewhere);
  });
});

describe('a round that this engine cannot go on with', () => {
  it('is set aside, and goes into a copy', async () => {
    const store = storeOver(inMemory(), claims, () => {});
    await store.putRound('a year of long ago', 1);
    await store.setRoundAside();
    await store.putRound('a new year', 2);
    expect(await store.round()).toBe('a new year');
    const kept = { version: 1, savedAt: 1, kept: 'a year of long ago' };
    expect((await store.everything()).unread).toEqual([
      { key: expect.anything(), value: { shelf: 'round', key: 'round', value: kept } },
    ]);
  });
});

describe('a first visit', () => {
  it('speaks the first of the reader’s languages that there is', () => {
    expect(firstSettings(['fr-CA', 'es-MX', 'en']).language).toBe('es');
    expect(firstSettings(['en-GB', 'es']).language).toBe('en');
    expect(firstSettings(['fr']).language).toBe('en');
  });
});
