import { LARGEST_FILE_bytes } from '../../calls/problems.ts';
import type { Refusal } from '../../share/read.ts';
import type { Desk } from '../desk.ts';
import type { BroughtCalls } from '../protocol.ts';

type From = 'link' | 'file';
type One = BroughtCalls['calls'][number];

/** What came of opening a link or a file. */
export type Outcome =
  | { readonly state: 'refused'; readonly refusal: Refusal }
  | {
      readonly state: 'brought';
      readonly brought: BroughtCalls;
      /** Those of which another edition is kept: they wait for a word. */
      readonly others: readonly One[];
    };

/** Reads a link or a file, and keeps its calls. */
export async function bring(desk: Desk, from: From, text: string): Promise<Outcome> {
  const { brought } = await desk.engine.ask({ kind: 'bring', from, text });
  if ('why' in brought) return { state: 'refused', refusal: brought };
  const others: One[] = [];
  for (const [at, one] of brought.calls.entries()) {
    if (await isOther(desk, one)) others.push(one);
    else await keep(desk, from, brought, at);
  }
  await desk.refreshShelves();
  return { state: 'brought', brought, others };
}

/** A file too large to be what it says is refused unread. */
export async function bringFile(desk: Desk, file: File): Promise<Outcome> {
  if (file.size > LARGEST_FILE_bytes) {
    return { state: 'refused', refusal: { why: { id: 'share.too-large' }, problems: [] } };
  }
  return bring(desk, 'file', await file.text());
}

/** Lets a call take the place of the edition that was kept, and of what was left half done on that. */
export async function replace(desk: Desk, from: From, brought: BroughtCalls, one: One): Promise<void> {
  await desk.store.dropProgress(one.card.id);
  await keep(desk, from, brought, brought.calls.indexOf(one));
  await desk.refreshShelves();
}

async function keep(desk: Desk, from: From, { calls, set }: BroughtCalls, at: number): Promise<void> {
  const one = calls[at];
  if (one === undefined) return;
  // The newest stands first on the list; calls of one set stand in the order of the set.
  const broughtAt = desk.wallClock() - at;
  await desk.store.putBrought({ version: 1, ...one, from, broughtAt, ...(set ? { set } : {}) });
}

/** Whether a call of this id but with another text is kept, or is being taken. */
async function isOther({ store }: Desk, { card, text }: One): Promise<boolean> {
  const [kept, left] = await Promise.all([store.broughtBy(card.id), store.progressOf(card.id)]);
  return [kept?.text, left?.saved.brought].some((before) => before !== undefined && before !== text);
}
