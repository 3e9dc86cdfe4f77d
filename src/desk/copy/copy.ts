import type { Message } from '../../service/message.ts';
import { KEPT, type Kept } from '../backing.ts';
import type { Desk } from '../desk.ts';
import { handOver } from '../hand-over.ts';
import { makeCopy, readCopy } from './file.ts';
import { type Merged, mergeCopy } from './merge.ts';

/** Most conflicts that are told one by one. */
const MOST_TOLD = 5;

/** Hands over all that is kept as one file. What is to be said of it. */
export async function keepCopy(desk: Desk): Promise<readonly Message[]> {
  await desk.readyFor('kept');
  let all: Awaited<ReturnType<Desk['store']['everything']>>;
  try {
    all = await desk.store.everything();
  } catch {
    return [{ id: 'trouble.store.missed' }];
  }
  const at = desk.wallClock();
  const copy = makeCopy(all, at);
  const counts = KEPT.map((shelf) => [shelf, copy[shelf].length] as const).filter(([, n]) => n > 0);
  if (counts.length === 0) return [{ id: 'copy.empty' }];
  const file = `underlawn-copy-${dayOf(at)}.json`;
  handOver(file, copy);
  return [{ id: 'copy.made', values: { file, all: counted(counts) } }];
}

/** Takes a copy in beside what is there. What is to be said of it. */
export async function bringBack(desk: Desk, file: File): Promise<readonly Message[]> {
  await desk.readyFor('kept');
  const values = { file: file.name };
  let json: string;
  try {
    json = await file.text();
  } catch {
    return [{ id: 'copy.wrong.unread', values }];
  }
  const read = readCopy(json, file.name);
  if ('wrong' in read) return [read.wrong];
  let merged: Merged | undefined;
  try {
    await desk.store.merge((there) => {
      merged = mergeCopy(there, read.copy);
      return merged.changes;
    });
  } catch (error) {
    const full = (error as Error).name === 'QuotaExceededError';
    return [{ id: full ? 'copy.wrong.full' : 'copy.wrong.failed', values }];
  }
  if (merged === undefined) return [];
  if (typeof merged.settings === 'object') {
    const { language, units, sound, still } = merged.settings;
    await desk.change({ language, units, sound, still });
  }
  await desk.refreshShelves();
  return toldOf(merged, file.name);
}

function toldOf({ came, later, settings }: Merged, file: string): readonly Message[] {
  const told = later.slice(0, MOST_TOLD).map(({ what, from }) => ({ id: `copy.later.${from}`, values: { what } }));
  const more = later.length - told.length;
  return [
    came.size === 0
      ? { id: 'copy.nothing-new', values: { file } }
      : { id: 'copy.came', values: { all: counted([...came]) } },
    ...told,
    ...(more > 0 ? [{ id: 'copy.later.more', values: { n: more } }] : []),
    ...(settings === 'stay' ? [{ id: 'copy.settings-stay' }] : []),
  ];
}

function counted(counts: readonly (readonly [Kept, number])[]): Message {
  return counts
    .map(([shelf, n]): Message => ({ id: `copy.count.${shelf}`, values: { n } }))
    .reduce((a, b) => ({ id: 'copy.and', values: { a, b } }));
}

/** The day in the reader's own time, as file names sort best. */
function dayOf(at: number): string {
  const day = new Date(at);
  return [day.getFullYear(), day.getMonth() + 1, day.getDate()].map((n) => String(n).padStart(2, '0')).join('-');
}
