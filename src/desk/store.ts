import { type Backing, type Entry, type Hands, KEPT, type Kept, type Key, type Shelf } from './backing.ts';
import { type Claims, openClaims } from './claims.ts';
import { inDatabase, type WithoutStore } from './database.ts';
import { EngineError } from './engine.ts';
import type { Shape } from './shape.ts';
import {
  Brought,
  DraftEntry,
  DrillCount,
  Finished,
  Line,
  Moment,
  Progress,
  QuizCard,
  Round,
  Settings,
  Sitting,
} from './stored.ts';

/** What went wrong with the store, for one visible line each. */
export type StoreTrouble = WithoutStore | 'unread' | 'missed' | 'full' | 'failed';

export interface FinishedEntry extends Finished {
  readonly key: number;
}

export interface MomentEntry extends Moment {
  readonly key: number;
}

/** All that is kept, as it lies there. */
export type Contents = Readonly<Record<Kept, readonly Entry[]>>;
export interface Change {
  readonly shelf: Kept;
  readonly key?: Key;
  readonly value: unknown;
}

/** Where the one exam lies; no call has such an id. */
export const EXAM = 'quiz/exam';

export function cardKey({ skill, unit }: Pick<QuizCard, 'skill' | 'unit'>): string {
  return `${skill}/${unit}`;
}

/** Another tab has taken over what this one was writing to: it must not write any more. */
export class HeldElsewhere extends Error {}

/** Everything the browser keeps between visits. What is put is kept once the promise resolves, or trouble was told. */
export interface Store extends Claims {
  /** None on a first visit. */
  settings(): Promise<Settings | undefined>;
  putSettings(settings: Settings): Promise<void>;
  progress(): Promise<Progress[]>;
  /** What was left of a call, to go on with: from now on this tab writes to it, and none that had it before. */
  takeProgress(callId: string): Promise<Progress | undefined>;
  progressOf(callId: string): Promise<Progress | undefined>;
  /** Throws `HeldElsewhere` where another tab has taken the call since. */
  putProgress(progress: Progress): Promise<void>;
  dropProgress(callId: string): Promise<void>;
  finished(): Promise<FinishedEntry[]>;
  finishedBy(key: number): Promise<FinishedEntry | undefined>;
  /** Puts a call away that is over, in one go: its record and the round it was of go in, what was left of it goes out. */
  addFinished(finished: Finished, round?: unknown): Promise<number>;
  /** Keeps what was worked out of a finished call beside it. */
  putReview(key: number, review: unknown): Promise<void>;
  lines(): Promise<Line[]>;
  putLine(line: Line): Promise<void>;
  /** Oldest first. */
  drills(): Promise<DrillCount[]>;
  addDrill(count: DrillCount): Promise<void>;
  /** The round between two doors, as the engine's worker gave it out and will check it. */
  round(): Promise<unknown>;
  /** The round to go on with, as `takeProgress` a call. */
  takeRound(): Promise<unknown>;
  /** Throws `HeldElsewhere` as `putProgress`. */
  putRound(kept: unknown, savedAt: number): Promise<void>;
  dropRound(): Promise<void>;
  /** Keeps a round aside that this engine cannot go on with. */
  setRoundAside(): Promise<void>;
  /** Calls that came by link or file, by their ids. */
  brought(): Promise<Brought[]>;
  broughtBy(callId: string): Promise<Brought | undefined>;
  putBrought(brought: Brought): Promise<void>;
  dropBrought(callId: string): Promise<void>;
  /** Calls that are being made, the last one kept first. */
  drafts(): Promise<(DraftEntry & { readonly key: number })[]>;
  draftBy(key: number): Promise<DraftEntry | undefined>;
  /** Keeps a draft, a new one without a key; its key. */
  putDraft(draft: unknown, savedAt: number, key?: number): Promise<number | undefined>;
  dropDraft(key: number): Promise<void>;
  /** Moments of calls that a trainer kept to begin from, oldest first. */
  moments(): Promise<MomentEntry[]>;
  addMoment(moment: Moment): Promise<void>;
  dropMoment(key: number): Promise<void>;
  /** What is known of the quiz's skills, in no order. */
  cards(): Promise<QuizCard[]>;
  putCard(card: QuizCard): Promise<void>;
  /** The mock exam that was sat last, to say how it stands. */
  sitting(): Promise<unknown>;
  /** The mock exam to go on with or to look at again, as `takeProgress` a call; whoever takes it checks it. */
  takeSitting(): Promise<unknown>;
  /** Throws `HeldElsewhere` as `putProgress`. */
  putSitting(kept: unknown, savedAt: number): Promise<void>;
  /** Keeps an exam aside that this page cannot read. */
  setSittingAside(): Promise<void>;
  everything(): Promise<Contents>;
  /** Makes the changes that are decided upon what is there, all or none. Throws where it cannot. */
  merge(decide: (there: Contents) => readonly Change[]): Promise<void>;
}

