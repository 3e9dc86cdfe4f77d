import { describe, expect, it, vi } from 'vitest';
import { openStore } from '../../../src/desk/store.ts';
import {
  type Brought,
  type DrillCount,
  type Finished,
  firstSettings,
  type Progress,
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
    const key = await store.addFinished(finished);
    await store.putLine({ version: 1, callId: 'sunny-line', toldMost: '', costMost: '', nextTime: 'Soap first' });
    await store.addDrill(count);
    expect(await store.settings()).toMatchObject({ language: 'es', units: 'si' });
    expect(await store.drills()).toEqual([count]);
    expect(await store.progressOf('sunny-line')).toEqual(progress);
    expect(await store.finishedBy(key)).toEqual({ ...finished, key });
    expect((await store.lines()).map((one) => one.nextTime)).toEqual(['Soap first']);
    await store.dropProgress('sunny-line');
    expect(await store.progress()).toEqual([]);
    expect(trouble.mock.calls).toEqual([['memory']]);
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

describe('a first visit', () => {
  it('speaks the first of the reader’s languages that there is', () => {
    expect(firstSettings(['fr-CA', 'es-MX', 'en']).language).toBe('es');
    expect(firstSettings(['en-GB', 'es']).language).toBe('en');
    expect(firstSettings(['fr']).language).toBe('en');
  });
});
