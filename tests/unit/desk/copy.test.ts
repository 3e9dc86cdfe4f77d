import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Hands, inMemory, KEPT, type Kept } from '../../../src/desk/backing.ts';
import { type CopyFile, makeCopy, readCopy } from '../../../src/desk/copy/file.ts';
import { mergeCopy } from '../../../src/desk/copy/merge.ts';
import { RoundDesk } from '../../../src/desk/round.ts';
import type { Contents } from '../../../src/desk/store.ts';
import { storeOver } from '../../../src/desk/store.ts';
import { speakAll } from '../spoken.ts';
import { saved } from './saved.ts';

const when = fc.integer({ min: 0, max: 3 });
const callId = fc.constantFrom('sunny-line', 'storm-light');
const clock = { year: 2031, month: 5, day: 14, weekday: 2, secondOfDay: 100 };

const left = { version: 1, callId: 'sunny-line', savedAt: 1, stage: 'ask', clock, saved };
const title = { en: 'x', es: 'y' };
const card = {
  ...{ id: 'my-call', title, summary: title, kind: 'alarm', unit: 'u1', lot: title, minutes: 9 },
  starts: { secondOfDay: 1, month: 1 },
};

const forgetting = { stability: 2, difficulty: 5, scheduled_d: 2, steps: 0, lapses: 0, state: 2 };
const quizCard = { version: 1, unit: 'u1', due: 1, ...forgetting };

/** Anything a browser could hold, of so few values that a copy often meets the same or another in its place. */
const anyContents: fc.Arbitrary<Contents> = fc
  .record({
    settings: fc.option(fc.record({ language: fc.constantFrom('en', 'es'), still: fc.boolean() })),
    progress: fc.uniqueArray(fc.record({ callId, savedAt: when, stage: fc.constantFrom('ask', 'site') }), {
      selector: (one) => one.callId,
    }),
    finished: fc.array(fc.record({ callId, finishedAt: when, score: when, review: fc.option(when) }), { maxLength: 4 }),
    lines: fc.uniqueArray(
      fc.record({
        callId,
        family: fc.option(fc.constant('air')),
        savedAt: when,
        nextTime: fc.string({ maxLength: 2 }),
      }),
      {
        selector: (one) => one.family ?? one.callId,
      },
    ),
    drills: fc.array(fc.record({ finishedAt: when, right: when }), { maxLength: 4 }),
    round: fc.option(fc.record({ savedAt: when, kept: when })),
    brought: fc.option(fc.record({ text: fc.constantFrom('{}', '{ }'), broughtAt: when })),
    drafts: fc.array(fc.record({ savedAt: when, draft: fc.constantFrom('{}', 'x') }), { maxLength: 3 }),
    moments: fc.array(fc.record({ name: fc.constantFrom('a', 'b'), keptAt: when }), { maxLength: 3 }),
    cards: fc.uniqueArray(fc.record({ skill: fc.constantFrom('jar', 'meter'), last: when, reps: when }), {
      selector: (one) => one.skill,
    }),
    exam: fc.option(fc.record({ savedAt: when, kept: when })),
    unread: fc.array(fc.record({ value: when }), { maxLength: 2 }),
  })
  .map(({ settings, progress, finished, lines, drills, round, brought, drafts, moments, cards, exam, unread }) => ({
    settings:
      settings === null ? [] : [{ key: 'settings', value: { version: 1, units: 'us', sound: true, ...settings } }],
    progress: progress.map((one) => ({ key: one.callId, value: { version: 1, clock, saved, ...one } })),
    finished: unique(finished).map(({ review, ...one }, key) => ({
      key,
      value: { version: 1, passed: true, saved, ...one, ...(review === null ? {} : { review }) },
    })),
    lines: lines.map(({ family, ...one }) => ({
      key: family ?? one.callId,
      value: { version: 1, toldMost: '', costMost: '', ...one, ...(family === null ? {} : { family }) },
    })),
    drills: unique(drills).map((one, key) => ({
      key,
      value: { version: 1, skill: 'jar', asked: 3, median_s: 1, ...one },
    })),
    round: round === null ? [] : [{ key: 'round', value: { version: 1, ...round } }],
    brought: brought === null ? [] : [{ key: 'my-call', value: { version: 1, card, from: 'link', ...brought } }],
    drafts: unique(drafts).map((one, key) => ({ key, value: { version: 1, ...one } })),
    moments: unique(moments).map((one, key) => ({ key, value: { version: 1, from: left, ...one } })),
    cards: cards.map((one) => ({ key: `${one.skill}/u1`, value: { ...quizCard, ...one } })),
    exam: exam === null ? [] : [{ key: 'quiz/exam', value: { version: 1, ...exam } }],
    unread: unique(unread).map((one, key) => ({ key, value: { shelf: 'lines', key: 'x', ...one } })),
  }));

/** No browser writes down the same act twice. */
function unique<T extends object>(all: readonly T[]): T[] {
  return [...new Map(all.map(({ ...one }) => [JSON.stringify({ ...one, review: null }), one])).values()];
}

