/** Kept calls as the short texts that a course platform holds. A file of its own: only who came from one needs it. */
import type { Prepared } from '../calls/setup.ts';
import { goesOnFrom, type LeftCall, packLeft, unpackLeft } from '../records/learnt/left.ts';
import { say } from '../service/index.ts';
import { callBy } from './call-files.ts';
import type { Reply, Request, SavedCall } from './protocol.ts';
// Has the validator keep to the page's policy, and shares it with whoever takes up a kept call.
import { checkProgress } from './resume.ts';
import { isShipped } from './shipped-files.ts';

/** Answers what is asked of them. */
export async function leftCall(request: Extract<Request, { kind: 'pack' | 'unpack' }>): Promise<Reply> {
  if (request.kind === 'pack') return packSaved(request.saved, request.most);
  const { callId, brought } = request;
  return unpackSaved(request, await callBy(callId, isShipped(callId) ? undefined : brought));
}

/** `saved` is what the engine itself gave out. */
async function packSaved({ callId, mode, record, assistance }: SavedCall, most: number): Promise<Reply> {
  const progress = record as LeftCall['progress'];
  const { text, holds } = await packLeft({ call: callId, mode, progress, ...(assistance ? { assistance } : {}) }, most);
  return { kind: 'packed', text, holds, of: progress.actions.length };
}

/** The platform's, unless what is here goes on from it: then it is the same attempt, and further. */
async function unpackSaved(
  { callId, text, here, brought }: Extract<Request, { kind: 'unpack' }>,
  prepared: Prepared | undefined,
): Promise<Reply> {
  const left = await unpackLeft(text);
  if (left === undefined || left.call !== callId || prepared === undefined) {
    return { kind: 'unpacked', why: say('course.unread') };
  }
  if ('why' in checkProgress(prepared, left.progress)) return { kind: 'unpacked', why: say('course.other-version') };
  if (here !== undefined && here.mode === left.mode) {
    const checked = checkProgress(prepared, here.record);
    if ('progress' in checked && goesOnFrom(checked.progress, left.progress)) return { kind: 'unpacked', saved: here };
  }
  const { mode, progress, assistance } = left;
  const saved: SavedCall = {
    version: 1,
    callId,
    mode,
    record: progress,
    now_ms: progress.now_ms,
    title: prepared.call.title,
    ...(assistance ? { assistance: helpOf(assistance) } : {}),
    ...(brought === undefined ? {} : { brought }),
  };
  return { kind: 'unpacked', saved };
}

function helpOf({ hints, likely, led }: NonNullable<LeftCall['assistance']>): NonNullable<SavedCall['assistance']> {
  return { hints, likely, ...(led === undefined ? {} : { led }) };
}