/** Opens the store; `trouble` is told, once for each kind until it is `mended`, what does not work and why it does not matter. */
export async function openStore(
  trouble: (what: StoreTrouble) => void,
  mended: (what: StoreTrouble) => void = () => {},
): Promise<Store> {
  const told = new Set<StoreTrouble>();
  const tell = (what: StoreTrouble, still = true) => {
    if (told.has(what) === still) return;
    if (still) told.add(what);
    else told.delete(what);
    (still ? trouble : mended)(what);
  };
  return storeOver(inDatabase(tell), openClaims(), tell);
}

export function storeOver(
  backing: Backing,
  { claim, letGo }: Claims,
  tell: (what: StoreTrouble, still?: boolean) => void,
): Store {
  const tab = Math.random().toString(36);
  /** What this tab has begun to write to, and nobody else may have since. */
  const taken = new Set<Key>();

  async function check<T>(shelf: Kept, shape: Shape<T>, key: Key, value: unknown): Promise<T | undefined> {
    if (value === undefined || shape(value)) return value;
    tell('unread');
    await setAside(shelf, key);
    return undefined;
  }
  /** Throws where it cannot: nothing is to be put in its place then. */
  async function setAside(shelf: Kept, key: Key): Promise<void> {
    const done = await write([shelf, 'unread'], async (at) => {
      const value = await at.get(shelf, key);
      if (value !== undefined) await at.put('unread', { shelf, key, value });
      await at.drop(shelf, key);
      return true;
    });
    if (done === undefined) throw new EngineError({ id: 'trouble.store.failed' });
  }
  async function list<T>(shelf: Kept, shape: Shape<T>): Promise<[Key, T][]> {
    const good: [Key, T][] = [];
    for (const { key, value } of await quietly(
      backing.run([shelf], 'readonly', (at) => at.all(shelf)),
      [],
    )) {
      const checked = await quietly(check(shelf, shape, key, value), undefined);
      if (checked !== undefined) good.push([key, checked]);
    }
    return good;
  }
  const one = async <T>(shelf: Kept, shape: Shape<T>, key: Key) =>
    check(shelf, shape, key, await backing.run([shelf], 'readonly', (at) => at.get(shelf, key)));
  /** Goes on without what could not be fetched just now: it is left as it is. */
  async function quietly<T>(reading: Promise<T>, none: T): Promise<T> {
    try {
      return await reading;
    } catch {
      tell('missed');
      return none;
    }
  }
  async function write<T>(shelves: readonly Shelf[], work: (at: Hands) => Promise<T>): Promise<T | undefined> {
    try {
      const done = await backing.run(shelves, 'readwrite', work);
      tell('full', false);
      tell('failed', false);
      return done;
    } catch (error) {
      if (error instanceof HeldElsewhere) throw error;
      tell((error as Error).name === 'QuotaExceededError' ? 'full' : 'failed');
      return undefined;
    }
  }
  const put = (shelf: Kept, value: unknown, key?: Key) => write([shelf], (at) => at.put(shelf, value, key));
  const drop = async (shelf: Kept, key: Key) => void (await write([shelf], (at) => at.drop(shelf, key)));

  /** Writes as the holder of a call or of the round; the mark stands until another tab takes it. */
  async function writeHeld<T>(
    key: Key,
    shelves: readonly Shelf[],
    work: (at: Hands) => Promise<T>,
  ): Promise<T | undefined> {
    const done = await write([...shelves, 'holders'], async (at) => {
      await hold(at, key);
      return [await work(at)] as const;
    });
    // Where nothing could be written, on a full disk, the first that can be written marks it.
    if (done !== undefined) taken.add(key);
    return done?.[0];
  }
  async function hold(at: Hands, key: Key): Promise<void> {
    const holder = await at.get('holders', key);
    if (holder === tab) return;
    if (holder !== undefined && taken.has(key)) throw new HeldElsewhere();
    await at.put('holders', tab, key);
  }
  async function take<T>(shelf: Kept, shape: Shape<T>, key: Key): Promise<T | undefined> {
    taken.delete(key);
    await writeHeld(key, [], async () => {});
    try {
      return await one(shelf, shape, key);
    } catch {
      // Not to be taken for nothing there: what is there would then be written over.
      throw new EngineError({ id: 'trouble.store.missed' });
    }
  }
  const roundOf = (kept: unknown, savedAt: number): Round => ({ version: 1, savedAt, kept });

  return {
    claim: async (name, over, lost) => !(await backing.shared()) || claim(name, over, lost),
    letGo,
    settings: () => quietly(one('settings', Settings, 'settings'), undefined),
    putSettings: async (settings) => void (await put('settings', settings, 'settings')),
    progress: async () => (await list('progress', Progress)).map(([, value]) => value),
    takeProgress: (callId) => take('progress', Progress, callId),
    progressOf: (callId) => quietly(one('progress', Progress, callId), undefined),
    putProgress: (progress) =>
      writeHeld(progress.callId, ['progress'], async (at) => {
        await at.put('progress', progress, progress.callId);
      }),
    dropProgress: (callId) => drop('progress', callId),
    finished: async () => (await list('finished', Finished)).map(([key, value]) => ({ ...value, key: Number(key) })),
    async finishedBy(key) {
      const found = await quietly(one('finished', Finished, key), undefined);
      return found === undefined ? undefined : { ...found, key };
    },
    async addFinished(finished, round) {
      const { callId } = finished;
      const key = await writeHeld(callId, ['progress', 'finished', 'round'], async (at) => {
        if (round !== undefined) {
          await hold(at, 'round');
          await at.put('round', roundOf(round, finished.finishedAt), 'round');
        }
        await at.drop('progress', callId);
        return at.put('finished', finished);
      });
      return Number(key);
    },
    putReview: (key, review) =>
      write(['finished'], async (at) => {
        const found = await at.get('finished', key);
        if (Finished(found)) await at.put('finished', { ...found, review }, key);
      }),
    lines: async () => (await list('lines', Line)).map(([, value]) => value),
    putLine: async (line) => void (await put('lines', line, line.family ?? line.callId)),
    drills: async () => (await list('drills', DrillCount)).map(([, value]) => value),
    addDrill: async (count) => void (await put('drills', count)),
    round: async () => (await one('round', Round, 'round'))?.kept,
    takeRound: async () => (await take('round', Round, 'round'))?.kept,
    putRound: (kept, savedAt) =>
      writeHeld('round', ['round'], async (at) => {
        await at.put('round', roundOf(kept, savedAt), 'round');
      }),
    dropRound: () => drop('round', 'round'),
    setRoundAside: () => setAside('round', 'round'),
    brought: async () => (await list('brought', Brought)).map(([, value]) => value),
    broughtBy: (callId) => quietly(one('brought', Brought, callId), undefined),
    putBrought: async (brought) => void (await put('brought', brought, brought.card.id)),
    dropBrought: (callId) => drop('brought', callId),
    drafts: async () =>
      (await list('drafts', DraftEntry))
        .map(([key, value]) => ({ ...value, key: Number(key) }))
        .sort((a, b) => b.savedAt - a.savedAt),
    draftBy: (key) => quietly(one('drafts', DraftEntry, key), undefined),
    async putDraft(draft, savedAt, key) {
      const kept = await put('drafts', { version: 1, savedAt, draft }, key);
      return kept === undefined ? undefined : Number(kept);
    },
    dropDraft: (key) => drop('drafts', key),
    moments: async () => (await list('moments', Moment)).map(([key, value]) => ({ ...value, key: Number(key) })),
    addMoment: async (moment) => void (await put('moments', moment)),
    dropMoment: (key) => drop('moments', key),
    cards: async () => (await list('cards', QuizCard)).map(([, value]) => value),
    putCard: async (card) => void (await put('cards', card, cardKey(card))),
    sitting: async () => (await quietly(one('exam', Sitting, EXAM), undefined))?.kept,
    takeSitting: async () => (await take('exam', Sitting, EXAM))?.kept,
    putSitting: (kept, savedAt) =>
      writeHeld(EXAM, ['exam'], async (at) => {
        await at.put('exam', { version: 1, savedAt, kept }, EXAM);
      }),
    setSittingAside: () => setAside('exam', EXAM),
    everything: () => backing.run(KEPT, 'readonly', everythingAt),
    merge: (decide) =>
      backing.run([...KEPT, 'holders'], 'readwrite', async (at) => {
        for (const { shelf, key, value } of decide(await everythingAt(at))) {
          await at.put(shelf, value, key);
          // A tab that has it open is not to write over it.
          if (key !== undefined && (shelf === 'progress' || shelf === 'round' || shelf === 'exam'))
            await at.put('holders', tab, key);
        }
      }),
  };
}

async function everythingAt(at: Hands): Promise<Contents> {
  const all = await Promise.all(KEPT.map(async (shelf) => [shelf, await at.all(shelf)] as const));
  return Object.fromEntries(all) as Record<Kept, readonly Entry[]>;
}