/** A copy as it comes out of its file again. */
function copyOf(all: Contents): CopyFile {
  const read = readCopy(JSON.stringify(makeCopy(all, 5)), 'a.json');
  if ('wrong' in read) throw new Error(JSON.stringify(read.wrong));
  return read.copy;
}

async function everything(at: Hands): Promise<Contents> {
  const all = await Promise.all(KEPT.map(async (shelf) => [shelf, await at.all(shelf)] as const));
  return Object.fromEntries(all) as unknown as Contents;
}

/** A browser with these contents takes a copy in. */
async function takenIn(there: Contents, copy: CopyFile): Promise<Contents> {
  const backing = inMemory(KEPT.map((shelf) => [shelf, there[shelf]]));
  const claims = { claim: async () => true, letGo: () => {} };
  await storeOver(backing, claims, () => {}).merge((all) => mergeCopy(all, copy).changes);
  return backing.run(KEPT, 'readonly', everything);
}

const values = (all: Contents, shelf: Kept) => all[shelf].map(({ value }) => value);
const setAside = (all: Contents) => values(all, 'unread').map((one) => (one as { value: unknown }).value);
const withoutReview = (one: unknown) => ({ ...(one as object), review: undefined });

describe('a copy of all that a browser keeps', () => {
  it('makes an empty browser the same as the one it was taken from', async () => {
    const empty = Object.fromEntries(KEPT.map((shelf) => [shelf, []])) as unknown as Contents;
    await fc.assert(
      fc.asyncProperty(anyContents, async (all) => {
        const after = await takenIn(empty, copyOf(all));
        for (const shelf of KEPT) expect(values(after, shelf)).toEqual(values(all, shelf));
      }),
    );
  });

  it('takes nothing away: all that was here is here afterwards, or set aside', async () => {
    await fc.assert(
      fc.asyncProperty(anyContents, anyContents, async (here, other) => {
        const after = await takenIn(here, copyOf(other));
        for (const shelf of KEPT) {
          const there = [...values(after, shelf), ...setAside(after)].map(withoutReview);
          for (const one of values(here, shelf)) expect(there).toContainEqual(withoutReview(one));
        }
      }),
    );
  });

  it('brings all of it: records and drills add up, and what is missing of the rest was the earlier', async () => {
    await fc.assert(
      fc.asyncProperty(anyContents, anyContents, async (here, other) => {
        const copy = copyOf(other);
        const after = await takenIn(here, copy);
        for (const shelf of ['finished', 'drills', 'unread'] as const) {
          const there = values(after, shelf).map(withoutReview);
          for (const one of copy[shelf]) expect(there).toContainEqual(withoutReview(one));
        }
        const told = mergeCopy(here, copy).later.filter(({ from }) => from === 'here').length;
        const kept = ['progress', 'lines', 'round', 'brought', 'cards', 'exam'] as const;
        const missing = kept.flatMap((shelf) =>
          copy[shelf].filter((one) => !values(after, shelf).some((there) => same(there, one) || sameFile(there, one))),
        );
        expect(missing).toHaveLength(told);
      }),
    );
  });

  it('brings nothing a second time', async () => {
    await fc.assert(
      fc.asyncProperty(anyContents, anyContents, async (here, other) => {
        const copy = copyOf(other);
        const once = await takenIn(here, copy);
        expect(mergeCopy(once, copy)).toMatchObject({ changes: [], came: new Map() });
      }),
    );
  });

  it('keeps the later of two calls left half way, and says which', async () => {
    const left = (savedAt: number, stage: string) => ({
      version: 1,
      callId: 'sunny-line',
      savedAt,
      stage,
      clock,
      saved,
    });
    const holding = (one: unknown): Contents => ({
      ...(Object.fromEntries(KEPT.map((shelf) => [shelf, []])) as unknown as Contents),
      progress: [{ key: 'sunny-line', value: one }],
    });
    const [early, late] = [holding(left(1, 'ask')), holding(left(2, 'site'))];
    const what = { id: 'copy.what.progress', values: { title: saved.title } };
    expect(mergeCopy(early, copyOf(late)).later).toEqual([{ what, from: 'copy' }]);
    expect(mergeCopy(late, copyOf(early)).later).toEqual([{ what, from: 'here' }]);
    expect(values(await takenIn(early, copyOf(late)), 'progress')).toEqual([left(2, 'site')]);
    expect(values(await takenIn(late, copyOf(early)), 'progress')).toEqual([left(2, 'site')]);
    expect(setAside(await takenIn(early, copyOf(late)))).toEqual([left(1, 'ask')]);
  });

  it('knows a call from elsewhere by its file, whenever and however it came', () => {
    const none = Object.fromEntries(KEPT.map((shelf) => [shelf, []])) as unknown as Contents;
    const came = (text: string, from: string, broughtAt: number): Contents => ({
      ...none,
      brought: [{ key: 'my-call', value: { version: 1, card, text, from, broughtAt } }],
    });
    expect(mergeCopy(came('{}', 'link', 1), copyOf(came('{}', 'file', 2)))).toMatchObject({ changes: [], later: [] });
    const what = { id: 'copy.what.brought', values: { title } };
    expect(mergeCopy(came('{}', 'link', 1), copyOf(came('{ }', 'link', 2))).later).toEqual([{ what, from: 'copy' }]);
  });

  it('takes along what cannot be read, as something set aside', () => {
    const all = Object.fromEntries(KEPT.map((shelf) => [shelf, []])) as unknown as Contents;
    const copy = copyOf({ ...all, progress: [{ key: 'sunny-line', value: 'nonsense' }] });
    expect(copy.progress).toEqual([]);
    expect(copy.unread).toEqual([{ shelf: 'progress', key: 'sunny-line', value: 'nonsense' }]);
  });
});

