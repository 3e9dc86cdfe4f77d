import type { Message } from '../../service/message.ts';
import type { Kept } from '../backing.ts';
import { type Change, type Contents, cardKey, EXAM } from '../store.ts';
import type { Brought, Progress, Settings } from '../stored.ts';
import { type CopyFile, SHAPES } from './file.ts';

/** Of two different ones only one can stay in its place: the later. */
export interface Later {
  readonly what: Message;
  readonly from: 'here' | 'copy';
}

export interface Merged {
  readonly changes: readonly Change[];
  /** What came, by shelf. */
  readonly came: ReadonlyMap<Kept, number>;
  readonly later: readonly Later[];
  /** The settings of the copy, where there were none here; `stay` where there were others. */
  readonly settings: Settings | 'stay' | undefined;
}

/**
 * What taking a copy in changes. Nothing that is there gets lost: what is alike is kept once, records and drills add up, and
 * an earlier value that gives way to a later one is set aside.
 */
export function mergeCopy(there: Contents, copy: CopyFile): Merged {
  const merging = new Merging(there);
  for (const one of copy.settings) merging.settle(one);
  for (const one of copy.progress) merging.inPlace('progress', one.callId, one, (kept) => kept.savedAt);
  for (const one of copy.lines) merging.inPlace('lines', one.family ?? one.callId, one, (kept) => kept.savedAt ?? 0);
  for (const one of copy.round) merging.inPlace('round', 'round', one, (kept) => kept.savedAt);
  for (const one of copy.brought) merging.inPlace('brought', one.card.id, one, (kept) => kept.broughtAt);
  for (const one of copy.cards) merging.inPlace('cards', cardKey(one), one, (kept) => kept.last);
  for (const one of copy.exam) merging.inPlace('exam', EXAM, one, (kept) => kept.savedAt);
  for (const shelf of ['finished', 'drills', 'drafts', 'moments', 'unread'] as const) merging.addUp(shelf, copy[shelf]);
  return merging;
}

class Merging implements Merged {
  readonly changes: Change[] = [];
  readonly came = new Map<Kept, number>();
  readonly later: Later[] = [];
  settings: Merged['settings'];
  private readonly there: Contents;

  constructor(there: Contents) {
    this.there = there;
  }

  /** The settings here stay. */
  settle(one: Settings): void {
    const here = this.there.settings[0]?.value;
    if (here === undefined) {
      this.settings = one;
      this.add({ shelf: 'settings', key: 'settings', value: one });
    } else if (canonical(here) !== canonical(one)) this.settings = 'stay';
  }

  /** One of which there can be only one in its place. */
  inPlace<S extends 'progress' | 'lines' | 'round' | 'brought' | 'cards' | 'exam'>(
    shelf: S,
    key: string,
    one: CopyFile[S][number],
    at: (kept: CopyFile[S][number]) => number,
  ): void {
    const here = this.there[shelf].find((entry) => entry.key === key)?.value;
    if (here !== undefined && identity(here) === identity(one)) return;
    const readable = SHAPES[shelf](here) ? (here as CopyFile[S][number]) : undefined;
    const newer = readable === undefined || at(one) > at(readable);
    if (readable !== undefined) this.later.push({ what: nameOf(shelf, one), from: newer ? 'copy' : 'here' });
    if (!newer) return;
    if (here !== undefined) this.changes.push({ shelf: 'unread', value: { shelf, key, value: here } });
    this.add({ shelf, key, value: one });
  }

  /** Those that stand beside each other: what is there already, by all of it, is not added again. */
  addUp(shelf: 'finished' | 'drills' | 'drafts' | 'moments' | 'unread', ones: readonly unknown[]): void {
    const lying = new Map(this.there[shelf].map(({ key, value }) => [identity(value), { key, value }]));
    const seen = new Set(lying.keys());
    for (const one of ones) {
      const id = identity(one);
      const here = lying.get(id);
      if (!seen.has(id)) this.add({ shelf, value: one });
      else if (here !== undefined && gains(here.value, one)) this.changes.push({ shelf, key: here.key, value: one });
      seen.add(id);
    }
  }

  private add(change: Change): void {
    this.changes.push(change);
    this.came.set(change.shelf, (this.came.get(change.shelf) ?? 0) + 1);
  }
}

/** What makes it the same one: all of a record but what was worked out of it afterwards, of a brought call its file. */
function identity(value: unknown): string {
  if (SHAPES.finished(value)) return canonical({ ...value, review: undefined });
  return canonical(SHAPES.brought(value) ? value.text : value);
}

function gains(here: unknown, one: unknown): boolean {
  return SHAPES.finished(here) && SHAPES.finished(one) && here.review === undefined && one.review !== undefined;
}

function nameOf(shelf: Kept, one: unknown): Message {
  if (shelf === 'progress') return { id: 'copy.what.progress', values: { title: (one as Progress).saved.title } };
  if (shelf === 'brought') return { id: 'copy.what.brought', values: { title: (one as Brought).card.title } };
  if (shelf === 'lines') return { id: 'copy.what.line' };
  return { id: `copy.what.${shelf}` };
}

/** The same text for the same value, however its fields are ordered. */
function canonical(value: unknown): string {
  return JSON.stringify(value, (_key, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
}
