import type { Message } from '../../service/message.ts';
import { KEPT, type Kept } from '../backing.ts';
import { anything, fields, type Shape, type ShapeOf, text } from '../shape.ts';
import type { Contents } from '../store.ts';
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
} from '../stored.ts';
import { whereWrong } from './where-wrong.ts';

/** Something set aside: off which shelf, and what lay there. */
const Unread = fields({ shelf: text, value: anything }, { key: anything });

export const SHAPES = {
  settings: Settings,
  progress: Progress,
  finished: Finished,
  lines: Line,
  drills: DrillCount,
  round: Round,
  brought: Brought,
  drafts: DraftEntry,
  moments: Moment,
  cards: QuizCard,
  exam: Sitting,
  unread: Unread,
} as const satisfies Record<Kept, Shape<unknown>>;

type Lists = { readonly [K in Kept]: readonly ShapeOf<(typeof SHAPES)[K]>[] };

const VERSION = 4;

/** All that a browser keeps, as one file. `version` goes up with whatever an older page could not take in. */
export interface CopyFile extends Lists {
  readonly kind: 'underlawn-copy';
  readonly version: typeof VERSION;
  /** Wall time, ms. */
  readonly madeAt: number;
}

/** What does not read as it should goes along as something set aside: so the file can always be taken in again. */
export function makeCopy(all: Contents, madeAt: number): CopyFile {
  const lists = Object.fromEntries(KEPT.map((shelf): [Kept, unknown[]] => [shelf, []])) as Record<Kept, unknown[]>;
  for (const shelf of KEPT) {
    for (const { key, value } of all[shelf]) {
      if (SHAPES[shelf](value)) lists[shelf].push(value);
      else lists.unread.push({ shelf, key, value });
    }
  }
  return { kind: 'underlawn-copy', version: VERSION, madeAt, ...(lists as unknown as Lists) };
}

/** Reads a copy; where it is none, says which file, which place and what mends it. */
export function readCopy(json: string, file: string): { readonly copy: CopyFile } | { readonly wrong: Message } {
  const wrong = (id: string, values: Message['values'] = {}) => ({ wrong: { id, values: { file, ...values } } });
  let read: unknown;
  try {
    read = JSON.parse(json);
  } catch {
    return wrong('copy.wrong.kind');
  }
  if (typeof read !== 'object' || read === null) return wrong('copy.wrong.kind');
  const { kind, version, ...rest } = read as Record<string, unknown>;
  if (kind !== 'underlawn-copy') return wrong('copy.wrong.kind');
  if (typeof version === 'number' && version > VERSION) return wrong('copy.wrong.newer');
  const at = (path: string, wants: string) => wrong('copy.wrong.value', { path, wants: { id: `copy.wants.${wants}` } });
  if (version !== 1 && version !== 2 && version !== 3 && version !== VERSION) return at('version', 'other');
  // The first version knew of no calls that are being made, the second of no moments to begin from, the third of no quiz.
  const lists = {
    ...(version < 2 ? { drafts: [] } : {}),
    ...(version < 3 ? { moments: [] } : {}),
    ...(version < 4 ? { cards: [], exam: [] } : {}),
    ...rest,
  };
  for (const shelf of KEPT) {
    const list: unknown = lists[shelf as keyof typeof lists];
    if (!Array.isArray(list)) return at(shelf, 'list');
    for (const [i, one] of list.entries()) {
      const fault = whereWrong(SHAPES[shelf], one, `${shelf}.${i}`);
      if (fault !== undefined) return at(fault.path, fault.wants);
    }
  }
  return { copy: { ...read, ...lists, version: VERSION } as unknown as CopyFile };
}