describe('a file that is brought back', () => {
  const good = {
    kind: 'underlawn-copy',
    version: 4,
    madeAt: 1,
    ...Object.fromEntries(KEPT.map((shelf) => [shelf, []])),
  };
  const at = (path: string, wants: string) => ({
    id: 'copy.wrong.value',
    values: { file: 'mine.json', path, wants: { id: `copy.wants.${wants}` } },
  });

  it.each([
    ['no JSON', 'nonsense', { id: 'copy.wrong.kind', values: { file: 'mine.json' } }],
    ['a bare value', 'null', { id: 'copy.wrong.kind', values: { file: 'mine.json' } }],
    ['a record', { kind: 'underlawn-record', version: 1 }, { id: 'copy.wrong.kind', values: { file: 'mine.json' } }],
    ['of a newer page', { ...good, version: 5 }, { id: 'copy.wrong.newer', values: { file: 'mine.json' } }],
    ['of no version', { ...good, version: 'one' }, at('version', 'other')],
    ['without a list', { ...good, lines: undefined }, at('lines', 'list')],
    [
      'with a text for a number',
      { ...good, progress: [left, { ...left, savedAt: '1' }] },
      at('progress.1.savedAt', 'number'),
    ],
    [
      'with a fault deep inside',
      { ...good, progress: [{ ...left, saved: { ...saved, title: { en: 'x' } } }] },
      at('progress.0.saved.title.es', 'text'),
    ],
    [
      'with another mode',
      { ...good, progress: [{ ...left, saved: { ...saved, mode: 'easy' } }] },
      at('progress.0.saved.mode', 'other'),
    ],
    [
      'without the record',
      { ...good, progress: [{ ...left, saved: { ...saved, record: undefined } }] },
      at('progress.0.saved.record', 'other'),
    ],
    [
      'with half an assistance',
      { ...good, progress: [{ ...left, saved: { ...saved, assistance: { hints: 1 } } }] },
      at('progress.0.saved.assistance.likely', 'flag'),
    ],
    ['with a bare entry', { ...good, drills: [7] }, at('drills.0', 'fields')],
  ])('%s is refused, and says which file, where, and what should be there', (_what, file, told) => {
    const read = readCopy(typeof file === 'string' ? file : JSON.stringify(file), 'mine.json');
    expect(read).toEqual({ wrong: told });
    speakAll(told);
  });

  it('is taken as it is where all is well', () => {
    expect(readCopy(JSON.stringify({ ...good, progress: [left] }), 'mine.json')).toEqual({
      copy: { ...good, progress: [left] },
    });
  });

  it('is taken from pages that knew of no calls being made, of no moments to begin from, of no quiz', () => {
    const { cards: _cards, exam: _exam, ...third } = { ...good, cards: [], exam: [], version: 3 };
    expect(readCopy(JSON.stringify(third), 'mine.json')).toEqual({ copy: good });
    const { moments: _moments, ...second } = { ...third, moments: [], version: 2 };
    expect(readCopy(JSON.stringify(second), 'mine.json')).toEqual({ copy: good });
    const { drafts: _drafts, ...first } = { ...second, drafts: [], version: 1 };
    expect(readCopy(JSON.stringify(first), 'mine.json')).toEqual({ copy: good });
  });
});

function same(a: unknown, b: unknown): boolean {
  try {
    expect(a).toEqual(b);
    return true;
  } catch {
    return false;
  }
}

it('holds a round that lived on so that it goes on from a file as it was', async () => {
  const round = await RoundDesk.open(undefined);
  if (!(round instanceof RoundDesk)) throw new Error(round.id);
  round.live();
  const { kept } = round.reply();
  const all = Object.fromEntries(KEPT.map((shelf) => [shelf, []])) as unknown as Contents;
  const copy = copyOf({ ...all, round: [{ key: 'round', value: { version: 1, savedAt: 1, kept } }] });
  const again = await RoundDesk.open(copy.round[0]?.kept);
  if (!(again instanceof RoundDesk)) throw new Error(again.id);
  expect(again.reply()).toEqual({ ...round.reply(), kept: JSON.parse(JSON.stringify(kept)) });
  expect(again.reply().anew).toBe(false);
});

function sameFile(a: unknown, b: unknown): boolean {
  const [one, other] = [a, b].map((brought) => (brought as { text?: unknown }).text);
  return one !== undefined && one === other;
}
